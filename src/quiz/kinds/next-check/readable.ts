import { type Belief, partsOfCheck, sharesOf, uncertaintyOf } from '../../../diagnosis/index.ts';
import { quizTablesOf } from '../../evidence/quiz-tables.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { bitsOfKey } from './bits-of-key.ts';
import type { CheckWorth } from './worth.ts';

/**
 * Keys of one check at one moment that are fit to be named, as they are told: words before numbers, as
 * eyes have them.
 *
 * @param belief what tells most by it comes first; left out: in the order of the atlas
 */
export function readableKeys(
  plant: QuizPlant,
  { check, keys: all }: Pick<CheckWorth, 'check' | 'keys'>,
  belief?: Belief,
): readonly number[] {
  const { atlas } = plant;
  const { isTelling } = quizTablesOf(plant);
  const keys = all.filter((key) => isTelling[key]);
  const uncertainty = belief === undefined ? null : uncertaintyOf(atlas, sharesOf(belief));
  const bits = new Map(
    keys.map((key) => [key, uncertainty === null ? 0 : bitsOfKey(atlas, uncertainty, key)]),
  );
  const sorted = [...keys].sort((a, b) => (bits.get(b) as number) - (bits.get(a) as number));
  if (partsOfCheck(check).what !== 'look') return sorted;
  const isWords = (key: number) => atlas.keys[key]?.aspect === 'words';
  return [...sorted.filter(isWords), ...sorted.filter((key) => !isWords(key))];
}
