/** The day a course ends, as its learner set it: reviews that would come later come before it. */
import { deviceShelf, type Shelf } from '../work/shelf.ts';
import { type KeepTrouble, tryPut } from './keep-answers.ts';

export const COURSE_END_KEY = 'flamewright.quiz-course-end';
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/** A day such as 2026-12-18; null where none is set. */
export function courseEnd(shelf: Shelf = deviceShelf): string | null {
  const kept = shelf.get(COURSE_END_KEY);
  return kept !== null && isDay(kept) ? kept : null;
}

/** @param day empty: the course has no end */
export function setCourseEnd(day: string, shelf: Shelf = deviceShelf): KeepTrouble | null {
  if (isDay(day)) return tryPut(shelf, COURSE_END_KEY, day);
  shelf.remove(COURSE_END_KEY);
  return null;
}

/** As the schedule takes it: the instant at which that day begins. */
export function courseEndISO(day: string | null): string | null {
  return day === null ? null : `${day}T00:00:00.000Z`;
}

function isDay(text: string): boolean {
  return DAY.test(text) && !Number.isNaN(Date.parse(text));
}
