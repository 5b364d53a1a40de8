import { useEffect, useState } from 'react';
import type { Skill } from '../../../machines/job/index.ts';
import { foldQuiz, type QuizState } from '../../../machines/quiz/index.ts';
import { type GivenAnswer, keyOfAnswer, type QuizMode } from '../../quiz/index.ts';
import { askForItem } from '../quiz-item/item-maker.ts';
import { deviceShelf, type Shelf } from '../work/shelf.ts';
import { useWorkPlace } from '../work/work-place.ts';
import { type AnswerCounted, answerAt, countAnswers } from './count-answer.ts';
import { dropOpenQuiz, openQuiz } from './device-open.ts';
import { GONE } from './gone.ts';
import { keptAnswers } from './keep-answers.ts';
import { closedQuiz, type OpenQuiz } from './open-quiz.ts';
import { startedOf } from './quiz-name.ts';

export interface QuizResult {
  readonly mode: QuizMode;
  readonly skill: Skill | null;
  readonly startedISO: string;
  readonly items: readonly string[];
  /** Of these items; one that was left open has none. */
  readonly answers: readonly GivenAnswer[];
  /** Answered, but the item cannot be made any more: it counts neither way. */
  readonly unjudged: number;
  readonly counted: AnswerCounted | null;
}

export type QuizResultNow =
  | { readonly state: 'unknown' | 'under way' }
  /** Answers are held against their items, one after the other. */
  | { readonly state: 'judging'; readonly done: number; readonly count: number }
  | { readonly state: 'failed'; again(): void }
  | { readonly state: 'there'; readonly result: QuizResult };

/** What came of a quiz. One just handed in is judged here, and goes from what is open to what is kept. */
export function useQuizResult(name: string): QuizResultNow {
  const { shelf, isClass } = useWorkPlace();
  const [now, setNow] = useState<QuizResultNow>(() => atFirst(name, shelf));
  const [attempt, setAttempt] = useState(0);
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt judges what is left
  useEffect(() => {
    let wanted = true;
    const open = openQuiz(name, shelf);
    const state = open === null ? null : foldQuiz(open.entries);
    if (open === null || state?.phase !== 'over') {
      // Another page may have worked it out in between.
      setNow(atFirst(name, shelf));
      return;
    }
    void judge(state, open, (done, count) => {
      if (wanted) setNow({ state: 'judging', done, count });
      return wanted;
    }).then(
      (result) => {
        if (!wanted || result === null) return;
        setNow({ state: 'there', result });
        const counted = result.counted?.answer;
        // In a class it stays until it is told, however long that takes.
        if (!isClass && (counted === 'kept' || counted === 'erased')) dropOpenQuiz(name);
      },
      () => {
        if (wanted) setNow({ state: 'failed', again: () => setAttempt((before) => before + 1) });
      },
    );
    return () => {
      wanted = false;
    };
  }, [name, attempt, shelf, isClass]);
  return now;
}

function atFirst(name: string, shelf: Shelf): QuizResultNow {
  const open = openQuiz(name, shelf);
  if (open !== null) {
    const { phase, items } = foldQuiz(open.entries);
    return phase === 'over'
      ? { state: 'judging', done: 0, count: items.length }
      : { state: 'under way' };
  }
  const startedISO = startedOf(name);
  const { answers, quizzes } = keptAnswers(deviceShelf).record;
  const quiz = quizzes.find((each) => each.startedISO === startedISO);
  if (quiz === undefined) return { state: 'unknown' };
  const { mode, skill, items } = quiz;
  const own = answers.filter(({ quizStartedISO }) => quizStartedISO === startedISO);
  return {
    state: 'there',
    result: { mode, skill, startedISO, items, answers: own, unjudged: 0, counted: null },
  };
}

/**
 * @returns null where nobody waits for it any more: it is judged when it is looked at again
 * @throws where an item could not be made this time
 */
async function judge(
  state: QuizState,
  open: OpenQuiz,
  onDone: (done: number, count: number) => boolean,
): Promise<QuizResult | null> {
  const quiz = closedQuiz(state, open.skill);
  if (quiz === null) return null;
  const { startedISO, mode, skill, items } = quiz;
  const known = new Map(
    keptAnswers(deviceShelf).record.answers.map((answer) => [keyOfAnswer(answer), answer]),
  );
  const answers: GivenAnswer[] = [];
  let unjudged = 0;
  for (const [place, item] of items.entries()) {
    if (!onDone(place, items.length)) return null;
    if ((state.answers[place] ?? null) === null) continue;
    const before = known.get(keyOfAnswer({ item, quizStartedISO: startedISO }));
    const answer = before ?? (await judgeOne(state, place, item));
    if (answer === null) unjudged += 1;
    else answers.push(answer);
  }
  if (!onDone(items.length, items.length)) return null;
  const counted = countAnswers(startedISO, answers, quiz);
  return { mode, skill, startedISO, items, answers, unjudged, counted };
}

/** Null where the item is no more. */
async function judgeOne(state: QuizState, place: number, id: string): Promise<GivenAnswer | null> {
  const made = await askForItem(id);
  if (made.ok) return answerAt(state, place, made.item);
  if (GONE.includes(made.trouble)) return null;
  throw new Error(made.detail);
}
