import { type ReactNode, type RefObject, useRef } from 'react';
import { say, slugOf } from '../../i18n/index.ts';
import type { Item } from '../../quiz/index.ts';
import { ItemStem } from '../quiz-item/item-stem.tsx';
import { itemAsks } from '../quiz-item/item-words.ts';
import { type MadeItem, useMadeItem } from '../quiz-item/use-made-item.ts';
import type { Store } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import { GONE } from './gone.ts';

interface Props {
  readonly id: string;
  readonly surroundings: Store<Surroundings>;
  /** Yet to be answered: where the answer stands below, what is asked is said at the top too. */
  readonly unanswered?: boolean;
  /** What to do besides where the item cannot be made. */
  readonly otherwise?: ReactNode;
  /** What stands beside what is known. */
  readonly children: (item: Item) => ReactNode;
}

/** An item from the moment it is asked for: being made, not to be made, or there. */
export function ItemPlace(props: Props) {
  const { id, surroundings, unanswered = false, otherwise, children } = props;
  const made = useMadeItem(id);
  const answering = useRef<HTMLDivElement>(null);
  if (made.state === 'made') {
    return (
      <div className="quiz-columns">
        <div className="quiz-known">
          {unanswered && hasRecord(made.item) ? (
            <ToAnswer item={made.item} place={answering} />
          ) : null}
          <ItemStem key={id} item={made.item} surroundings={surroundings} />
        </div>
        <div className="quiz-answering" ref={answering}>
          {children(made.item)}
        </div>
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

/** What is known then takes more than a narrow screen. */
function hasRecord({ run, stem: { shows } }: Item): boolean {
  return run !== null && (shows.chart || shows.trends.length > 0);
}

/** Only where the answer is not beside what is known. */
function ToAnswer(props: {
  readonly item: Item;
  readonly place: RefObject<HTMLDivElement | null>;
}) {
  const go = () => {
    const { current } = props.place;
    current?.scrollIntoView({ block: 'start' });
    current?.querySelector<HTMLElement>('input, button')?.focus({ preventScroll: true });
  };
  return (
    <button type="button" className="button quiz-to-answer" onClick={go}>
      <span>{itemAsks(props.item)}</span> <span aria-hidden="true">↓</span>
    </button>
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
