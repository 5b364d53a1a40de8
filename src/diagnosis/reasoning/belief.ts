import { exactExp, exactLog } from '../../numeric/index.ts';
import { type Observation, type ObservationKey, type Particles, spansOf } from './particles.ts';

/** How often a reading is not what the cause would have given: slips, plants unlike any particle. */
export const SURPRISE = 0.02;
const LOG_AGREES = exactLog(1 - SURPRISE);

/** Where people call for nothing, so often it is because of how the plant is used. */
const USED_WRONGLY = 0.5;

/** Logarithm of the weight of each particle, up to a common amount. */
export type Belief = Float64Array;

/** Before anything was seen: the prior of a cause, shared by its particles. */
export function priorBelief(particles: Particles): Belief {
  const spans = spansOf(particles);
  const belief = new Float64Array(particles.causeOf.length);
  particles.causes.forEach(({ priorWeight }, cause) => {
    const from = spans[cause] as number;
    const to = spans[cause + 1] as number;
    if (to > from) belief.fill(exactLog(priorWeight / (to - from)), from, to);
  });
  const { own } = particles;
  const cause = own === undefined ? undefined : particles.causes[particles.causeOf[own] as number];
  // A plant with nothing wrong that is used wrongly is not one of those that simply run.
  if (own !== undefined && cause?.fault === null) {
    belief[own] = exactLog(USED_WRONGLY * cause.priorWeight);
  }
  return belief;
}

/**
 * After what was seen: 1 − ε where a particle agrees, ε spread over the other answers where it does not.
 *
 * What one check tells at one moment is one observation, however many numbers and words it comes in.
 * The particles that differ in the fewest of them agree: a plant unlike all particles in something that
 * is beside the point, such as a warmer morning, still tells the rest. Each further difference weighs a
 * part of a surprise more. What no particle has tells nothing.
 */
export function afterSeeing(
  belief: Belief,
  particles: Particles,
  seen: readonly Observation[],
): Belief {
  const next = belief.slice();
  const together = new Map<string, Telling[]>();
  for (const { key, bin } of seen) {
    const at = particles.keys[key];
    if (at === undefined || bin < 0 || at.bins.length < 2) continue;
    const name = `${at.check}@${at.moment}`;
    const others = together.get(name);
    if (others === undefined) together.set(name, [{ at, bin }]);
    else others.push({ at, bin });
  }
  for (const telling of together.values()) addEvidence(next, telling, particles);
  return next;
}

interface Telling {
  readonly at: ObservationKey;
  readonly bin: number;
}

function addEvidence(
  belief: Belief,
  telling: readonly Telling[],
  { own, ownLater = [] }: Particles,
): void {
  const differences = new Uint16Array(belief.length);
  for (const { at, bin } of telling) {
    for (let p = 0; p < belief.length; p++) {
      if (at.column[p] !== bin) differences[p] = (differences[p] as number) + 1;
    }
  }
  // The plant of the case itself differs in nothing; who comes next to it has to agree as well.
  let least = telling.length;
  for (let p = 0; p < belief.length; p++) {
    if (p !== own && !ownLater.includes(p)) least = Math.min(least, differences[p] as number);
  }
  const others = Math.max(...telling.map(({ at }) => at.bins.length)) - 1;
  const logDiffers = exactLog(SURPRISE / others);
  for (let p = 0; p < belief.length; p++) {
    const more = Math.max(0, (differences[p] as number) - least);
    const surprise = more === 0 ? LOG_AGREES : logDiffers * (1 + (more - 1) / telling.length);
    belief[p] = (belief[p] as number) + surprise;
  }
}

/** Share of each particle, summing to 1; the largest is taken off first, so nothing underflows to all nought. */
export function sharesOf(belief: Belief): Float64Array {
  let most = Number.NEGATIVE_INFINITY;
  for (const log of belief) most = Math.max(most, log);
  const shares = new Float64Array(belief.length);
  let sum = 0;
  for (let p = 0; p < belief.length; p++) {
    const share = exactExp((belief[p] as number) - most);
    shares[p] = share;
    sum += share;
  }
  for (let p = 0; p < shares.length; p++) shares[p] = (shares[p] as number) / sum;
  return shares;
}

/** Share of each cause. */
export function causeShares(particles: Particles, shares: Float64Array): Float64Array {
  const sums = new Float64Array(particles.causes.length);
  for (let p = 0; p < shares.length; p++) {
    const cause = particles.causeOf[p] as number;
    sums[cause] = (sums[cause] as number) + (shares[p] as number);
  }
  return sums;
}
