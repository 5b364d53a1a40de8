/** A quiz taken in a class: who was right is made out anew, from the items made again. */
import {
  foldQuiz,
  type QuizEntry,
  type QuizState,
  takeQuizEntry,
} from '../../../machines/quiz/index.ts';
import { type GivenAnswer, givenAnswer, type Item } from '../../quiz/index.ts';
import { MOST_QUIZ_ENTRIES, quizEntrySchema } from '../quiz-log/index.ts';

export const QUIZ_WORK_REFUSALS = [
  'not understood',
  'too long',
  /** Begun with other questions, or in another way, than the class was given. */
  'other questions',
  /** An entry that no quiz would have taken. */
  'quiz refuses',
] as const;
export type QuizWorkRefusal = (typeof QUIZ_WORK_REFUSALS)[number];

export interface QuizRefused {
  readonly ok: false;
  readonly why: QuizWorkRefusal;
  /** Place in what was handed in, as in `entries.3`. */
  readonly where: string;
  readonly detail: string;
}

/** What the class was given to answer. */
export interface AskedQuiz {
  readonly items: readonly string[];
  readonly mode: string;
}

export interface JudgedQuiz {
  readonly ok: true;
  /** In the order of the questions. */
  readonly answers: readonly GivenAnswer[];
  readonly right: number;
  /** Questions that could be asked; one that is made no more counts for nobody. */
  readonly asked: number;
  /** Right of asked, 0 to 1; null where nothing could be asked. */
  readonly score: number | null;
  readonly finished: boolean;
  /** Items that are made no more. */
  readonly gone: readonly string[];
}

/**
 * @param entries as they were handed in
 * @param makeItem null where there is no such item any more
 */
export function judgeQuiz(
  asked: AskedQuiz,
  entries: readonly unknown[],
  makeItem: (id: string) => Item | null,
): JudgedQuiz | QuizRefused {
  const read = readEntries(asked, entries);
  if (!read.ok) return read;
  const { quiz } = read;
  const answers: GivenAnswer[] = [];
  const gone: string[] = [];
  for (const [place, id] of quiz.items.entries()) {
    const item = makeItem(id);
    if (item === null) gone.push(id);
    else answers.push(...answerAt(quiz, place, item));
  }
  // Handed in before anything was begun: all of it was asked, nothing answered.
  const asks = (quiz.mode === null ? asked.items : quiz.items).length - gone.length;
  const right = answers.filter((answer) => answer.right).length;
  const score = asks === 0 ? null : right / asks;
  return { ok: true, answers, right, asked: asks, score, finished: quiz.phase === 'over', gone };
}

function readEntries(
  asked: AskedQuiz,
  entries: readonly unknown[],
): { readonly ok: true; readonly quiz: QuizState } | QuizRefused {
  if (entries.length > MOST_QUIZ_ENTRIES) {
    return refused('too long', MOST_QUIZ_ENTRIES, String(entries.length));
  }
  let quiz = foldQuiz([]);
  for (const [place, one] of entries.entries()) {
    const parsed = quizEntrySchema.safeParse(one);
    if (!parsed.success) return refused('not understood', place, placeOf(parsed.error));
    const entry: QuizEntry = parsed.data;
    if (entry.type === 'begin' && !asksTheSame(asked, entry)) {
      return refused('other questions', place, entry.mode);
    }
    const taken = takeQuizEntry(quiz, entry);
    if (!taken.ok) return refused('quiz refuses', place, taken.refusal);
    quiz = taken.state;
  }
  return { ok: true, quiz };
}

/** The order may be the learner's own. */
function asksTheSame(asked: AskedQuiz, { items, mode }: Extract<QuizEntry, { type: 'begin' }>) {
  return (
    mode === asked.mode &&
    items.length === asked.items.length &&
    items.every((id) => asked.items.includes(id))
  );
}

function answerAt({ mode, startedISO, answers }: QuizState, place: number, item: Item) {
  const answer = answers[place] ?? null;
  if (answer === null || mode === null || startedISO === null) return [];
  return [givenAnswer(item, answer, { mode, startedISO })];
}

function refused(why: QuizWorkRefusal, place: number, detail: string): QuizRefused {
  return { ok: false, why, where: `entries.${place}`, detail };
}

function placeOf(error: { readonly issues: readonly { readonly path: readonly PropertyKey[] }[] }) {
  return (error.issues[0]?.path ?? []).map(String).join('.');
}
