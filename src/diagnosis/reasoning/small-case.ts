import { type Belief, sharesOf } from './belief.ts';
import { entropyBits, REDUNDANT_BITS } from './gain.ts';
import type { Particles } from './particles.ts';
import type { Question } from './questions.ts';
import { rankChecks } from './rank-checks.ts';

/**
 * A case small enough to be thought through to its end: kinds of plant it may be, each of which
 * answers every question in one way.
 */
export interface SmallCase {
  /** Share of each kind; they sum to 1. */
  readonly weights: readonly number[];
  /** What is to be told apart: the cause of each kind. */
  readonly causeOf: readonly number[];
  readonly questions: readonly SmallQuestion[];
}
export interface SmallQuestion {
  /** Of each kind. */
  readonly answers: readonly number[];
  readonly cost: number;
  /** Place in the questions that the case was made of. */
  readonly place: number;
}

/** A sum of powers of two names a set of kinds, and stays exact in a double. */
export const MOST_KINDS = 52;
const MOST_QUESTIONS = 24;
/** Particles less likely than this share of the likeliest are out of the question. */
const OUT_OF_QUESTION = 1e-3;

/**
 * The questions that are worth most now, and the kinds of plant they can tell apart.
 *
 * @returns null where more kinds are left than can be thought through
 */
export function smallCaseOf(
  particles: Particles,
  belief: Belief,
  questions: readonly Question[],
  costOf: (question: Question) => number,
): SmallCase | null {
  const shares = sharesOf(belief);
  const most = shares.reduce((a, b) => Math.max(a, b), 0);
  const left = [...shares.keys()].filter((p) => (shares[p] as number) > most * OUT_OF_QUESTION);
  // Each cause is a kind at least.
  if (new Set(left.map((p) => particles.causeOf[p])).size > MOST_KINDS) return null;
  const place = new Map(questions.map((question, i) => [question, i] as const));
  const asked: SmallQuestion[] = [];
  const splits = new Set<number>();
  const seen = new Set<string>();
  for (const { question, bits, cost } of rankChecks(particles, belief, questions, costOf)) {
    if (bits < REDUNDANT_BITS || asked.length === MOST_QUESTIONS) break;
    // Of two that split alike the better value came first.
    if (splits.has(question.split)) continue;
    splits.add(question.split);
    const answers = left.map((p) => question.column[p] as number);
    const split = partitionName(answers);
    if (seen.has(split)) continue;
    seen.add(split);
    asked.push({ answers, cost, place: place.get(question) as number });
  }
  return merged(particles, shares, left, asked);
}

function merged(
  { causeOf }: Particles,
  shares: Float64Array,
  left: readonly number[],
  asked: readonly SmallQuestion[],
): SmallCase | null {
  const kinds = new Map<string, { readonly first: number; weight: number }>();
  left.forEach((particle, i) => {
    const name = [causeOf[particle], ...asked.map(({ answers }) => answers[i])].join();
    const kind = kinds.get(name);
    const share = shares[particle] as number;
    if (kind === undefined) kinds.set(name, { first: i, weight: share });
    else kind.weight += share;
  });
  if (kinds.size > MOST_KINDS) return null;
  const all = [...kinds.values()];
  const sum = all.reduce((a, { weight }) => a + weight, 0);
  return {
    weights: all.map(({ weight }) => weight / sum),
    causeOf: all.map(({ first }) => causeOf[left[first] as number] as number),
    questions: asked.map(({ answers, cost, place }) => ({
      answers: all.map(({ first }) => answers[first] as number),
      cost,
      place,
    })),
  };
}

function partitionName(answers: readonly number[]): string {
  const numbers = new Map<number, number>();
  return answers
    .map((answer) => {
      if (!numbers.has(answer)) numbers.set(answer, numbers.size);
      return numbers.get(answer);
    })
    .join();
}

/** Kinds that are left, and what an answer leaves of them, in the order of the answers' first kinds. */
export function splitBy(
  { answers }: SmallQuestion,
  kinds: readonly number[],
): readonly (readonly number[])[] {
  const found: number[] = [];
  const parts: number[][] = [];
  for (const kind of kinds) {
    const answer = answers[kind] as number;
    const at = found.indexOf(answer);
    if (at < 0) parts[found.push(answer) - 1] = [kind];
    else parts[at]?.push(kind);
  }
  return parts;
}

/** Whether it tells two different causes apart. */
export function separates(
  { causeOf }: SmallCase,
  { answers }: SmallQuestion,
  kinds: readonly number[],
): boolean {
  return kinds.some((kind) =>
    kinds.some((other) => causeOf[kind] !== causeOf[other] && answers[kind] !== answers[other]),
  );
}

export function weightOf({ weights }: SmallCase, kinds: readonly number[]): number {
  return kinds.reduce((sum, kind) => sum + (weights[kind] as number), 0);
}

/** Uncertainty over the causes of the kinds that are left, bits. */
export function bitsLeft(small: SmallCase, kinds: readonly number[]): number {
  const all = weightOf(small, kinds);
  const sums = new Map<number, number>();
  for (const kind of kinds) {
    const cause = small.causeOf[kind] as number;
    sums.set(cause, (sums.get(cause) ?? 0) + (small.weights[kind] as number) / all);
  }
  return entropyBits(Float64Array.from(sums.values()));
}
