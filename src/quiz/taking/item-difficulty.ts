/**
 * How hard an item turns out to be, once enough people have answered it.
 *
 * Equation: Elo with the chance of a guess. An answer moves the difficulty by the variance that is
 * left × p/P × (P − right), p being the chance of knowing, P that of a right answer; p/P is how much
 * of a right answer is knowledge. What one answer tells, and the variance is left by, is p² (1 − P)/P.
 * Both are of the three-parameter model (slope and information of its log likelihood; Birnbaum 1968).
 * Each learner counts once, by the first answer: a second has been told the reasons.
 *
 * Left out: that the ratings are not sure either. After 300 learners it is off by some 0.2, an item
 * that most of them guess at by some 0.3.
 */
import { expectedScore } from '../../diagnosis/mastery/index.ts';
import type { GivenAnswer } from '../item/given-answer.ts';
import type { ItemCard } from '../item/item.ts';
import { compareText } from './answers.ts';
import { guessChance, rightChance } from './guessing.ts';
import { msOfISO } from './instant.ts';

export interface LearnerAnswer extends Pick<GivenAnswer, 'item' | 'atISO' | 'right'> {
  /** Whoever it was; only whether two are the same counts. */
  readonly learner: string;
  /** Of the skills of the item when it was answered, log-odds; see `meanValue`. */
  readonly rating: number;
}

/** Fewer learners say less than the way the item was made. */
export const FEWEST_LEARNERS = 24;
/** The difficulty worked out from the atlas is off by one level either way. */
const FIRST_VARIANCE = 1;
/** Beyond the range of ratings no answer tells more. */
const BOUND = 4;

/** Log-odds; as on the card while fewer than FEWEST_LEARNERS have answered it. */
export function difficultyOf(
  card: Pick<ItemCard, 'id' | 'kind' | 'difficulty'>,
  answers: readonly LearnerAnswer[],
): number {
  const firsts = firstAnswers(answers.filter(({ item }) => item === card.id));
  if (firsts.length < FEWEST_LEARNERS) return card.difficulty;
  const guess = guessChance(card.kind);
  let difficulty = card.difficulty;
  let precision = 1 / FIRST_VARIANCE;
  for (const { rating, right } of firsts) {
    const chance = rightChance(rating, difficulty, guess);
    const known = expectedScore(rating, difficulty) / chance;
    precision += known * known * chance * (1 - chance);
    difficulty += (known * (chance - (right ? 1 : 0))) / precision;
    difficulty = Math.min(BOUND, Math.max(-BOUND, difficulty));
  }
  return difficulty;
}

function firstAnswers(answers: readonly LearnerAnswer[]): LearnerAnswer[] {
  const first = new Map<string, LearnerAnswer>();
  for (const answer of [...answers].sort(inTime)) {
    if (!first.has(answer.learner)) first.set(answer.learner, answer);
  }
  return [...first.values()];
}

function inTime(a: LearnerAnswer, b: LearnerAnswer): number {
  return (
    msOfISO(a.atISO) - msOfISO(b.atISO) ||
    compareText(a.learner, b.learner) ||
    Number(a.right) - Number(b.right) ||
    a.rating - b.rating
  );
}
