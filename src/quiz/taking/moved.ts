/** Difficulties as learners have shown them, beside those that the atlas gave. */
import type { ItemCard } from '../item/item.ts';
import { difficultyOf, FEWEST_LEARNERS, type LearnerAnswer } from './item-difficulty.ts';

export interface MovedDifficulty {
  /** How many have answered it; `FEWEST_LEARNERS` at least. */
  readonly learners: number;
  /** Log-odds. */
  readonly difficulty: number;
}
/** By item id; an item that too few have answered is not there. */
export type Moved = Readonly<Record<string, MovedDifficulty>>;

export function movedBy(cards: readonly ItemCard[], answers: readonly LearnerAnswer[]): Moved {
  const learners = new Map<string, Set<string>>();
  const ofItem = new Map<string, LearnerAnswer[]>();
  for (const answer of answers) {
    const who = learners.get(answer.item) ?? new Set();
    learners.set(answer.item, who.add(answer.learner));
    const own = ofItem.get(answer.item);
    if (own === undefined) ofItem.set(answer.item, [answer]);
    else own.push(answer);
  }
  return Object.fromEntries(
    cards.flatMap((card) => {
      const count = learners.get(card.id)?.size ?? 0;
      if (count < FEWEST_LEARNERS) return [];
      const difficulty = difficultyOf(card, ofItem.get(card.id) ?? []);
      return [[card.id, { learners: count, difficulty: rounded(difficulty) }] as const];
    }),
  );
}

export function withMoved(cards: readonly ItemCard[], moved: Moved): readonly ItemCard[] {
  return cards.map((card) => {
    const shown = moved[card.id];
    return shown === undefined ? card : { ...card, difficulty: shown.difficulty };
  });
}

function rounded(difficulty: number): number {
  return Math.round(1000 * difficulty) / 1000;
}
