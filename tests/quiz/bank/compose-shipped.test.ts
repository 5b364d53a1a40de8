/** What is composed from the bank that is shipped, written items included. */
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { bankFile, readBank } from '../../../src/cli/quiz/bank-file.ts';
import { type Ratings, SKILL_ORDER } from '../../../src/diagnosis/mastery/index.ts';
import {
  composeQuiz,
  type GivenAnswer,
  type ItemCard,
  QUIZ_SIZES,
  type QuizWanted,
  rightChanceOf,
} from '../../../src/quiz/taking/index.ts';
import { writtenCards } from '../../../src/quiz/written/index.ts';
import { library } from '../../support/library.ts';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const cards = [...(readBank(bankFile(ROOT))?.items ?? []), ...writtenCards(library.quizzes)];
const byId = new Map(cards.map((card) => [card.id, card] as const));
const START_MS = Date.parse('2031-03-03T08:00:00.000Z');
const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;
const SEEDS = Array.from({ length: 60 }, (_, i) => 104_729 * i + 3);

function ratingsAt(value: number): Ratings {
  return Object.fromEntries(SKILL_ORDER.map((skill) => [skill, { value, count: 5 }]));
}

function compose(wanted: Partial<QuizWanted>): ItemCard[] {
  return composeQuiz({
    mode: 'standard',
    cards,
    answers: [],
    ratings: ratingsAt(-0.5),
    due: [],
    seed: 1,
    nowISO: '2031-03-03T08:00:00.000Z',
    ...wanted,
  }).map((id) => byId.get(id) as ItemCard);
}

function answerTo(card: ItemCard, quizStartedISO: string, atISO: string): GivenAnswer {
  const { id, kind, plant, topic, skills, difficulty } = card;
  const said = { response: { is: 'choice', option: 0 }, right: true, confidence: 75 } as const;
  const quiz = { mode: 'standard', quizStartedISO, atISO } as const;
  return { item: id, kind, plant, topic, skills, difficulty, ...quiz, ...said };
}

function mostOf<T>(list: readonly T[], keyOf: (one: T) => unknown): number {
  const counts = new Map<unknown, number>();
  for (const one of list) counts.set(keyOf(one), (counts.get(keyOf(one)) ?? 0) + 1);
  return Math.max(0, ...counts.values());
}

describe('quizzes from the shipped bank', () => {
  it.each(['short', 'standard', 'exam'] as const)(
    'of mode %s are whole, mixed, and have no favoured place',
    (mode) => {
      for (const seed of SEEDS) {
        const quiz = compose({ mode, seed });
        const size = QUIZ_SIZES[mode];
        expect(quiz).toHaveLength(size);
        expect(new Set(quiz).size).toBe(size);
        expect(mostOf(quiz, ({ topic }) => topic)).toBeLessThanOrEqual(2);
        expect(mostOf(quiz, ({ kind }) => kind)).toBeLessThanOrEqual(Math.ceil(size / 2));
        expect(mostOf(quiz, ({ plant }) => plant)).toBeLessThanOrEqual(Math.ceil(0.6 * size));
        const placed = quiz.filter(({ kind, place }) => place !== null && kind !== 'where');
        expect(mostOf(placed, ({ place }) => place)).toBeLessThanOrEqual(
          Math.ceil(placed.length / 3) + 1,
        );
      }
    },
  );

  it('are other questions every time to one learner, for weeks', () => {
    const answers: GivenAnswer[] = [];
    const asked: string[] = [];
    SEEDS.slice(0, 20).forEach((seed, day) => {
      const startedMs = START_MS + day * DAY_MS;
      const quizStartedISO = new Date(startedMs).toISOString();
      const nowISO = quizStartedISO;
      for (const card of compose({ seed, answers, nowISO })) {
        asked.push(card.id);
        answers.push(answerTo(card, quizStartedISO, new Date(startedMs + MINUTE_MS).toISOString()));
      }
    });
    expect(asked.length).toBe(20 * QUIZ_SIZES.standard);
    expect(new Set(asked).size).toBe(asked.length);
  });

  it('are not the same to everyone who is new', () => {
    const asked = new Set(SEEDS.flatMap((seed) => compose({ seed }).map(({ id }) => id)));
    expect(asked.size).toBeGreaterThan(100);
  });

  it.each([
    // Nothing in the bank is as easy as a beginner of beginners would need.
    [-2, 0.15],
    [-1, 0.08],
    [0, 0.08],
    [1, 0.08],
  ])('suit a learner at %s: about seven in ten are within reach', (value, off) => {
    const ratings = ratingsAt(value);
    const chances = SEEDS.flatMap((seed) =>
      compose({ seed, ratings }).map((card) => rightChanceOf(card, ratings)),
    );
    const mean = chances.reduce((sum, one) => sum + one, 0) / chances.length;
    expect(Math.abs(mean - 0.7)).toBeLessThan(off);
  });

  it.each(SKILL_ORDER)('of the skill %s alone are to be had, ten of them', (skill) => {
    const quiz = compose({ mode: 'one skill', skill });
    expect(quiz).toHaveLength(QUIZ_SIZES['one skill']);
    expect(quiz.every((card) => card.skills.includes(skill))).toBe(true);
  });
});
