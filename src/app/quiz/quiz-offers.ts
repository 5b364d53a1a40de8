/** What there is to begin with: from the bank, the answers so far and the day. Pure. */
import type { Skill } from '../../../machines/job/index.ts';
import type { Ratings } from '../../diagnosis/mastery/index.ts';
import {
  composeQuiz,
  dueTopics,
  type GivenAnswer,
  type ItemCard,
  nextDueISO,
  type QuizMode,
} from '../../quiz/index.ts';
import { courseEndISO } from './course-end.ts';

export interface QuizGround {
  readonly cards: readonly ItemCard[];
  readonly answers: readonly GivenAnswer[];
  /** Of jobs and quizzes together. */
  readonly ratings: Ratings;
  readonly nowISO: string;
  /** A day; null where none is set. */
  readonly courseEnd: string | null;
}

export interface Offer {
  readonly mode: QuizMode;
  /** Questions that it would ask; 0: there is nothing to begin. */
  readonly count: number;
}

export interface QuizOffers {
  /** In the order in which they are offered; a quiz by skill is offered beside its skill. */
  readonly offers: readonly Offer[];
  /** When the next topic falls due; null where none is to come. */
  readonly nextDueISO: string | null;
}

const OFFERED: readonly QuizMode[] = ['short', 'standard', 'exam', 'got wrong', 'due'];
/** Any: only how many there are is asked. */
const ANY_SEED = 1;

export function quizOffers(ground: QuizGround): QuizOffers {
  const { answers, nowISO, courseEnd } = ground;
  return {
    offers: OFFERED.map((mode) => ({
      mode,
      count: itemsOf(ground, { mode, seed: ANY_SEED }).length,
    })),
    nextDueISO: nextDueISO(answers, nowISO, { courseEndISO: courseEndISO(courseEnd) }),
  };
}

export interface QuizWish {
  readonly mode: QuizMode;
  readonly seed: number;
  /** Of a quiz by skill. */
  readonly skill?: Skill;
}

/** Ids of items in the order asked; none where there is nothing to ask. */
export function itemsOf(ground: QuizGround, { mode, seed, skill }: QuizWish): readonly string[] {
  const { cards, answers, ratings, nowISO, courseEnd } = ground;
  return composeQuiz({
    mode,
    ...(skill === undefined ? {} : { skill }),
    cards,
    answers,
    ratings,
    due: dueTopics(answers, nowISO, { courseEndISO: courseEndISO(courseEnd) }),
    seed,
    nowISO,
  });
}
