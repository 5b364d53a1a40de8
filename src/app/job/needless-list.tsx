import { say, sayWord } from '../../i18n/index.ts';
import type { NeedlessWork } from '../session/work-protocol.ts';
import { shortClock } from '../working/clock-text.ts';

/** Work on parts that were sound, with what it took; nothing is said where there was none. */
export function NeedlessList({ works }: { readonly works: readonly NeedlessWork[] }) {
  if (works.length === 0) return null;
  return (
    <>
      <h3>{say('debrief.needless')}</h3>
      <ul className="needless">
        {works.map(({ t, part, way, minutes, cost }) => (
          <li key={`${t} ${part} ${way}`}>
            {say(cost === 0 ? 'debrief.needless.work' : 'debrief.needless.part', {
              time: shortClock(t),
              part,
              way: sayWord('job.way', way),
              minutes,
              cost,
            })}
          </li>
        ))}
      </ul>
    </>
  );
}
