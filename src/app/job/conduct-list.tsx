import { say, sayMessage } from '../../i18n/index.ts';
import type { Verdict } from '../session/work-protocol.ts';
import { shortClock } from '../working/clock-text.ts';

interface Props {
  readonly findings: Verdict['conduct'];
  readonly onSee: (tS: number) => void;
}

/** What was unsafe or careless, with the state of the plant that made it so. */
export function ConductList({ findings, onSee }: Props) {
  if (findings === null) return <p className="quiet">{say('debrief.not-ready')}</p>;
  if (findings.length === 0) return <p>{say('debrief.conduct.clean')}</p>;
  return (
    <ul className="conduct">
      {once(findings).map(({ t, what, state, severity }) => (
        <li key={`${t} ${sayMessage(what)} ${sayMessage(state)}`} data-severity={severity}>
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

/** The same thing found twice at one moment, as after two looks into one part, is said once. */
function once(findings: NonNullable<Verdict['conduct']>) {
  const said = new Set<string>();
  return findings.filter(({ t, what, state }) => {
    const words = `${t} ${sayMessage(what)} ${sayMessage(state)}`;
    if (said.has(words)) return false;
    said.add(words);
    return true;
  });
}
