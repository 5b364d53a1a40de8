import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SKILLS } from '../../machines/job/index.ts';
import { ITEM_KINDS, type ItemCard } from '../../src/quiz/index.ts';
import { composePaper, type PaperChoice } from '../../src/records/index.ts';

const PLANTS = ['dairy', 'laundry', 'school'] as const;
const CARDS: readonly ItemCard[] = Array.from({ length: 180 }, (_, i) => {
  const kind = ITEM_KINDS[i % ITEM_KINDS.length] ?? 'cause';
  const plant = i % 29 === 0 ? '' : (PLANTS[i % 3] ?? '');
  return {
    id: `${kind}/${plant}/${i}`,
    kind,
    plant,
    topic: `${kind}/${i % 40}`,
    skills: [SKILLS[i % SKILLS.length] ?? 'air'],
    difficulty: (i % 9) / 2 - 2,
    place: i % 3,
  };
});
const ALL: PaperChoice = { number: 417, count: 20, plants: [], skills: [], kinds: [] };
const byId = new Map(CARDS.map((card) => [card.id, card]));

describe('a paper by its number', () => {
  it('is the same however the list of questions is ordered, and another by another number', () => {
    const ids = composePaper(ALL, CARDS);
    expect(ids.length).toBe(20);
    expect(composePaper(ALL, [...CARDS].reverse())).toEqual(ids);
    expect(composePaper({ ...ALL, number: 418 }, CARDS)).not.toEqual(ids);
  });

  it('asks only what was chosen, each once, and no fewer than there are topics for', () => {
    fc.assert(
      fc.property(
        fc.record({
          number: fc.integer({ min: 1, max: 9999 }),
          count: fc.integer({ min: 1, max: 40 }),
          plants: fc.subarray([...PLANTS]),
          skills: fc.subarray([...SKILLS]),
          kinds: fc.subarray([...ITEM_KINDS]),
        }),
        (choice) => {
          const fits = CARDS.filter(
            ({ plant, skills, kind }) =>
              (choice.plants.length === 0 ||
                plant === '' ||
                (choice.plants as string[]).includes(plant)) &&
              (choice.skills.length === 0 || choice.skills.some((one) => skills.includes(one))) &&
              (choice.kinds.length === 0 || choice.kinds.includes(kind)),
          );
          const topics = new Set(fits.map(({ topic }) => topic)).size;
          const ids = composePaper(choice, CARDS);
          expect(new Set(ids).size).toBe(ids.length);
          expect(ids.filter((id) => !fits.some((card) => card.id === id))).toEqual([]);
          expect(ids.length).toBeLessThanOrEqual(choice.count);
          expect(ids.length).toBeGreaterThanOrEqual(Math.min(choice.count, topics));
        },
      ),
      { numRuns: 60, seed: 71 },
    );
  });

  it('shares on average less than half of its questions with one of another number', () => {
    const papers = Array.from(
      { length: 8 },
      (_, i) => new Set(composePaper({ ...ALL, number: 400 + i }, CARDS)),
    );
    const shared = papers.flatMap((one, i) =>
      papers.slice(i + 1).map((other) => [...one].filter((id) => other.has(id)).length / one.size),
    );
    expect(shared.reduce((sum, share) => sum + share, 0) / shared.length).toBeLessThan(0.5);
  });

  it('spreads its questions over every skill', () => {
    const skills = composePaper(ALL, CARDS).flatMap((id) => byId.get(id)?.skills ?? []);
    expect(new Set(skills).size).toBe(SKILLS.length);
  });
});
