import type { Skill } from '../../../machines/job/index.ts';
import type { Ratings } from '../../diagnosis/mastery/index.ts';
import type { GivenAnswer, QuizMode } from '../item/given-answer.ts';
import type { ItemCard } from '../item/item.ts';

export interface QuizWanted {
  readonly mode: QuizMode;
  /** How many at most; of `QUIZ_SIZES` where it is left out. */
  readonly count?: number;
  /** For 'one skill'. */
  readonly skill?: Skill;
  /** All there is to ask. */
  readonly cards: readonly ItemCard[];
  /** All that were ever given, whatever their order. */
  readonly answers: readonly GivenAnswer[];
  /** Of jobs and quizzes together. */
  readonly ratings: Ratings;
  /** Of `dueTopics`, the most urgent first. */
  readonly due: readonly string[];
  readonly seed: number;
  readonly nowISO: string;
}

export const QUIZ_SIZES: Readonly<Record<QuizMode, number>> = {
  short: 5,
  standard: 10,
  exam: 30,
  'one skill': 10,
  'got wrong': 10,
  due: 20,
};
