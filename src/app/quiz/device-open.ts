/** Quizzes under way on this device; where it keeps nothing they last as long as the page. */
import type { QuizEntry } from '../../../machines/quiz/index.ts';
import { deviceShelf, type Shelf } from '../work/shelf.ts';
import type { KeepTrouble } from './keep-answers.ts';
import { dropOpen, listOpen, type OpenQuiz, readOpen, writeOpen } from './open-quiz.ts';
import { quizName } from './quiz-name.ts';

/** What the device would not take. */
const unkept = new Map<string, OpenQuiz>();

export function openQuiz(name: string, shelf: Shelf = deviceShelf): OpenQuiz | null {
  return unkept.get(name) ?? readOpen(shelf, name);
}

export function keepOpenQuiz(open: OpenQuiz, shelf: Shelf = deviceShelf): KeepTrouble | null {
  const name = nameOf(open.entries);
  const trouble = writeOpen(shelf, open);
  if (trouble === null) unkept.delete(name);
  else unkept.set(name, open);
  return trouble;
}

export function dropOpenQuiz(name: string): void {
  unkept.delete(name);
  dropOpen(deviceShelf, name);
}

export function openQuizNames(): string[] {
  return [...new Set([...unkept.keys(), ...listOpen(deviceShelf)])].sort().reverse();
}

function nameOf(entries: readonly QuizEntry[]): string {
  return quizName(entries[0]?.atISO ?? '');
}
