/** A belief that is narrow enough to be thought through to its end. */
import { solveCase } from '../reasoning/optimum.ts';
import type { Question } from '../reasoning/questions.ts';
import { type SmallCase, splitBy, weightOf } from '../reasoning/small-case.ts';
import type { CaseTables } from './case-tables.ts';
import { type RankedAsk, worthAsking } from './ranking.ts';
import type { Outlook } from './shares-of-parts.ts';

export interface ThoughtThrough {
  /** What it costs at the least to know all that can be known, minutes. */
  readonly value: number;
  /** What is asked next for it; null where nothing more can be known. */
  readonly best: RankedAsk | null;
  /** The same with the extra question asked next, at this cost. */
  readonly valueAfter: (cost: number) => number;
}

/** Particles less likely than this share of the likeliest are out of the question. */
const OUT_OF_QUESTION = 1e-3;
const MOST_KINDS = 24;
const MOST_QUESTIONS = 12;

/**
 * @param extra a question that is asked next, whether or not that is wise
 * @returns null where too much is open
 */
export function thinkThrough(
  { atlas }: CaseTables,
  { shares }: Outlook,
  ranked: readonly RankedAsk[],
  extra: Question | null,
): ThoughtThrough | null {
  const most = shares.reduce((a, b) => Math.max(a, b), 0);
  const left: number[] = [];
  shares.forEach((share, p) => {
    if (share > most * OUT_OF_QUESTION) left.push(p);
  });
  const answersOf = ({ column }: Question) => left.map((p) => column[p] as number);
  const asked: { readonly ask: RankedAsk; readonly answers: readonly number[] }[] = [];
  const splits = new Set<number>();
  for (const ask of worthAsking(ranked)) {
    const { split } = ask.ask.question;
    if (splits.has(split)) continue;
    splits.add(split);
    asked.push({ ask, answers: answersOf(ask.ask.question) });
    if (asked.length === MOST_QUESTIONS) break;
  }
  const extraAnswers = extra === null ? left.map(() => 0) : answersOf(extra);
  const firsts = new Map<string, number>();
  const weights: number[] = [];
  const places: number[] = [];
  for (let i = 0; i < left.length; i++) {
    const p = left[i] as number;
    const answers = asked.map((one) => one.answers[i]);
    const name = [atlas.causeOf[p], extraAnswers[i], ...answers].join();
    const share = shares[p] as number;
    const kind = firsts.get(name);
    if (kind !== undefined) {
      weights[kind] = (weights[kind] as number) + share;
      continue;
    }
    if (firsts.size === MOST_KINDS) return null;
    firsts.set(name, weights.length);
    weights.push(share);
    places.push(i);
  }
  const all = weights.reduce((a, b) => a + b, 0);
  const small: SmallCase = {
    weights: weights.map((weight) => weight / all),
    causeOf: places.map((i) => atlas.causeOf[left[i] as number] as number),
    questions: asked.map(({ ask, answers }, place) => ({
      answers: places.map((i) => answers[i] as number),
      cost: ask.cost,
      place,
    })),
  };
  return solved(
    small,
    asked.map(({ ask }) => ask),
    places.map((i) => extraAnswers[i] as number),
  );
}

function solved(
  small: SmallCase,
  asked: readonly RankedAsk[],
  extraAnswers: readonly number[],
): ThoughtThrough | null {
  const kinds = [...small.weights.keys()];
  const optimum = small.questions.length === 0 ? NOTHING_TO_ASK : solveCase(small);
  if (optimum === null) return null;
  const best = optimum.best(kinds);
  return {
    value: optimum.value(kinds),
    best: best === null ? null : (asked[best] ?? null),
    valueAfter: (cost) =>
      splitBy({ answers: extraAnswers, cost, place: -1 }, kinds).reduce(
        (sum, part) => sum + weightOf(small, part) * optimum.value(part),
        cost,
      ),
  };
}
const NOTHING_TO_ASK = { value: () => 0, best: () => null };
