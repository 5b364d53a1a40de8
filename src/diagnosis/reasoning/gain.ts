import { exactLog } from '../../numeric/index.ts';
import { SURPRISE } from './belief.ts';
import type { Particles } from './particles.ts';
import type { Question } from './questions.ts';

const LN_2 = exactLog(2);
/** A check worth less than this, in bits, was not worth its time. */
export const REDUNDANT_BITS = 0.05;

/** −x·log₂x, 0 at 0. */
function surprisal(x: number): number {
  return x > 0 ? (-x * exactLog(x)) / LN_2 : 0;
}

/** Uncertainty over shares that sum to 1, bits. */
export function entropyBits(shares: Float64Array): number {
  let bits = 0;
  for (const share of shares) bits += surprisal(share);
  return bits;
}

/** What is asked of one belief again and again, worked out once. */
export interface Uncertainty {
  readonly shares: Float64Array;
  readonly ofCause: Float64Array;
  /** Of each cause, its part of the uncertainty, bits. */
  readonly bitsOf: Float64Array;
  readonly bits: number;
}

export function uncertaintyOf(particles: Particles, shares: Float64Array): Uncertainty {
  const ofCause = new Float64Array(particles.causes.length);
  for (let p = 0; p < shares.length; p++) {
    const cause = particles.causeOf[p] as number;
    ofCause[cause] = (ofCause[cause] as number) + (shares[p] as number);
  }
  const bitsOf = ofCause.map(surprisal);
  return { shares, ofCause, bitsOf, bits: bitsOf.reduce((a, b) => a + b, 0) };
}

/**
 * Expected gain of a question about the cause, bits.
 *
 * Equation: H(cause) − Σ P(o)·H(cause after o) = H(cause) + H(o) − H(cause, o), with the answer of a
 *   particle taken as in the posterior: 1 − ε for its own, ε spread over the others.
 * A cause whose particles all answer alike adds its joint entropy in closed form.
 */
export function gainBits(
  { causeOf }: Particles,
  { shares, ofCause, bitsOf, bits }: Uncertainty,
  { column, answers, answerOf }: Question,
  spans: Uint32Array,
): number {
  if (answers < 2) return 0;
  const other = SURPRISE / (answers - 1);
  const own = 1 - SURPRISE - other;
  const mass = new Float64Array(answers);
  const mixed = new Float64Array(answers);
  const alike = surprisal(1 - SURPRISE) + (answers - 1) * surprisal(other);
  let joint = 0;
  for (let cause = 0; cause < ofCause.length; cause++) {
    const share = ofCause[cause] as number;
    if (share <= 0) continue;
    const answer = answerOf[cause] as number;
    if (answer >= 0) {
      mass[answer] = (mass[answer] as number) + share;
      joint += (bitsOf[cause] as number) + share * alike;
      continue;
    }
    mixed.fill(0);
    for (let p = spans[cause] as number; p < causeOf.length && causeOf[p] === cause; p++) {
      const at = column[p] as number;
      mixed[at] = (mixed[at] as number) + (shares[p] as number);
    }
    let never = 0;
    for (let o = 0; o < answers; o++) {
      const here = mixed[o] as number;
      if (here === 0) {
        never += 1;
        continue;
      }
      mass[o] = (mass[o] as number) + here;
      joint += surprisal(own * here + other * share);
    }
    joint += never * surprisal(other * share);
  }
  let ofAnswers = 0;
  for (const here of mass) ofAnswers += surprisal(own * here + other);
  return Math.max(0, bits + ofAnswers - joint);
}
