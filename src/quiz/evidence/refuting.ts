/** Which reading rules a cause out, and what the cause would have read there. */
import {
  afterSeeing,
  type Belief,
  NOT_REACHED,
  type Observation,
  priorBelief,
  sharesOf,
  type Told,
} from '../../diagnosis/index.ts';
import type { QuizPlant } from '../item/maker.ts';
import { quizTablesOf } from './quiz-tables.ts';
import type { SeededPlant } from './seeded-plant.ts';
import { toldOf } from './told.ts';

export interface Refuting {
  readonly observation: Observation;
  readonly told: Told;
  /** What most plants of the cause read there; `not reached` where they do not come to it. */
  readonly instead: string;
  /** Share of the plants of the cause, as the other readings leave them, that read as this one does. */
  readonly alike: number;
}

/** So few plants of a cause may read like this one where the reading rules it out. */
export const RULED_OUT_SHARE = 0.05;
/** So many plants of the right cause have to. */
const SPEAKS_SHARE = 0.5;

/**
 * The one thing read that tells most against a cause; the first of them where several are as good.
 *
 * Equation: share = Σ w·[bin agrees] / Σ w over the plants of a cause, w being their weight by all other
 *   readings.
 *
 * @param seen all that is known
 * @param of places in the causes of the atlas: one, or several that it has to rule out together
 * @param among what may be named; all that is known if left out
 * @returns null where no single one rules it out
 */
export function refutingReading(
  plant: QuizPlant,
  seeded: SeededPlant,
  seen: readonly Observation[],
  of: number | readonly number[],
  among: readonly Observation[] = seen,
): Refuting | null {
  const weighed = weighedBy(plant, seen);
  const { isTelling } = quizTablesOf(plant);
  let best: Refuting | null = null;
  let bestWorth = 0;
  for (const observation of among) {
    const { key, bin } = observation;
    const at = plant.atlas.keys[key];
    if (at === undefined || bin < 0 || isTelling[key] !== true) continue;
    const without = weighed(`${at.check}@${at.moment}`);
    const theirs = binShares(plant, without, key, of);
    const ours = binShares(plant, without, key, seeded.cause)[bin] ?? 0;
    const alike = theirs[bin] ?? 0;
    if (alike > RULED_OUT_SHARE || ours < SPEAKS_SHARE) continue;
    const instead = at.bins[indexOfMost(theirs)] ?? '';
    const worth = ours - alike + (instead === NOT_REACHED ? 0 : 1);
    if (best !== null && worth <= bestWorth) continue;
    const [told] = toldOf(plant, seeded, [key]);
    if (told === undefined) continue;
    best = { observation, told, instead, alike };
    bestWorth = worth;
  }
  return best;
}

/** Share of each bin of a key among the plants of some causes, by weights that need not sum to 1. */
export function binShares(
  plant: QuizPlant,
  weights: Float64Array,
  key: number,
  of: number | readonly number[],
): readonly number[] {
  const causes = typeof of === 'number' ? [of] : of;
  const at = plant.atlas.keys[key];
  if (at === undefined) return [];
  const { spans } = quizTablesOf(plant);
  const sums = at.bins.map(() => 0);
  let all = 0;
  for (const cause of causes) {
    for (let p = spans[cause] as number; p < (spans[cause + 1] as number); p++) {
      const bin = at.column[p] as number;
      sums[bin] = (sums[bin] as number) + (weights[p] as number);
      all += weights[p] as number;
    }
  }
  return all > 0 ? sums.map((sum) => sum / all) : sums;
}

/** Weights of all plants without one check at one moment, each of them worked out once. */
export function weighedBy(
  { atlas }: QuizPlant,
  seen: readonly Observation[],
): (name: string) => Float64Array {
  const nameOf = ({ key }: Observation) => {
    const at = atlas.keys[key];
    return `${at?.check}@${at?.moment}`;
  };
  const known = new Map<string, Float64Array>();
  const prior: Belief = priorBelief(atlas);
  return (name) => {
    const found = known.get(name);
    if (found !== undefined) return found;
    const rest = seen.filter((one) => nameOf(one) !== name);
    const weights = sharesOf(afterSeeing(prior, atlas, rest));
    known.set(name, weights);
    return weights;
  };
}

function indexOfMost(shares: readonly number[]): number {
  let best = 0;
  shares.forEach((share, i) => {
    if (share > (shares[best] as number)) best = i;
  });
  return best;
}
