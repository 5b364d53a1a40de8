import { say, sayMessage } from '../../i18n/index.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { shortClock } from '../working/clock-text.ts';

interface Props {
  /** What judging found; nothing unsafe is said only of a log that was judged. */
  readonly findings: Verdict['conduct'];
  readonly onSee: (tS: number) => void;
}

/** What was unsafe or careless, with the state of the plant that made it so. */
export function ConductList({ findings, onSee }: Props) {
  if (findings.length === 0) return <p>{say('debrief.conduct.clean')}</p>;
  return (
    <ul className="conduct">
      {findings.map(({ rule, t, what, state, severity }) => (
        <li key={`${rule} ${t} ${sayMessage(what)} ${sayMessage(state)}`} data-severity={severity}>
          <p>
            <span className="verdict-mark">
              {say(severity === 'unsafe' ? 'debrief.unsafe' : 'debrief.careless')}
            </span>{' '}
            <strong>{sayMessage(what)}</strong>
          </p>
          <p>{say('debrief.state', { state: sayMessage(state) })}</p>
          <button type="button" className="button" onClick={() => onSee(t)}>
            {say('debrief.see-it', { time: shortClock(t) })}
          </button>
        </li>
      ))}
    </ul>
  );
}
