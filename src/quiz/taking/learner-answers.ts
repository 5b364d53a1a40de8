/** What learners' answers say of how hard items are. */
import { meanValue, type PractiseResult, ratingsOf } from '../../diagnosis/mastery/index.ts';
import type { GivenAnswer } from '../item/given-answer.ts';
import type { ItemCard } from '../item/item.ts';
import { mergeAnswers } from './answers.ts';
import type { LearnerAnswer } from './item-difficulty.ts';
import { type Moved, movedBy } from './moved.ts';
import { resultOfAnswer } from './result-of-answer.ts';

/** An answer as a server keeps it. */
export interface KeptAnswer {
  /** Whoever it was; only whether two are the same counts. */
  readonly learner: string;
  readonly answer: GivenAnswer;
}

/** Answers of one learner, in the order of time, each with what the ones before said of the skills asked for. */
export function learnerAnswers(
  learner: string,
  answers: readonly GivenAnswer[],
): readonly LearnerAnswer[] {
  const before: PractiseResult[] = [];
  return answers.map((answer) => {
    const rating = meanValue(ratingsOf(before), answer.skills);
    before.push(resultOfAnswer(answer));
    const { item, atISO, right } = answer;
    return { item, atISO, right, learner, rating };
  });
}

/**
 * How hard items have shown to be to all of them. The same answers give the same, in whatever order
 * they were kept and however often.
 */
export function movedByLearners(cards: readonly ItemCard[], kept: readonly KeptAnswer[]): Moved {
  const ofLearner = new Map<string, GivenAnswer[]>();
  for (const { learner, answer } of kept) {
    const own = ofLearner.get(learner);
    if (own === undefined) ofLearner.set(learner, [answer]);
    else own.push(answer);
  }
  const answers = [...ofLearner].flatMap(([learner, own]) =>
    learnerAnswers(learner, mergeAnswers(own)),
  );
  return movedBy(cards, answers);
}
