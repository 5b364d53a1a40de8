/** A given answer goes to the answers of this device, and as a result to the learner map. */
import type { QuizState } from '../../../machines/quiz/index.ts';
import { type GivenAnswer, givenAnswer, type Item, resultOfAnswer } from '../../quiz/index.ts';
import type { KeptQuiz } from '../../records/answers/index.ts';
import { addResult, type Counted } from '../learner/keep-results.ts';
import { deviceShelf } from '../work/shelf.ts';
import { type AnswerKept, addAnswers } from './keep-answers.ts';

export interface AnswerCounted {
  readonly answer: AnswerKept;
  readonly result: Counted;
}

/** Null where nothing was answered at this place. */
export function answerAt(
  { mode, startedISO, answers }: Pick<QuizState, 'mode' | 'startedISO' | 'answers'>,
  place: number,
  item: Item,
): GivenAnswer | null {
  const answer = answers[place] ?? null;
  if (answer === null || mode === null || startedISO === null) return null;
  return givenAnswer(item, answer, { mode, startedISO });
}

/** @param quiz once it is over */
export function countAnswers(
  quizStartedISO: string,
  answers: readonly GivenAnswer[],
  quiz: KeptQuiz | null = null,
): AnswerCounted {
  const answer = addAnswers(deviceShelf, quizStartedISO, answers, quiz);
  const results = answers.map((each) =>
    addResult(deviceShelf, {
      ...resultOfAnswer(each),
      skills: [...each.skills],
      parts: { found: null, pathScore: null },
    }),
  );
  return { answer, result: results.find((each) => each !== 'counted') ?? 'counted' };
}
