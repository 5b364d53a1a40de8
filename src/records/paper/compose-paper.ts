import { composeQuiz, type ItemCard, type ItemKind } from '../../quiz/index.ts';

export interface PaperChoice {
  readonly number: number;
  /** How many questions at most. */
  readonly count: number;
  /** Empty: all. What is about no plant goes with every one. */
  readonly plants: readonly string[];
  /** Empty: all. */
  readonly skills: ItemCard['skills'];
  /** Empty: all. */
  readonly kinds: readonly ItemKind[];
}

/** A paper is for a whole group: nobody's answers count, and no day does. */
const NOBODY = { answers: [], ratings: {}, due: [], nowISO: '2026-01-01T00:00:00.000Z' } as const;

/** @returns ids in the order asked, spread over skills as an exam is; the same for the same choice */
export function composePaper(
  { number, count, plants, skills, kinds }: PaperChoice,
  cards: readonly ItemCard[],
): readonly string[] {
  const wanted = cards.filter(
    (card) =>
      (plants.length === 0 || card.plant === '' || plants.includes(card.plant)) &&
      (skills.length === 0 || card.skills.some((skill) => skills.includes(skill))) &&
      (kinds.length === 0 || kinds.includes(card.kind)),
  );
  return composeQuiz({ mode: 'exam', count, cards: wanted, seed: number, ...NOBODY });
}
