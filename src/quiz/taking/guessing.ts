/**
 * What guessing does. Equation: the chance of a right answer is c + (1 − c) p, p being the chance of
 * knowing by rating and difficulty, c that of a guess (the three-parameter model of Birnbaum 1968).
 */
import { expectedScore, meanValue, type Ratings } from '../../diagnosis/mastery/index.ts';
import type { ItemCard, ItemKind } from '../item/item.ts';

/** Nobody guesses the order of several steps or a number with its unit. */
const NOT_TO_BE_GUESSED: readonly ItemKind[] = ['order', 'calculation'];
const ONE_OF_THREE = 1 / 3;

/** Chance of a right answer by whoever knows nothing, 0 to 1. */
export function guessChance(kind: ItemKind): number {
  return NOT_TO_BE_GUESSED.includes(kind) ? 0 : ONE_OF_THREE;
}

/** Chance of a right answer, 0 to 1; rating and difficulty in log-odds. */
export function rightChance(rating: number, difficulty: number, guess: number): number {
  return guess + (1 - guess) * expectedScore(rating, difficulty);
}

/** The same for an item and whoever has these ratings. */
export function rightChanceOf(
  { kind, skills, difficulty }: Pick<ItemCard, 'kind' | 'skills' | 'difficulty'>,
  ratings: Ratings,
): number {
  return rightChance(meanValue(ratings, skills), difficulty, guessChance(kind));
}
