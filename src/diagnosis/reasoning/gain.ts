import { exactLog } from '../../numeric/index.ts';
import { SURPRISE } from './belief.ts';
import type { Particles } from './particles.ts';
import { type PatternSums, type Patterns, sumPatterns } from './patterns.ts';
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
  readonly ofCause: Float64Array;
  /** Of each cause, its part of the uncertainty, bits. */
  readonly bitsOf: Float64Array;
  readonly bits: number;
  /** Joint uncertainty of cause and answer, where particles of a cause differ. */
  readonly sumsOf: (patterns: Patterns) => PatternSums;
}

export function uncertaintyOf(particles: Particles, shares: Float64Array): Uncertainty {
  const ofCause = new Float64Array(particles.causes.length);
  for (let p = 0; p < shares.length; p++) {
    const cause = particles.causeOf[p] as number;
    ofCause[cause] = (ofCause[cause] as number) + (shares[p] as number);
  }
  const bitsOf = ofCause.map(surprisal);
  const known = new Map<Patterns, PatternSums>();
  const sumsOf = (patterns: Patterns) => {
    const sums = known.get(patterns) ?? sumPatterns(patterns, shares, ofCause, jointTerm);
    known.set(patterns, sums);
    return sums;
  };
  return { ofCause, bitsOf, bits: bitsOf.reduce((a, b) => a + b, 0), sumsOf };
}

/** An answer is as in the posterior: 1 − ε for a particle's own, ε spread over the others. */
function jointTerm(group: number, cause: number, answers: number): number {
  const other = SURPRISE / (answers - 1);
  return surprisal((1 - SURPRISE - other) * group + other * cause);
}

/**
 * Expected gain of a question about the cause, bits.
 *
 * Equation: H(cause) − Σ P(o)·H(cause after o) = H(cause) + H(o) − H(cause, o).
 * A cause whose particles all answer alike adds its joint entropy in closed form.
 */
export function gainBits(
  { ofCause, bitsOf, bits, sumsOf }: Uncertainty,
  question: Question,
): number {
  const { answers, answerOf, patternsOf, answerOfGroup, patterns } = question;
  if (answers < 2) return 0;
  const { groups, terms } = sumsOf(patterns);
  const other = SURPRISE / (answers - 1);
  const own = 1 - SURPRISE - other;
  const alike = surprisal(1 - SURPRISE) + (answers - 1) * surprisal(other);
  const mass = new Float64Array(answers);
  let joint = 0;
  let mixed = 0;
  let place = 0;
  for (let cause = 0; cause < ofCause.length; cause++) {
    const answer = answerOf[cause] as number;
    if (answer >= 0) {
      const share = ofCause[cause] as number;
      mass[answer] = (mass[answer] as number) + share;
      joint += (bitsOf[cause] as number) + share * alike;
      continue;
    }
    const pattern = patternsOf[mixed++] as number;
    joint += terms[pattern] as number;
    const to = patterns.firstGroup[pattern + 1] as number;
    for (let group = patterns.firstGroup[pattern] as number; group < to; group++) {
      const at = answerOfGroup[place++] as number;
      mass[at] = (mass[at] as number) + (groups[group] as number);
    }
  }
  let ofAnswers = 0;
  for (const here of mass) ofAnswers += surprisal(own * here + other);
  return Math.max(0, bits + ofAnswers - joint);
}
