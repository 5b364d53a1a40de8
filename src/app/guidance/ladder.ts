import { HINT_RUNGS, type HintRung } from '../../../machines/job/index.ts';
import type { Advice, Reasoning } from '../../diagnosis/index.ts';
import { toolFor } from '../../wording/index.ts';

/** A ladder lasts from one decision to the next: what has been said stands, though time goes on. */
export interface Ladder {
  /** What it was last made out from. */
  readonly reasoning: Reasoning;
  /** Null where nothing is left to be told apart. */
  readonly advice: Advice | null;
  /** Hints written down before it began. */
  readonly hintsBefore: number;
}

interface Paper {
  readonly hints: readonly { readonly t: number }[];
  readonly tools: readonly string[];
}

/** The ladder that stands, given the one before; the same one where nothing has changed. */
export function ladderAfter(
  before: Ladder | null,
  reasoning: Reasoning | null,
  { hints, tools }: Paper,
): Ladder | null {
  if (reasoning === null || before?.reasoning === reasoning) return before;
  const advice = adviceOf(reasoning, tools);
  if (before === null) return { reasoning, advice, hintsBefore: hintsOfOld(reasoning, hints) };
  if (decisive(before.reasoning).length !== decisive(reasoning).length) {
    return { reasoning, advice, hintsBefore: hints.length };
  }
  // While nothing has been told of it, the newest advice is the best.
  const begun = hints.length > before.hintsBefore;
  return { ...before, reasoning, advice: begun ? before.advice : advice };
}

/** Rungs of this ladder that were taken, from none to all. */
export function rungsOf(ladder: Ladder | null, { hints }: Paper): readonly HintRung[] {
  if (ladder === null) return [];
  return HINT_RUNGS.slice(0, Math.max(0, hints.length - ladder.hintsBefore));
}

/** The tool it takes was left in the van. */
export function isLeftBehind({ check }: Advice, tools: readonly string[]): boolean {
  const tool = toolFor(check);
  return tool !== null && !tools.includes(tool);
}

/** Asking people and ranking suspects change nothing of what can be found out. */
function decisive({ decisions }: Reasoning): Reasoning['decisions'] {
  return decisions.filter(({ kind }) => kind !== 'ask' && kind !== 'suspect');
}

/** The best that can be done with what is in the bag; else what would have been. */
function adviceOf({ next }: Reasoning, tools: readonly string[]): Advice | null {
  return next.find((advice) => !isLeftBehind(advice, tools)) ?? next[0] ?? null;
}

/** On coming back to saved work: what was written down after the last decision is of this hint. */
function hintsOfOld(reasoning: Reasoning, hints: Paper['hints']): number {
  const lastS = decisive(reasoning).at(-1)?.t ?? 0;
  return hints.filter(({ t }) => t < lastS).length;
}
