import type { Atlas } from '../atlas/atlas.ts';
import type { Belief } from '../reasoning/belief.ts';
import { REDUNDANT_BITS } from '../reasoning/gain.ts';
import { solveCase } from '../reasoning/optimum.ts';
import type { Question } from '../reasoning/questions.ts';
import { rankChecks } from '../reasoning/rank-checks.ts';
import { smallCaseOf } from '../reasoning/small-case.ts';
import type { Ask } from './asks.ts';

export interface NextAsk {
  readonly ask: Ask;
  /** Expected gain, bits. */
  readonly bits: number;
}

/**
 * The best thing to ask: by the exact optimum where the case is small enough, else by gain for cost.
 *
 * @returns null where nothing is worth its time any more
 */
export function nextAsk(atlas: Atlas, belief: Belief, open: readonly Ask[]): NextAsk | null {
  const greedy = greedyAsk(atlas, belief, open);
  if (greedy === null) return null;
  const { questions, costOf } = asQuestions(open);
  const small = smallCaseOf(atlas, belief, questions, costOf);
  const optimum = small === null ? null : solveCase(small);
  const best = optimum?.best([...(small?.weights.keys() ?? [])]) ?? null;
  const ask = best === null ? undefined : open[small?.questions[best]?.place ?? -1];
  if (ask === undefined || ask === greedy.ask) return greedy;
  const [worth] = rankChecks(atlas, belief, [ask.question], costOf);
  return { ask, bits: worth?.bits ?? 0 };
}

/** The most for its cost. */
export function greedyAsk(atlas: Atlas, belief: Belief, open: readonly Ask[]): NextAsk | null {
  const { questions, costOf } = asQuestions(open);
  const [first] = rankChecks(atlas, belief, questions, costOf);
  const ask = open.find(({ question }) => question === first?.question);
  return first === undefined || ask === undefined || first.bits < REDUNDANT_BITS
    ? null
    : { ask, bits: first.bits };
}

function asQuestions(open: readonly Ask[]) {
  const costs = new Map(open.map(({ question, cost }) => [question, cost] as const));
  return {
    questions: open.map(({ question }) => question),
    costOf: (question: Question) => costs.get(question) ?? 1,
  };
}
