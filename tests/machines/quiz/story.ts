import {
  foldQuiz,
  type QuizEvent,
  type QuizKind,
  type QuizRefusal,
  type QuizState,
  type Sureness,
  takeQuizEntry,
} from '../../../machines/index.ts';

export const ITEMS = ['cause/dairy/1', 'order/laundry/2', 'calculation/school/3'];

export function begin(mode: QuizKind, items: readonly string[] = ITEMS): QuizEvent {
  return { type: 'begin', mode, seed: 7, items };
}
export function answer(place: number, option = 0, confidence: Sureness = 55): QuizEvent {
  return { type: 'answer', place, response: { is: 'choice', option }, confidence };
}
export const NEXT: QuizEvent = { type: 'next' };
export const FINISH: QuizEvent = { type: 'finish' };
export function pass(place: number): QuizEvent {
  return { type: 'pass', place };
}
export function goTo(place: number): QuizEvent {
  return { type: 'go to', place };
}

export function atMinute(minute: number): string {
  return `2026-03-02T08:${String(minute).padStart(2, '0')}:00.000Z`;
}

/** A quiz by which all of these were taken, one a minute. */
export function quizAfter(...events: readonly QuizEvent[]): QuizState {
  let state = foldQuiz([]);
  events.forEach((event, minute) => {
    const taken = takeQuizEntry(state, { atISO: atMinute(minute), ...event });
    if (!taken.ok) throw new Error(`${event.type} at ${minute} was refused: ${taken.refusal}`);
    state = taken.state;
  });
  return state;
}

export function refusalOf(state: QuizState, event: QuizEvent): QuizRefusal | null {
  const taken = takeQuizEntry(state, { atISO: atMinute(59), ...event });
  return taken.ok ? null : taken.refusal;
}
