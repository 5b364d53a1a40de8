/** Items that are reckoned out: one sum of the trade, from the plant's own numbers. */
import { createRandom, type RandomState } from '../../../numeric/index.ts';
import { itemId } from '../../item/item-id.ts';
import type { ItemMaker, QuizPlant } from '../../item/maker.ts';
import { excessAirSum } from './excess-air.ts';
import { expectedVoltsSum } from './expected-volts.ts';
import { feedbackVoltsSum } from './feedback-volts.ts';
import { flueLossSum } from './flue-loss.ts';
import { leakRateSum } from './leak-rate.ts';
import { loopSignalSum } from './loop-signal.ts';
import { numberItem } from './number-item.ts';
import { purgeTimeSum } from './purge-time.ts';
import { pick } from './seeded-run.ts';
import type { Sum } from './sum.ts';

type MakeSum = (plant: QuizPlant, chance: RandomState) => Sum | null;

/** One that stands twice comes twice as often. */
const SUMS: readonly MakeSum[] = [
  leakRateSum,
  leakRateSum,
  purgeTimeSum,
  excessAirSum,
  flueLossSum,
  expectedVoltsSum,
  expectedVoltsSum,
  loopSignalSum,
  feedbackVoltsSum,
];

export const calculationMaker: ItemMaker = {
  kind: 'calculation',
  make(plant, seed) {
    const chance = createRandom(seed, `calculation of ${plant.id}`);
    const sum = pick(chance, SUMS)(plant, chance);
    if (sum === null) return { ok: false, why: 'not worth asking' };
    const id = itemId({ kind: 'calculation', plant: plant.id, seed });
    return numberItem(id, plant.id, sum);
  },
};
