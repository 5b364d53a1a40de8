import { say } from '../../i18n/index.ts';
import type { ChoiceItem, SpotItem } from '../../quiz/index.ts';
import { percentText } from '../debrief/share-bars.tsx';
import type { LookedAt } from './looked-at.ts';
import { ReasonMark } from './reason-mark.tsx';
import { SeeButton } from './see-button.tsx';
import { useSays } from './use-says.ts';

interface Props {
  readonly item: ChoiceItem | SpotItem;
  readonly chosen: number | null;
  readonly onSee: (at: LookedAt) => void;
}

/** Every answer that could be given, and what speaks for or against it. */
export function OptionReasons({ item, chosen, onSee }: Props) {
  const says = useSays(item);
  return (
    <ul className="reasons">
      {item.options.map((option, place) => {
        const right = place === item.key;
        const what = says(option.says);
        return (
          <li key={what} data-right={right} data-yours={place === chosen}>
            <p className="reason-head">
              <ReasonMark right={right} />
              <span>
                <strong>{what}</strong>{' '}
                <span className="quiet">{stateWords(right, place === chosen)}</span>
              </span>
            </p>
            {option.why.map((why) => (
              <p key={JSON.stringify(why)}>{says(why)}</p>
            ))}
            {option.share === null ? null : (
              <p className="quiet">
                {say('quiz.reasons.share', { percent: percentText(option.share) })}
              </p>
            )}
            <SeeButton option={option} run={item.run} what={what} onSee={onSee} />
          </li>
        );
      })}
    </ul>
  );
}

function stateWords(right: boolean, yours: boolean): string {
  return [
    say(right ? 'quiz.reasons.right-one' : 'quiz.reasons.not-right'),
    ...(yours ? [say('quiz.reasons.yours')] : []),
  ].join(', ');
}
