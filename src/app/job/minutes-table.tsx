import { say, sayMessage } from '../../i18n/index.ts';
import type { Minutes } from '../session/work-protocol.ts';
import { shortClock } from '../working/clock-text.ts';

interface Props {
  readonly minutes: Minutes | null;
  readonly budget: number;
}

/** Where the minutes and the parts went. */
export function MinutesTable({ minutes, budget }: Props) {
  if (minutes === null) return <p className="quiet">{say('debrief.not-ready')}</p>;
  const cost = minutes.lines.reduce((sum, line) => sum + line.cost, 0);
  return (
    <>
      <p>
        <strong>
          {say('debrief.minutes.total', { used: Math.ceil(minutes.total), budget, cost })}
        </strong>
      </p>
      <details className="fold">
        <summary>{say('job.minutes-lines')}</summary>
        <table className="rows">
          <thead>
            <tr>
              <th scope="col">{say('debrief.minutes.when')}</th>
              <th scope="col">{say('debrief.minutes.what')}</th>
              <th scope="col">{say('debrief.minutes.min')}</th>
              <th scope="col">{say('debrief.minutes.cost')}</th>
            </tr>
          </thead>
          <tbody>
            {minutes.lines.map(({ t, what, minutes: took, cost: paid }, place) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a finished list that never changes
              <tr key={place}>
                <td>{shortClock(t)}</td>
                <th scope="row">{sayMessage(what)}</th>
                <td>{Number(took.toFixed(1))}</td>
                <td>{paid === 0 ? '' : paid}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  );
}
