/** Which readings speak for a part and which against it, and by which of the things they told. */
import { exactExp, exactLog } from '../../numeric/index.ts';
import type { Evidence } from './evidence.ts';
import type { Told } from './reasoning.ts';
import type { View } from './view-of-knowing.ts';

/** How a reading bears on a part. */
export interface Bearing {
  readonly evidence: Evidence;
  /** ln P(reading | part) − ln P(reading | any other cause), before anything was read. */
  readonly forIt: number;
  /** The same beside the causes that all other readings leave standing. */
  readonly besideRivals: number;
}

/** A reading that is half as likely, or twice, tells something. */
const SPEAKS = exactLog(2);
/** Of the things that one reading told, so many are named. */
const MOST_ASPECTS = 2;
/** A thing that the part would show this much more often than the others, or less. */
const LEAST_DIFFERENCE = 0.15;

/** What rivals fit better speaks against a part, though few causes would show it at all. */
export function speaksAgainst({ besideRivals }: Bearing): boolean {
  return besideRivals <= -SPEAKS;
}
export function speaksFor(bearing: Bearing): boolean {
  return bearing.forIt >= SPEAKS && !speaksAgainst(bearing);
}

/**
 * How every reading bears on a part.
 *
 * Equation: P(reading | part) = Σ w·e^δ / Σ w over the particles of the part, w being their weight
 *   without this very reading; for rivals the same over all other particles, and for anyone with their
 *   weight at the outset.
 *
 * @param causes of the part
 * @param evidence what was read; all that is known if left out
 */
export function bearingsOn(
  view: View,
  causes: readonly number[],
  evidence: readonly Evidence[] = view.evidence(),
): readonly Bearing[] {
  const own = particlesOf(view, causes);
  const weights = ownWeights(view, own);
  const isOwn = new Set(causes);
  const hasSound = causes.some((cause) => view.tables.atlas.causes[cause]?.fault === null);
  return evidence.flatMap((one): Bearing[] => {
    // What was read before a repair says nothing of whether all is well now.
    if (one.ofOldPlant && hasSound) return [];
    const ownLog = logLikelihood(own, weights, one);
    const rivals = othersOf(isOwn, view.ofCause, view.sumsWithout(one));
    const anyone = othersOf(isOwn, one.priorAgreeing(), view.tables.priorOfCause);
    return [{ evidence: one, forIt: ownLog - anyone, besideRivals: ownLog - rivals }];
  });
}

/** What a reading told that the part would show and others not, the most telling first. */
export function agreeing(view: View, causes: readonly number[], evidence: Evidence) {
  return aspects(view, causes, evidence, view.tables.priorShares, 1);
}

/** What a reading told that the part would not show and its rivals would. */
export function differing(view: View, causes: readonly number[], evidence: Evidence) {
  return aspects(view, causes, evidence, view.shares, -1);
}

function aspects(
  view: View,
  causes: readonly number[],
  { observations, told, expDelta: power }: Evidence,
  others: Float64Array,
  sign: 1 | -1,
): readonly Told[] {
  const { atlas } = view.tables;
  const expDelta = power();
  const own = particlesOf(view, causes);
  const weights = ownWeights(view, own);
  const isOwn = new Set(own);
  const all = observations.flatMap(({ key, bin }, i) => {
    const column = atlas.keys[key]?.column;
    const one = told[i];
    if (column === undefined || one === undefined || bin < 0) return [];
    const ownShare = shareAgreeing(
      own,
      (_, at) => (weights[at] as number) / (expDelta[own[at] as number] as number),
      column,
      bin,
    );
    const rest = shareAgreeing(
      [...column.keys()].filter((p) => !isOwn.has(p)),
      (p) => (others[p] as number) / (sign < 0 ? (expDelta[p] as number) : 1),
      column,
      bin,
    );
    return [{ one, apart: sign * (ownShare - rest) }];
  });
  return all
    .filter(({ apart }) => apart >= LEAST_DIFFERENCE)
    .sort((a, b) => b.apart - a.apart)
    .slice(0, MOST_ASPECTS)
    .map(({ one }) => one);
}

function particlesOf({ tables }: View, causes: readonly number[]): readonly number[] {
  return causes.flatMap((cause) => {
    const from = tables.spans[cause] as number;
    return Array.from({ length: (tables.spans[cause + 1] as number) - from }, (_, i) => from + i);
  });
}

/** Relative to the largest, so that none is lost however unlikely the part is. */
function ownWeights({ belief }: View, own: readonly number[]): readonly number[] {
  const most = own.reduce((a, p) => Math.max(a, belief[p] as number), Number.NEGATIVE_INFINITY);
  return own.map((p) => exactExp((belief[p] as number) - most));
}

/** 0 where there is no such particle. */
function logLikelihood(
  own: readonly number[],
  weights: readonly number[],
  { expDelta }: Evidence,
): number {
  const powers = expDelta();
  let having = 0;
  let without = 0;
  own.forEach((p, i) => {
    having += weights[i] as number;
    without += (weights[i] as number) / (powers[p] as number);
  });
  return having > 0 && without > 0 ? exactLog(having / without) : 0;
}

/** Of all other causes, ln of one sum over another. */
function othersOf(isOwn: ReadonlySet<number>, above: Float64Array, below: Float64Array): number {
  let having = 0;
  let without = 0;
  for (let cause = 0; cause < above.length; cause++) {
    if (isOwn.has(cause)) continue;
    having += above[cause] as number;
    without += below[cause] as number;
  }
  return having > 0 && without > 0 ? exactLog(having / without) : 0;
}

function shareAgreeing(
  of: readonly number[],
  weightOf: (p: number, at: number) => number,
  column: Uint8Array,
  bin: number,
): number {
  let all = 0;
  let agreeing = 0;
  of.forEach((p, i) => {
    const weight = weightOf(p, i);
    all += weight;
    if (column[p] === bin) agreeing += weight;
  });
  return all > 0 ? agreeing / all : 0;
}
