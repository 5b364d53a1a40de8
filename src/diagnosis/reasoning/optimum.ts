import { type SmallCase, splitBy, weightOf } from './small-case.ts';

/** The exact optimum of a small case. Minutes; kinds that are left are given in rising order. */
export interface Optimum {
  /** Least that is to be expected until no question tells the causes apart any further. */
  value(kinds: readonly number[]): number;
  /** The same when this question is asked next, whether or not that is wise. */
  valueAfter(kinds: readonly number[], question: number): number;
  /** Question to ask next; null where none tells anything more. */
  best(kinds: readonly number[]): number | null;
}

const MOST_STATES = 4000;
/** A set of kinds as a whole number; exact up to 53 of them. */
const BIT = Array.from({ length: 53 }).reduce<number[]>(
  (bits) => [...bits, 2 * (bits.at(-1) ?? 0.5)],
  [],
);

/**
 * Dynamic programming over the sets of kinds that answers can leave.
 *
 * Equation: V(S) = min over q of c(q) + Σ P(o | S)·V(S after o), 0 where no question tells two causes
 *   of S apart.
 * @returns null where there are more sets than it takes on
 */
export function solveCase(small: SmallCase): Optimum | null {
  const known = new Map<number, { readonly value: number; readonly best: number | null }>();
  const cheapest = Math.min(...small.questions.map(({ cost }) => cost));
  const isOpen = openness(small);

  /** What asking comes to; given up, as at least `bound`, once it is no better than that. */
  const asking = (cost: number, parts: readonly (readonly number[])[], bound: number): number => {
    const weights = parts.map((part) => weightOf(small, part));
    const all = weights.reduce((sum, weight) => sum + weight, 0);
    const open = parts.map((part) => isOpen(part));
    const left = weights.reduce((sum, weight, i) => (open[i] ? sum + weight : sum), 0);
    // Whatever stays open costs one more question at least.
    let value = cost + (cheapest * left) / all;
    for (let i = 0; i < parts.length; i++) {
      if (!open[i]) continue;
      if (value >= bound) return value;
      const part = parts[i] as readonly number[];
      value += ((weights[i] as number) / all) * (solve(part).value - cheapest);
    }
    return value;
  };

  const solve = (kinds: readonly number[]) => {
    const name = kinds.reduce((sum, kind) => sum + (BIT[kind] as number), 0);
    const found = known.get(name);
    if (found !== undefined) return found;
    if (known.size >= MOST_STATES) throw TOO_MANY;
    let value = Number.POSITIVE_INFINITY;
    let best: number | null = null;
    if (!isOpen(kinds)) {
      known.set(name, CLOSED);
      return CLOSED;
    }
    small.questions.forEach((question, i) => {
      // One that leaves the set whole is never wise, and would never end.
      const parts = splitBy(question, kinds);
      if (parts.length < 2) return;
      const here = asking(question.cost, parts, value);
      if (here < value) {
        value = here;
        best = i;
      }
    });
    const solved = { value, best };
    known.set(name, solved);
    return solved;
  };

  const whole = [...small.weights.keys()];
  try {
    solve(whole);
  } catch (error) {
    if (error === TOO_MANY) return null;
    throw error;
  }
  return {
    value: (kinds) => solve(kinds).value,
    best: (kinds) => solve(kinds).best,
    valueAfter: (kinds, question) => {
      const asked = small.questions[question] as SmallCase['questions'][number];
      const parts = splitBy(asked, kinds);
      return parts.length < 2
        ? asked.cost + solve(kinds).value
        : asking(asked.cost, parts, Number.POSITIVE_INFINITY);
    },
  };
}
const CLOSED = { value: 0, best: null };
const TOO_MANY = new Error('more sets than can be thought through');

/** Whether two causes are left that some question tells apart. */
function openness({ causeOf, questions }: SmallCase): (kinds: readonly number[]) => boolean {
  const apart = causeOf.map((cause, kind) =>
    causeOf.map(
      (otherCause, other) =>
        cause !== otherCause && questions.some(({ answers }) => answers[kind] !== answers[other]),
    ),
  );
  return (kinds) => kinds.some((kind) => kinds.some((other) => apart[kind]?.[other]));
}
