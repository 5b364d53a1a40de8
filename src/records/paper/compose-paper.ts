import { composeQuiz, type ItemCard, type ItemKind } from '../../quiz/taking/index.ts';
import { sha1OfText } from '../name-id.ts';

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

/** So many cards are drawn for each question. */
const POOL = 3;
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
  const compose = (from: readonly ItemCard[]) =>
    composeQuiz({ mode: 'exam', count, cards: from, seed: number, ...NOBODY });
  const ids = compose(drawn(wanted, number, count));
  return ids.length < count ? compose(wanted) : ids;
}

/**
 * A part of each skill's cards, drawn by the number: from all of them the best would be nearly the
 * same for every number.
 */
function drawn(cards: readonly ItemCard[], number: number, count: number): readonly ItemCard[] {
  const share = Math.min(1, (POOL * count) / cards.length);
  const bySkill = new Map<string, ItemCard[]>();
  for (const card of cards) {
    const [skill = ''] = card.skills;
    bySkill.set(skill, [...(bySkill.get(skill) ?? []), card]);
  }
  return [...bySkill.values()].flatMap((own) =>
    own
      .map((card) => ({ card, lot: sha1OfText(`${number} ${card.id}`) }))
      .sort((a, b) => (a.lot < b.lot ? -1 : 1))
      .slice(0, Math.max(POOL, Math.ceil(share * own.length)))
      .map(({ card }) => card),
  );
}
