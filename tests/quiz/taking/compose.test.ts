import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ratings } from '../../../src/diagnosis/mastery/index.ts';
import { SKILL_ORDER } from '../../../src/diagnosis/mastery/index.ts';
import {
  composeQuiz,
  dueTopics,
  type GivenAnswer,
  type ItemCard,
  QUIZ_SIZES,
  type QuizWanted,
  rightChanceOf,
} from '../../../src/quiz/taking/index.ts';
import { answerTo, atDay, bankOf, shuffled } from './small-bank.ts';

const BANK = bankOf(600);
const SEEDS = Array.from({ length: 12 }, (_, i) => i * 7919);

function ratingsAt(value: number): Ratings {
  return Object.fromEntries(SKILL_ORDER.map((skill) => [skill, { value, count: 5 }]));
}

function compose(wanted: Partial<QuizWanted>): ItemCard[] {
  const cards = wanted.cards ?? BANK;
  const ids = composeQuiz({
    mode: 'standard',
    cards,
    answers: [],
    ratings: ratingsAt(0),
    due: [],
    seed: 1,
    nowISO: atDay(30),
    ...wanted,
  });
  return ids.map((id) => cards.find((card) => card.id === id) as ItemCard);
}

function countBy<T, K>(list: readonly T[], keyOf: (one: T) => K): Map<K, number> {
  const counts = new Map<K, number>();
  for (const one of list) counts.set(keyOf(one), (counts.get(keyOf(one)) ?? 0) + 1);
  return counts;
}

function meanOf(list: readonly number[]): number {
  return list.reduce((sum, one) => sum + one, 0) / list.length;
}

describe('any quiz', () => {
  it('asks as many as there may be, no item twice and no topic more than twice', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 1, max: 5 }),
        fc.constantFrom('short', 'standard', 'exam'),
        fc.nat(1000),
        (size, ofTopic, mode, seed) => {
          const cards = bankOf(size, ofTopic, seed);
          const quiz = compose({ cards, mode, seed });
          const topics = countBy(quiz, ({ topic }) => topic);
          expect(Math.max(0, ...topics.values())).toBeLessThanOrEqual(2);
          expect(new Set(quiz).size).toBe(quiz.length);
          let there = 0;
          for (const items of countBy(cards, ({ topic }) => topic).values()) {
            there += Math.min(2, items);
          }
          expect(quiz).toHaveLength(Math.min(QUIZ_SIZES[mode], there));
        },
      ),
      { seed: 61, numRuns: 120 },
    );
  });
  it('is the same by the same seed, however cards and answers come in, and another by another', () => {
    const answers = BANK.slice(0, 90).map((card, i) => answerTo(card, i / 4, i % 3 > 0));
    const due = dueTopics(answers, atDay(30));
    let others = 0;
    for (const mode of ['short', 'standard', 'exam', 'got wrong', 'due'] as const) {
      for (const seed of SEEDS.slice(0, 4)) {
        const quiz = compose({ mode, seed, answers, due });
        const cards = shuffled(BANK, seed + 1);
        expect(compose({ mode, seed, due, cards, answers: shuffled(answers, seed) })).toEqual(quiz);
        const other = compose({ mode, seed: seed + 1, answers, due });
        if (JSON.stringify(other) !== JSON.stringify(quiz)) others += 1;
      }
    }
    expect(others).toBe(20);
  });
  it('has the right answer at each place about as often', () => {
    for (const mode of ['short', 'standard', 'exam'] as const) {
      for (const seed of SEEDS) {
        const places = countBy(compose({ mode, seed }), ({ place }) => place);
        const times = [0, 1, 2].map((place) => places.get(place) ?? 0);
        expect(Math.max(...times) - Math.min(...times)).toBeLessThanOrEqual(2);
      }
    }
  });
  it('goes by turns: no kind twice in a row, and of ten items five kinds, five skills, three plants', () => {
    for (const seed of SEEDS) {
      const quiz = compose({ seed });
      const rows = quiz.slice(1).filter(({ kind }, i) => kind === quiz[i]?.kind);
      expect(rows).toEqual([]);
      expect(countBy(quiz, ({ kind }) => kind).size).toBeGreaterThanOrEqual(5);
      expect(countBy(quiz, ({ skills }) => skills[0]).size).toBeGreaterThanOrEqual(5);
      expect(countBy(quiz, ({ plant }) => plant).size).toBe(3);
    }
  });
  it('takes what was not seen lately while there is enough of it', () => {
    const seen = BANK.slice(0, 400).map((card) => answerTo(card, 29, true));
    for (const seed of SEEDS) {
      const quiz = compose({ seed, answers: seen });
      expect(quiz.filter(({ id }) => seen.some(({ item }) => item === id))).toEqual([]);
    }
  });
  it('comes back to what was seen long ago rather than to what was seen yesterday', () => {
    const seen = BANK.map((card, i) => answerTo(card, i % 2 === 0 ? -70 : 29, true));
    for (const seed of SEEDS) {
      const quiz = compose({ seed, answers: seen });
      expect(quiz.filter((card) => BANK.indexOf(card) % 2 === 1)).toEqual([]);
    }
  });
});

