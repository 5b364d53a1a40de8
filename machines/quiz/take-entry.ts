import { initialTransition, transition } from 'xstate';
import type { QuizEntry } from './entries.ts';
import { quizMachine } from './quiz.ts';
import type { QuizContext } from './setup.ts';
import type { QuizState, QuizTaken } from './state.ts';

const EMPTY: QuizContext = {
  mode: null,
  seed: 0,
  items: [],
  startedISO: null,
  place: 0,
  answers: [],
  endedISO: null,
  refusal: null,
};

/** A quiz before anything is said. */
export function createQuiz(): QuizState {
  const [first] = initialTransition(quizMachine, EMPTY);
  return { phase: first.value, entries: [], ...paperOf(first.context) };
}

/** The quiz after one more entry, or why it is not taken. Pure: the state given is left as it is. */
export function takeQuizEntry(state: QuizState, entry: QuizEntry): QuizTaken {
  const { phase, entries, ...paper } = state;
  const before = quizMachine.resolveState({ value: phase, context: { ...paper, refusal: null } });
  const [after] = transition(quizMachine, before, entry);
  const { refusal } = after.context;
  if (refusal !== null) return { ok: false, refusal };
  return {
    ok: true,
    state: { phase: after.value, entries: [...entries, entry], ...paperOf(after.context) },
  };
}

/**
 * The quiz as it stands after all of these entries: leaving and coming back. One that is not taken
 * changes nothing and is not among the entries of the result.
 */
export function foldQuiz(entries: readonly QuizEntry[]): QuizState {
  let state = createQuiz();
  for (const entry of entries) {
    const taken = takeQuizEntry(state, entry);
    if (taken.ok) state = taken.state;
  }
  return state;
}

function paperOf({ refusal: _, ...paper }: QuizContext) {
  return paper;
}
