/** How hard items have shown to be to everyone whose answers are kept. */
import { describe, expect, it } from 'vitest';
import { createRandom, nextUniform, shuffled } from '../../../src/numeric/index.ts';
import {
  FEWEST_LEARNERS,
  type GivenAnswer,
  type ItemCard,
  type KeptAnswer,
  movedByLearners,
} from '../../../src/quiz/index.ts';

const card = (id: string): ItemCard => ({
  id,
  kind: 'calculation',
  plant: 'dairy',
  topic: id,
  skills: ['air'],
  difficulty: 0,
  place: null,
});
const CARDS = [card('easy'), card('hard'), card('rare')];
const CHANCES: Readonly<Record<string, number>> = { easy: 0.9, hard: 0.2, rare: 0.5 };

function answerTo(item: ItemCard, minute: number, right: boolean): GivenAnswer {
  const { id, kind, plant, topic, skills, difficulty } = item;
  const atISO = `2026-03-02T10:${String(minute).padStart(2, '0')}:00.000Z`;
  return {
    ...{ item: id, kind, plant, topic, skills, difficulty, mode: 'short', atISO, right },
    quizStartedISO: '2026-03-02T10:00:00.000Z',
    response: { is: 'number', value: 1 },
    confidence: 55,
  };
}

function keptOf(learners: number, seed: number): readonly KeptAnswer[] {
  const random = createRandom(seed);
  return Array.from({ length: learners }, (_, who) =>
    CARDS.filter(({ id }) => id !== 'rare' || who < 5).map((one, minute) => ({
      learner: `class-${who % 3}/${who}`,
      answer: answerTo(one, minute, nextUniform(random) < (CHANCES[one.id] ?? 0)),
    })),
  ).flat();
}

describe('what all kept answers say of how hard items are', () => {
  const kept = keptOf(120, 7);
  const moved = movedByLearners(CARDS, kept);

  it('sets what most know below what few know, and leaves alone what few have answered', () => {
    expect(moved.easy?.difficulty).toBeLessThan(-1);
    expect(moved.hard?.difficulty).toBeGreaterThan(0);
    expect(moved.easy?.learners).toBe(120);
    expect(moved).not.toHaveProperty('rare');
    expect(movedByLearners(CARDS, keptOf(FEWEST_LEARNERS - 1, 7))).toEqual({});
  });

  it('is the same in whatever order they were kept, and however often', () => {
    const random = createRandom(3);
    expect(movedByLearners(CARDS, shuffled([...kept, ...kept.slice(0, 50)], random))).toEqual(
      moved,
    );
  });

  it('takes no second answer of a learner, who has been told the reasons', () => {
    const again = kept
      .filter(({ answer }) => answer.item === 'hard')
      .map(({ learner, answer }) => ({
        learner,
        answer: {
          ...answer,
          quizStartedISO: '2026-03-09T10:00:00.000Z',
          atISO: '2026-03-09T10:01:00.000Z',
          right: true,
        },
      }));
    expect(movedByLearners(CARDS, [...kept, ...again])).toEqual(moved);
  });
});