describe('a quiz to practise', () => {
  it('is answered rightly in about seven of ten cases, whatever the ratings', () => {
    for (const value of [-2, -1, 0, 1]) {
      for (const seed of SEEDS) {
        const ratings = ratingsAt(value);
        const chances = compose({ seed, ratings }).map((card) => rightChanceOf(card, ratings));
        // Mixture costs something: of some kinds the item that fits best does not fit well.
        expect(Math.abs(meanOf(chances) - 0.7)).toBeLessThan(0.06);
        const far = chances.filter((chance) => Math.abs(chance - 0.7) > 0.1);
        expect(far.length).toBeLessThanOrEqual(2);
      }
    }
  });
  it('is of one skill alone where one is wanted', () => {
    for (const skill of SKILL_ORDER) {
      const quiz = compose({ mode: 'one skill', skill });
      expect(quiz).toHaveLength(10);
      expect(quiz.filter(({ skills }) => !skills.includes(skill))).toEqual([]);
    }
  });
  it('mixes in topics that are due, the most urgent ones and less than half', () => {
    const due = ['topic 40', 'topic 3', 'topic 77', 'topic 12', 'topic 90', 'topic 55'];
    for (const seed of SEEDS) {
      const standard = compose({ seed, due }).map(({ topic }) => topic);
      for (const topic of due.slice(0, 4)) expect(standard).toContain(topic);
      const short = compose({ mode: 'short', seed, due }).map(({ topic }) => topic);
      for (const topic of due.slice(0, 2)) expect(short).toContain(topic);
      expect(short.filter((topic) => due.includes(topic)).length).toBeLessThan(5);
    }
  });
});

describe('a quiz of what is due, or of what was wrong', () => {
  const asked = BANK.filter((_, i) => i % 4 === 0).slice(0, 30);
  const answers: GivenAnswer[] = asked.map((card, i) => answerTo(card, i / 10, i % 2 === 0));

  it('asks each due topic once, by another item than last time, twenty at most', () => {
    const due = dueTopics(answers, atDay(40));
    expect(due).toHaveLength(30);
    const quiz = compose({ mode: 'due', answers, due });
    expect(quiz.map(({ topic }) => topic).sort()).toEqual(due.slice(0, 20).sort());
    expect(quiz.filter((card) => asked.includes(card))).toEqual([]);
  });
  it('takes kinds by turns however they fall due', () => {
    // Every eighth topic is of one kind: seven, five and four of three kinds, block by block.
    const ofKind = (kind: number, count: number) =>
      Array.from({ length: count }, (_, i) => `topic ${kind + 8 * i}`);
    const due = [...ofKind(0, 7), ...ofKind(5, 5), ...ofKind(7, 4)];
    for (const seed of SEEDS) {
      const quiz = compose({ mode: 'due', due, seed });
      expect(quiz).toHaveLength(16);
      expect(quiz.slice(1).filter(({ kind }, i) => kind === quiz[i]?.kind)).toEqual([]);
    }
  });
  it('falls back on the same item where a topic has no other', () => {
    const cards = BANK.filter((_, i) => i % 4 === 0);
    const due = dueTopics(answers, atDay(40)).slice(0, 3);
    expect(compose({ mode: 'due', cards, answers, due })).toHaveLength(3);
  });
  it('asks the topics that were last answered wrongly, the latest ones, until they are right', () => {
    const wrong = asked.filter((_, i) => i % 2 === 1).map(({ topic }) => topic);
    expect(wrong).toHaveLength(15);
    const topics = compose({ mode: 'got wrong', answers }).map(({ topic }) => topic);
    expect([...topics].sort()).toEqual(wrong.slice(5).sort());
    const corrected = asked.slice(20).map((card) => answerTo(card, 5, true));
    const rest = compose({ mode: 'got wrong', answers: [...answers, ...corrected] });
    expect(rest.map(({ topic }) => topic).sort()).toEqual(wrong.slice(0, 10).sort());
  });
  it('is empty where nothing is due or wrong, or nothing of it is in the bank any more', () => {
    expect(compose({ mode: 'due' })).toEqual([]);
    expect(compose({ mode: 'got wrong' })).toEqual([]);
    expect(compose({ mode: 'due', due: ['topic that is gone'] })).toEqual([]);
  });
});

describe('an exam', () => {
  it('asks for every skill by its share, whatever the ratings', () => {
    for (const seed of SEEDS.slice(0, 5)) {
      const exam = compose({ mode: 'exam', seed });
      const counts = countBy(exam, ({ skills }) => skills[0]);
      expect(SKILL_ORDER.map((skill) => counts.get(skill))).toEqual([4, 4, 4, 3, 3, 3, 3, 3, 3]);
      expect(compose({ mode: 'exam', seed, ratings: ratingsAt(2) })).toEqual(exam);
      expect(compose({ mode: 'exam', seed, count: 12 })).toHaveLength(12);
    }
  });
  it('is easy to hard over the range of the bank', () => {
    for (const seed of SEEDS) {
      const levels = compose({ mode: 'exam', seed }).map(({ difficulty }) => difficulty);
      // The bank is even from −2.5 to 2: its thirds hold ten each, give or take four.
      for (const [from, to] of [
        [-2.5, -1],
        [-1, 0.5],
        [0.5, 2],
      ] as const) {
        const within = levels.filter((level) => level >= from && level < to).length;
        expect(within).toBeGreaterThanOrEqual(6);
        expect(within).toBeLessThanOrEqual(14);
      }
    }
  });
  it('fills up with other skills where one has nothing', () => {
    const cards = BANK.filter(({ skills }) => !skills.includes('conduct'));
    expect(compose({ mode: 'exam', cards })).toHaveLength(30);
  });
});
