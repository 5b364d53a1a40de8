import { useEffect } from 'react';
import { foldQuiz } from '../../../machines/quiz/index.ts';
import { preloadItem } from '../quiz-item/item-maker.ts';
import { openQuiz } from './device-open.ts';
import { itemsOf, type QuizGround } from './quiz-offers.ts';

/** What the eye has to find first takes longer than that, ms. */
const SETTLED_MS = 300;

/**
 * Makes ahead what is likeliest to be asked for: the question at which the last quiz was left, or the
 * first of a short one.
 *
 * @param ground null while there is no list of questions yet
 * @param open names of quizzes under way, the latest first
 */
export function useFirstItem(
  ground: QuizGround | null,
  open: readonly string[],
  seed: number,
): void {
  const likeliest = ground === null ? null : (leftAt(open[0]) ?? firstOf(ground, seed));
  useEffect(() => {
    if (likeliest === null) return;
    const settled = setTimeout(() => preloadItem(likeliest), SETTLED_MS);
    return () => clearTimeout(settled);
  }, [likeliest]);
}

function leftAt(name: string | undefined): string | null {
  const quiz = name === undefined ? null : openQuiz(name);
  if (quiz === null) return null;
  const { items, place } = foldQuiz(quiz.entries);
  return items[place] ?? null;
}

function firstOf(ground: QuizGround, seed: number): string | null {
  return itemsOf(ground, { mode: 'short', seed })[0] ?? null;
}
