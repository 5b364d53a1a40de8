import { lazy, Suspense } from 'react';
import { loadMessages, say } from '../../i18n/index.ts';
import type { Item } from '../../quiz/index.ts';
import { ItemDrawn } from './item-drawn.tsx';

interface Props {
  readonly item: Item;
  /** Of the wiring, as the question names them. */
  readonly places: readonly string[];
}

const PaperLadder = lazy(async () => {
  const [{ PaperLadder: ladder }] = await Promise.all([
    import('./paper-ladder.tsx'),
    loadMessages(['ladder', 'bench']),
  ]);
  return { default: ladder };
});

/** The wiring of the plant, to find there what a question names; folded until it is wanted. */
export function ItemLadder({ item, places }: Props) {
  return (
    <ItemDrawn title={say('quiz.stem.ladder')} kind="ladder" startsOpen={false}>
      <Suspense fallback={<p className="item-waits">{say('app.opening')}</p>}>
        <PaperLadder item={item} places={places} />
      </Suspense>
    </ItemDrawn>
  );
}
