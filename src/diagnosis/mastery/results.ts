/** From a list of results to ratings: the list is what is kept, ratings are made from it each time. */
import type { Guidance, Skill } from '../../../machines/job/index.ts';
import { helpGiven, type ResultKind } from './difficulty.ts';
import { afterResult, type Ratings } from './rating.ts';

export const CONDUCT_WORDS = ['clean', 'careless', 'unsafe'] as const;
export type ConductWord = (typeof CONDUCT_WORDS)[number];

/** One attempt at one exercise, once it is over. Plain data. */
export interface PractiseResult {
  readonly kind: ResultKind;
  readonly id: string;
  /** When this attempt was begun: with kind and id its name. */
  readonly startedISO: string;
  readonly atISO: string;
  readonly skills: readonly Skill[];
  /** Of the exercise without help, log-odds. */
  readonly difficulty: number;
  readonly guidance: Guidance | null;
  /** Rungs of hints taken. */
  readonly hints: number;
  /** 0 to 1. */
  readonly outcome: number;
  /** Null where nothing was done that could have been unsafe. */
  readonly conduct: ConductWord | null;
}

/** Nobody's way is the very best one: a cause found by readings on four fifths of it is all one could ask. */
const AS_GOOD_AS_WHOLE = 0.9;
/** Unsafe is no conduct at all; careless is most of it. */
const CONDUCT_OUTCOMES: Readonly<Record<ConductWord, number>> = {
  clean: 1,
  careless: 0.6,
  unsafe: 0,
};
/** A job that is not about conduct has fewer occasions to show it. */
const WEIGHT_OF_CONDUCT_BESIDE = 0.5;

/** The name of an attempt; a result counts once, however often it comes in. */
export function keyOfResult({ kind, id, startedISO }: Omit<PractiseResult, 'skills'>): string {
  return `${kind} ${id} ${startedISO}`;
}

/** Results in the order of time; those of one moment in the order of their names. */
export function inOrder<R extends PractiseResult>(results: readonly R[]): R[] {
  return [...results].sort(
    (a, b) => compare(a.atISO, b.atISO) || compare(keyOfResult(a), keyOfResult(b)),
  );
}

/** What all results together say. The order in which they come in does not matter. */
export function ratingsOf(results: readonly PractiseResult[]): Ratings {
  const seen = new Set<string>();
  const tried = new Set<string>();
  let ratings: Ratings = {};
  for (const result of inOrder(results)) {
    const key = keyOfResult(result);
    if (seen.has(key)) continue;
    seen.add(key);
    const exercise = `${result.kind} ${result.id}`;
    ratings = withResult(ratings, result, tried.has(exercise));
    tried.add(exercise);
  }
  return ratings;
}

function withResult(ratings: Ratings, result: PractiseResult, repeated: boolean): Ratings {
  const { skills, difficulty, outcome, conduct } = result;
  const { ease, weight } = helpGiven({ ...result, repeated });
  const others = skills.filter((skill) => skill !== 'conduct');
  const isJudged = conduct !== null;
  const moved = afterResult(ratings, {
    // Where conduct was not judged by what was done, a question about it is like any other.
    skills: isJudged ? others : skills,
    difficulty: difficulty - ease,
    outcome: outcome / AS_GOOD_AS_WHOLE,
    weight,
  });
  if (!isJudged) return moved;
  // Hints are about what to read, never about how to work: conduct has no help to take off.
  const alone = helpGiven({ kind: result.kind, guidance: null, hints: 0, repeated: false });
  return afterResult(moved, {
    skills: ['conduct'],
    difficulty,
    outcome: CONDUCT_OUTCOMES[conduct],
    weight: alone.weight * (others.length < skills.length ? 1 : WEIGHT_OF_CONDUCT_BESIDE),
  });
}

/** By code unit: the same in every language of the device. */
function compare(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}
