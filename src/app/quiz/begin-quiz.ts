import type { Skill } from '../../../machines/job/index.ts';
import { createQuiz, takeQuizEntry } from '../../../machines/quiz/index.ts';
import type { QuizMode } from '../../quiz/index.ts';
import { preloadItem } from '../quiz-item/item-maker.ts';
import { warmUp } from '../quiz-item/run-workers.ts';
import { keepOpenQuiz } from './device-open.ts';
import { quizName } from './quiz-name.ts';
import { itemsOf, type QuizGround } from './quiz-offers.ts';

const SEEDS = 0x7fffffff;

/** By which questions are chosen, another each time. */
export function anySeed(): number {
  return Math.floor(Math.random() * SEEDS);
}

/** @returns the name of the quiz begun; null where there is nothing to ask */
export function beginQuiz(
  ground: QuizGround,
  mode: QuizMode,
  seed: number,
  skill?: Skill,
): string | null {
  const items = itemsOf(ground, { mode, seed, ...(skill === undefined ? {} : { skill }) });
  return beginWith(mode, items, seed, skill ?? null);
}

/** With these questions and no others. */
export function beginWith(
  mode: QuizMode,
  items: readonly string[],
  seed = 0,
  skill: Skill | null = null,
): string | null {
  const atISO = new Date().toISOString();
  const begun = takeQuizEntry(createQuiz(), { type: 'begin', atISO, mode, seed, items });
  if (!begun.ok) return null;
  const [first] = items;
  if (first !== undefined) preloadItem(first);
  // Its start is run in another.
  warmUp();
  // What the device will not keep goes on as long as the page; the quiz itself says so.
  keepOpenQuiz({ skill, entries: begun.state.entries, drafts: [] });
  return quizName(atISO);
}
