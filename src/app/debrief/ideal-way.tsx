import type { Reasoning } from '../../diagnosis/index.ts';
import { say } from '../../i18n/index.ts';
import { minutesText } from './minutes-text.ts';
import { percentText } from './share-bars.tsx';
import { useWords } from './use-words.ts';

/** The best way through this very plant, check by check, with what each shows here. */
export function IdealWay({ reasoning }: { readonly reasoning: Reasoning }) {
  const words = useWords();
  const { ideal, alike } = reasoning;
  return (
    <>
      <p className="choices-lead">{say('debrief.ideal-lead')}</p>
      <ol className="ideal">
        {ideal.map(({ check, moment, minutes, share, told }) => (
          <li key={`${check} ${moment}`}>
            <p>
              <strong>{words.checkAt(check, moment)}</strong>{' '}
              <span className="quiet">
                {say('debrief.ideal.cost', { minutes: minutesText(minutes) })}
              </span>
            </p>
            <p>
              {say('debrief.ideal.told', {
                said: saidOf(told.map((each) => words.answer({ check, moment, ...each }))),
                share: percentText(share),
              })}
            </p>
          </li>
        ))}
      </ol>
      {alike.length === 0 ? null : (
        <p>{say('debrief.alike', { parts: alike.map(words.part).join(', ') })}</p>
      )}
    </>
  );
}

/** A watched start says many things; the first few are enough. */
const MOST_SAID = 3;

function saidOf(all: readonly string[]): string {
  if (all.length === 0) return say('told.word.in-band');
  const shown = all.slice(0, MOST_SAID).join('; ');
  return all.length > MOST_SAID ? `${shown} …` : shown;
}
