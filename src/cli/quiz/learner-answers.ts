import { meanValue, type PractiseResult, ratingsOf } from '../../diagnosis/mastery/index.ts';
import { type GivenAnswer, type LearnerAnswer, resultOfAnswer } from '../../quiz/index.ts';

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
