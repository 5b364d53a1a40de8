/** How one check parts the causes that are left: by which of the things it tells, and what each would read. */
import { sharesOf, uncertaintyOf } from '../../../diagnosis/index.ts';
import { quizTablesOf } from '../../evidence/quiz-tables.ts';
import { binShares } from '../../evidence/refuting.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { bitsOfKey } from './bits-of-key.ts';
import { isClear } from './is-clear.ts';
import type { SoFar } from './so-far.ts';
import type { CheckWorth } from './worth.ts';

export interface Parting {
  /** Of the atlas: what of the check tells most. */
  readonly key: number;
  readonly bits: number;
  /** Causes by what they would read; a word of null: one or the other. */
  readonly groups: readonly { readonly word: string | null; readonly causes: readonly number[] }[];
}

/** So many plants of a cause that it would read so. */
const AS_A_RULE = 0.8;

/** @returns null where the plant itself does not read as its cause would */
export function partingBy(
  plant: QuizPlant,
  seeded: SeededPlant,
  { belief, standing }: SoFar,
  { keys }: Pick<CheckWorth, 'keys'>,
): Parting | null {
  const { atlas } = plant;
  const shares = sharesOf(belief);
  const uncertainty = uncertaintyOf(atlas, shares);
  const { isTelling } = quizTablesOf(plant);
  let best = -1;
  let bits = 0;
  for (const key of keys) {
    if (!isTelling[key] || !isClear(plant, seeded, key)) continue;
    const own = bitsOfKey(atlas, uncertainty, key);
    if (own <= bits) continue;
    bits = own;
    best = key;
  }
  const at = atlas.keys[best];
  if (at === undefined) return null;
  const groups = new Map<string | null, number[]>();
  for (const cause of standing) {
    const all = binShares(plant, shares, best, cause);
    const most = all.indexOf(Math.max(...all));
    const word = (all[most] ?? 0) >= AS_A_RULE ? (at.bins[most] as string) : null;
    groups.set(word, [...(groups.get(word) ?? []), cause]);
  }
  const truth = at.bins[seeded.bins[best] as number];
  if (!groups.get(truth ?? '')?.includes(seeded.cause)) return null;
  return { key: best, bits, groups: [...groups].map(([word, causes]) => ({ word, causes })) };
}
