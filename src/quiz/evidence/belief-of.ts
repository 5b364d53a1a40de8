/** What a plant may have after some readings. */
import {
  afterSeeing,
  type Belief,
  causeShares,
  type Observation,
  priorBelief,
  sharesOf,
} from '../../diagnosis/index.ts';
import type { QuizPlant } from '../item/maker.ts';

/** From the prior on, over these observations alone. */
export function beliefOf({ atlas }: QuizPlant, seen: readonly Observation[]): Belief {
  return afterSeeing(priorBelief(atlas), atlas, seen);
}

/** Share of each cause, in the order of the atlas. */
export function causeSharesOf({ atlas }: QuizPlant, belief: Belief): Float64Array {
  return causeShares(atlas, sharesOf(belief));
}
