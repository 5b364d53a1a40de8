import type { Item, WordedItem } from '../quiz/index.ts';

/** A question as data and as it was said. */
export interface ItemInWords {
  readonly item: Item;
  readonly words: WordedItem;
}
/** By id. Questions that nobody has at hand any more may be missing. */
export type ItemsInWords = ReadonlyMap<string, ItemInWords>;
