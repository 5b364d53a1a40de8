import type { UnitSystem } from '../../quantity/index.ts';
import type { PaperQuestion } from '../../records/index.ts';
import { paperQuestion, startWords } from '../../wording/index.ts';
import { askForItem } from '../quiz-item/item-maker.ts';

/**
 * A question of a paper, in words.
 *
 * @returns null where there is no such item, or the plant no longer bears it out
 * @throws where items cannot be made at all
 */
export async function makeQuestion(id: string, units: UnitSystem): Promise<PaperQuestion | null> {
  const asked = await askForItem(id);
  if (asked.ok) {
    const { item, names, start } = asked;
    return paperQuestion(item, names, units, startWords(start));
  }
  if (asked.trouble === 'no such item' || asked.trouble === 'not proved any more') return null;
  throw new Error(asked.detail);
}
