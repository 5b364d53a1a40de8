import type { Advice } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { minutesText } from './minutes-text.ts';
import { useWords } from './use-words.ts';

interface Props {
  readonly best: Advice | null;
  /** What it would have shown at this very plant, as far as that is known. */
  readonly shownHere: readonly string[];
  /** What was done could tell nothing any more. */
  readonly redundant: boolean;
}

/** The check that would have told more for its minutes, and how it would have told the suspects apart. */
export function BestThen({ best, shownHere, redundant }: Props) {
  const words = useWords();
  if (best === null) {
    return (
      <p className="quiet">
        {say(redundant ? 'debrief.moment.best-settled' : 'debrief.moment.best-none')}
      </p>
    );
  }
  const { check, moment, minutes, splits } = best;
  return (
    <div className="moment-best">
      <h4>{say('debrief.moment.best')}</h4>
      <p>
        <strong>{words.checkAt(check, moment)}</strong>,{' '}
        {say('debrief.moment.best-cost', { minutes: minutesText(minutes) })}
      </p>
      {splits.length === 0 ? null : (
        <>
          <p>{say('debrief.moment.best-tells')}</p>
          <ul className="splits">
            {splits.map(({ part, aspect, word }) => (
              <li key={`${part} ${aspect}`}>
                {say('debrief.moment.best-split', {
                  part: words.part(part),
                  word: words.answer({ check, moment, aspect, word }),
                })}
              </li>
            ))}
          </ul>
        </>
      )}
      {shownHere.length === 0 ? null : (
        <p>{say('debrief.moment.best-here', { word: shownHere.join('; ') })}</p>
      )}
    </div>
  );
}
