/** What an author wants to know of a case: can it be told, by what way, how hard is it. */
import type { Atlas } from '../atlas/atlas.ts';
import type { Sample } from '../atlas/take-sample.ts';
import { difficultyOf, difficultyScore } from './difficulty.ts';
import { type CauseFound, findCause } from './find-cause.ts';

export interface CaseAsked {
  /** It knows every fault of the case. */
  readonly atlas: Atlas;
  /** Everything that the plant of the case reads; without what was mended of it. */
  readonly truth: (mended: readonly string[]) => Sample;
  /** Faults that are its cause; none: nothing is wrong with the plant. */
  readonly own: readonly string[];
  /** What may be taken along. */
  readonly tools: readonly string[] | 'all';
  /** A fault is not always there. */
  readonly comesAndGoes: boolean;
}

export interface CaseDiagnosed {
  /** One cause after the other, each mended before the next is looked for. */
  readonly rounds: readonly CauseFound[];
  /** Without the repairs between. */
  readonly minutes: number;
  readonly checks: number;
  /** Whether every cause is known in the end. */
  readonly found: boolean;
  /** 1 easy to 5 hard; own scale. */
  readonly difficulty: number;
  /** The same, not rounded. */
  readonly score: number;
}

/**
 * The way of an expected-cost optimum where the case is small enough, greedy before that, from what the
 * panel tells on arrival.
 */
export function diagnoseCase({ atlas, truth, own, tools, comesAndGoes }: CaseAsked): CaseDiagnosed {
  const rounds: CauseFound[] = [];
  let left = own;
  do {
    const mended = own.filter((fault) => !left.includes(fault));
    const round = findCause(atlas, truth(mended), left, tools, mended);
    rounds.push(round);
    left = left.filter((fault) => fault !== round.cause);
  } while (left.length > 0 && rounds.at(-1)?.found === true);
  const steps = rounds.flatMap(({ path }) => path);
  const minutes = steps.reduce((sum, step) => sum + step.minutes, 0);
  const effort = {
    checks: steps.length,
    minutes,
    rest: Math.max(...rounds.map(({ inseparable }) => inseparable.length)),
    faults: own.length,
    comesAndGoes,
  };
  return {
    rounds,
    minutes,
    checks: steps.length,
    found: left.length === 0 && rounds.every(({ found }) => found),
    difficulty: difficultyOf(effort),
    score: difficultyScore(effort),
  };
}
