import { say } from '../../i18n/index.ts';
import type { ChoiceItem, Option, SpotItem } from '../../quiz/index.ts';
import { toldWords } from '../../wording/index.ts';
import { percentText } from '../debrief/share-bars.tsx';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import type { LookedAt } from './item-reasons.tsx';
import { namesOf } from './item-words.ts';
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
            <Evidence item={item} option={option} />
            <SeeButton option={option} run={item.run} what={what} onSee={onSee} />
          </li>
        );
      })}
    </ul>
  );
}

function Evidence(props: { readonly item: ChoiceItem | SpotItem; readonly option: Option }) {
  const { item, option } = props;
  const { units } = useStore(settings);
  const { share, decidedBy } = option;
  if (share === null && decidedBy === null) return null;
  return (
    <p className="reason-evidence quiet">
      {share === null ? null : (
        <span>{say('quiz.reasons.share', { percent: percentText(share) })}</span>
      )}
      {decidedBy === null ? null : (
        <span>
          {say('quiz.reasons.decided', { reading: toldWords(namesOf(item), decidedBy, units) })}
        </span>
      )}
    </p>
  );
}

function stateWords(right: boolean, yours: boolean): string {
  return [
    say(right ? 'quiz.reasons.right-one' : 'quiz.reasons.not-right'),
    ...(yours ? [say('quiz.reasons.yours')] : []),
  ].join(', ');
}
