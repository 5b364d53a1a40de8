import type { MinutesUsed } from '../../bench/index.ts';
import { say, sayMessage } from '../../i18n/index.ts';
import { shortClock } from '../working/clock-text.ts';
import { groupMinutes } from './minutes-groups.ts';

interface Props {
  readonly minutes: MinutesUsed;
  readonly budget: number;
}

/** Where the minutes and the parts went, and whether that was more than allowed. */
export function MinutesTable({ minutes, budget }: Props) {
  const used = minutesText(minutes.total);
  const cost = costOf(minutes.lines);
  return (
    <>
      <p className={used > budget ? 'invalid' : undefined}>
        <strong>
          {used > budget
            ? say('debrief.minutes.over', { used, budget, over: minutesText(used - budget) })
            : say('debrief.minutes.within', { used, budget })}
        </strong>
      </p>
      <table className="rows minutes-sums">
        <thead>
          <tr>
            <th scope="col">{say('debrief.minutes.what')}</th>
            <th scope="col">{say('debrief.minutes.times')}</th>
            <th scope="col">{say('debrief.minutes.min')}</th>
            <th scope="col">{say('debrief.minutes.cost')}</th>
          </tr>
        </thead>
        <tbody>
          {groupMinutes(minutes).map(({ group, times, minutes: took, cost: paid }) => (
            <tr key={group}>
              <th scope="row">{say(`debrief.minutes.of.${group}`)}</th>
              <td>{group === 'plant' ? '' : times}</td>
              <td>{minutesText(took)}</td>
              <td>{costText(paid)}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">{say('debrief.minutes.sum')}</th>
            <td />
            <td>{minutesText(minutes.total)}</td>
            <td>{cost}</td>
          </tr>
        </tfoot>
      </table>
      <details className="fold">
        <summary>{say('job.minutes-lines')}</summary>
        <table className="rows minutes-lines">
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
                <td>{minutesText(took)}</td>
                <td>{costText(paid)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  );
}

function costOf(lines: MinutesUsed['lines']): number {
  return Number(lines.reduce((sum, line) => sum + line.cost, 0).toFixed(1));
}

function minutesText(minutes: number): number {
  return Number(minutes.toFixed(1));
}

function costText(cost: number): number | '' {
  return cost === 0 ? '' : Number(cost.toFixed(1));
}
