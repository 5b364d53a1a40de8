import { say } from '../../i18n/index.ts';
import type { OrderItem } from '../../quiz/index.ts';
import type { LookedAt } from './looked-at.ts';
import { ReasonMark } from './reason-mark.tsx';
import { SeeButton } from './see-button.tsx';
import { useSays } from './use-says.ts';

interface Props {
  readonly item: OrderItem;
  /** As it was answered; null where it was not. */
  readonly order: readonly number[] | null;
  readonly onSee: (at: LookedAt) => void;
}

/** The right order, with where each had been put, and why it stands there. */
export function OrderReasons({ item, order, onSee }: Props) {
  const says = useSays(item);
  return (
    <>
      <p className="reasons-title">{say('quiz.reasons.order')}</p>
      <ol className="reasons" data-kind="order">
        {item.key.map((step, at) => {
          const option = item.steps[step];
          if (option === undefined) return null;
          const put = order?.indexOf(step) ?? at;
          const what = says(option.says);
          return (
            <li key={step} data-right={put === at}>
              <p className="reason-head">
                {order === null ? null : <ReasonMark right={put === at} />}
                <span>
                  {at + 1}. <strong>{what}</strong>{' '}
                  {order === null ? null : (
                    <span className="quiet">
                      {put === at
                        ? say('quiz.reasons.in-place')
                        : say('quiz.reasons.your-place', { n: put + 1 })}
                    </span>
                  )}
                </span>
              </p>
              {option.why.map((why) => (
                <p key={JSON.stringify(why)}>{says(why)}</p>
              ))}
              <SeeButton option={option} run={item.run} what={what} onSee={onSee} />
            </li>
          );
        })}
      </ol>
    </>
  );
}
