import { type Belief, sharesOf } from './belief.ts';
import { gainBits, uncertaintyOf } from './gain.ts';
import type { Particles } from './particles.ts';
import type { Question } from './questions.ts';

export interface RankedCheck {
  readonly question: Question;
  /** Expected gain, bits. */
  readonly bits: number;
  /** Minutes with surcharges. */
  readonly cost: number;
}

/** The greedy policy: every question by its expected gain for its cost, the best first. */
export function rankChecks(
  particles: Particles,
  belief: Belief,
  questions: readonly Question[],
  costOf: (question: Question) => number,
): readonly RankedCheck[] {
  const uncertainty = uncertaintyOf(particles, sharesOf(belief));
  const known = new Map<number, number>();
  const bitsOf = (question: Question): number => {
    const bits = known.get(question.split) ?? gainBits(uncertainty, question);
    known.set(question.split, bits);
    return bits;
  };
  return questions
    .map((question) => ({ question, bits: bitsOf(question), cost: costOf(question) }))
    .sort((a, b) => b.bits / b.cost - a.bits / a.cost);
}
