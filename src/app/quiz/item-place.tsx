import type { ReactNode } from 'react';
import { say, slugOf } from '../../i18n/index.ts';
import type { Item } from '../../quiz/index.ts';
import { ItemStem } from '../quiz-item/item-stem.tsx';
import { type MadeItem, useMadeItem } from '../quiz-item/use-made-item.ts';
import type { ItemTrouble } from '../session/making-protocol.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';

/** Asking again would not help. */
export const GONE: readonly ItemTrouble[] = ['no such item', 'not proved any more'];

interface Props {
  readonly id: string;
  readonly surroundings: Store<Surroundings>;
  /** What to do besides where the item cannot be made. */
  readonly otherwise?: ReactNode;
  /** What stands beside what is known. */
  readonly children: (item: Item) => ReactNode;
}

/** An item from the moment it is asked for: being made, not to be made, or there. */
export function ItemPlace({ id, surroundings, otherwise, children }: Props) {
  const made = useMadeItem(id);
  if (made.state === 'made') {
    return (
      <div className="quiz-columns">
        <div className="quiz-known">
          <ItemStem key={id} item={made.item} surroundings={surroundings} />
        </div>
        <div className="quiz-answering">{children(made.item)}</div>
      </div>
    );
  }
  return (
    <div className="quiz-columns">
      {made.state === 'making' ? (
        <p className="quiz-waiting" role="status">
          {say('quiz.item.making')}
        </p>
      ) : (
        <NotMade made={made}>{otherwise}</NotMade>
      )}
    </div>
  );
}

function NotMade(props: {
  readonly made: Extract<MadeItem, { state: 'failed' }>;
  readonly children: ReactNode;
}) {
  const { made, children } = props;
  return (
    <div className="quiz-note" role="alert">
      <p>{say(`quiz.item.${slugOf(made.why) as TroubleSlug}`)}</p>
      <p className="buttons">
        {GONE.includes(made.why) ? null : (
          <button type="button" className="button primary" onClick={() => made.again()}>
            {say('quiz.item.again')}
          </button>
        )}
        {children}
      </p>
    </div>
  );
}

type TroubleSlug = 'no-such-item' | 'not-proved-any-more' | 'atlas-not-loaded' | 'making-broke-off';
