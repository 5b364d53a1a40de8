import { type ItemCard, withMoved, writtenCards } from '../../quiz/index.ts';
import type { Library } from '../../scenario/index.ts';
import type { BankFile } from '../quiz/bank-file.ts';

/** All that a paper is drawn from: made items and written ones, as the page has them. */
export function paperCards(
  { items, moved = {} }: BankFile,
  { quizzes }: Library,
): readonly ItemCard[] {
  return withMoved([...items, ...writtenCards(quizzes)], moved);
}
