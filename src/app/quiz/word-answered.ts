/** The questions that were answered, in words, for a file that is to be read elsewhere. */
import type { UnitSystem } from '../../quantity/index.ts';
import type { GivenAnswer } from '../../quiz/index.ts';
import type { ItemInWords, ItemsInWords } from '../../records/index.ts';
import { wordItem } from '../../wording/index.ts';
import { askForItem } from '../quiz-item/item-maker.ts';
import { GONE } from './gone.ts';

/** More take too long; those answered last are what is looked for first. */
export const MOST_WORDED = 400;

export interface AnsweredInWords {
  readonly items: ItemsInWords;
  /** How many questions stand in the file by their ids alone. */
  readonly bare: number;
}

/**
 * @param onDone how many are done; false: go on without the rest
 */
export async function wordAnswered(
  answers: readonly GivenAnswer[],
  units: UnitSystem,
  onDone: (done: number, of: number) => boolean,
): Promise<AnsweredInWords> {
  const answered = [...new Set([...answers].reverse().map(({ item }) => item))];
  const wanted = answered.slice(0, MOST_WORDED);
  const items = new Map<string, ItemInWords>();
  for (const [place, id] of wanted.entries()) {
    if (!onDone(place, wanted.length)) break;
    const asked = await askForItem(id);
    if (asked.ok) {
      items.set(id, { item: asked.item, words: wordItem(asked.item, asked.names, units) });
    } else if (!GONE.includes(asked.trouble)) break;
  }
  return { items, bare: answered.length - items.size };
}
