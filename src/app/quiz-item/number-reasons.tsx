import { say } from '../../i18n/index.ts';
import { farthestOff, isRight, type NumberItem } from '../../quiz/index.ts';
import { quantityText } from '../../wording/index.ts';
import { useStore } from '../session/store.ts';
import { settings } from '../settings/settings.ts';
import { ReasonMark } from './reason-mark.tsx';
import { slipOf } from './slip-of.ts';
import { useSays } from './use-says.ts';

interface Props {
  readonly item: NumberItem;
  /** SI; null where nothing was answered. */
  readonly value: number | null;
}

/** The right number, the way to it, and how one comes to the one that was given. */
export function NumberReasons({ item, value }: Props) {
  const { units } = useStore(settings);
  const says = useSays(item);
  const right = value !== null && isRight(item, { is: 'number', value });
  const slip = value === null || right ? null : slipOf(item, value);
  const text = (amount: number) => quantityText(amount, item.of, units);
  const off = farthestOff(item);
  return (
    <>
      <ul className="reasons">
        {value === null ? null : (
          <li data-right={right} data-yours={true}>
            <p className="reason-head">
              <ReasonMark right={right} />
              <strong>{say('quiz.reasons.your-number', { value: text(value) })}</strong>
            </p>
            {slip === null ? null : (
              <p>
                {say('quiz.reasons.slip')} {says(slip)}
              </p>
            )}
          </li>
        )}
        <li data-right={true}>
          <p className="reason-head">
            <ReasonMark right={true} />
            <strong>{say('quiz.reasons.number', { value: text(item.key) })}</strong>
          </p>
          <p className="quiet">
            {say('quiz.reasons.counted', {
              from: text(item.key - off),
              to: text(item.key + off),
            })}
          </p>
        </li>
      </ul>
      <p className="reasons-title">{say('quiz.reasons.working')}</p>
      <ol className="working-lines">
        {item.working.map((line) => (
          <li key={JSON.stringify(line)}>{says(line)}</li>
        ))}
      </ol>
    </>
  );
}
