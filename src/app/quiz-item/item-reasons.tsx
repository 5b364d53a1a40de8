import '../styles/quiz-item.css';
import { lazy, Suspense, useState } from 'react';
import { loadMessages, say } from '../../i18n/index.ts';
import type { Item, Response } from '../../quiz/index.ts';
import type { Store } from '../session/store.ts';
import { useStore } from '../session/store.ts';
import type { Surroundings } from '../settings/theme.ts';
import type { LookedAt } from './looked-at.ts';
import { NumberReasons } from './number-reasons.tsx';
import { OptionReasons } from './option-reasons.tsx';
import { OrderReasons } from './order-reasons.tsx';
import { useSays } from './use-says.ts';

/** With it come the drawing of the plant and its wiring, and their words. */
const RecordReplay = lazy(async () => {
  const [{ RecordReplay: replay }] = await Promise.all([
    import('./record-replay.tsx'),
    loadMessages(['app', 'sequence', 'view', 'ladder']),
  ]);
  return { default: replay };
});

interface Props {
  readonly item: Item;
  /** Null where nothing was answered. */
  readonly response: Response | null;
  readonly surroundings: Store<Surroundings>;
  /** Of the headings. */
  readonly level: 2 | 3;
}

/** Why each answer is right or not, with a way to the moment that decides. */
export function ItemReasons({ item, response, surroundings, level }: Props) {
  const look = useStore(surroundings);
  const says = useSays(item);
  const [lookedAt, setLookedAt] = useState<LookedAt | null>(null);
  return (
    <section className="item-reasons" data-answer={item.answer}>
      {level === 2 ? <h2 className="quiz-asks">{says(item.stem.asks)}</h2> : null}
      {level === 3 ? <h3 className="quiz-asks">{says(item.stem.asks)}</h3> : null}
      {item.answer === 'choice' || item.answer === 'spot' ? (
        <OptionReasons
          item={item}
          chosen={response?.is === 'choice' ? response.option : null}
          onSee={setLookedAt}
        />
      ) : null}
      {item.answer === 'order' ? (
        <OrderReasons
          item={item}
          order={response?.is === 'order' ? response.order : null}
          onSee={setLookedAt}
        />
      ) : null}
      {item.answer === 'number' ? (
        <NumberReasons item={item} value={response?.is === 'number' ? response.value : null} />
      ) : null}
      {item.caution === null ? null : (
        <p className="caution">
          <strong>{say('app.caution.short')}</strong> {says(item.caution)}
        </p>
      )}
      {lookedAt === null ? null : (
        <Suspense fallback={<p role="status">{say('app.opening')}</p>}>
          <RecordReplay id={item.id} at={lookedAt} look={look} onClose={() => setLookedAt(null)} />
        </Suspense>
      )}
    </section>
  );
}
