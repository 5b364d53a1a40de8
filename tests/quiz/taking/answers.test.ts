import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cardOf, givenAnswer, type Item, type NumberItem } from '../../../src/quiz/index.ts';
import {
  answersInOrder,
  keyOfAnswer,
  masteryOfTopics,
  mergeAnswers,
} from '../../../src/quiz/taking/index.ts';
import { isoOfMs, msOfISO } from '../../../src/quiz/taking/instant.ts';
import { answerOn, answerTo, atDay, bankOf } from './small-bank.ts';

const ITEM: NumberItem = {
  id: 'calculation/dairy/5',
  kind: 'calculation',
  plant: 'dairy',
  topic: 'calculation/leak rate',
  skills: ['fuel', 'sequence'],
  difficulty: 0.4,
  stem: { tells: [], asks: { code: 'x' }, readings: [], shows: { chart: false, trends: [] } },
  run: null,
  caution: null,
  answer: 'number',
  key: 20,
  tolerance: 0.05,
  of: 'pressure' as NumberItem['of'],
  working: [],
};

describe('the list of answers', () => {
  it('keeps an answer with what its item is about and whether it was right', () => {
    const quiz = { mode: 'due', startedISO: atDay(1) } as const;
    const response = { is: 'number', value: 20.9 } as const;
    const said = { response, confidence: 55, atISO: atDay(1.01) } as const;
    expect(givenAnswer(ITEM, said, quiz)).toEqual({
      item: 'calculation/dairy/5',
      kind: 'calculation',
      plant: 'dairy',
      topic: 'calculation/leak rate',
      skills: ['fuel', 'sequence'],
      difficulty: 0.4,
      mode: 'due',
      quizStartedISO: atDay(1),
      atISO: atDay(1.01),
      response,
      right: true,
      confidence: 55,
    });
    const off = { ...said, response: { is: 'number', value: 21.1 } } as const;
    expect(givenAnswer(ITEM, off, quiz, -1)).toMatchObject({ right: false, difficulty: -1 });
  });
  it('has each answer once, and of two with one name the first given', () => {
    const first = answerOn('t', 1, false);
    const second = { ...answerOn('t', 1, true), atISO: atDay(1.5) };
    expect(keyOfAnswer(second)).toBe(keyOfAnswer(first));
    const other = { ...first, quizStartedISO: atDay(2), atISO: atDay(2) };
    for (const list of [
      [first, second, other],
      [other, second, first, first],
    ]) {
      expect(mergeAnswers(list)).toEqual([first, other]);
    }
  });
  it('is in the order of time even where one instant has its fraction and another has not', () => {
    const at = (atISO: string) => ({ ...answerOn(atISO, 0, true), atISO });
    const list = [at('2026-03-02T08:00:05.250Z'), at('2026-03-02T08:00:05Z')];
    expect(answersInOrder(list).map(({ atISO }) => atISO)).toEqual([
      '2026-03-02T08:00:05Z',
      '2026-03-02T08:00:05.250Z',
    ]);
  });
  it('knows the place of the key of a question with options, and none of another', () => {
    expect(cardOf(ITEM)).toMatchObject({ id: ITEM.id, topic: ITEM.topic, place: null });
    const choice = { ...ITEM, answer: 'choice', options: [], key: 2 } as unknown as Item;
    expect(cardOf(choice).place).toBe(2);
  });
});

describe('an instant', () => {
  it('is read and written as the calendar has it', () => {
    fc.assert(
      fc.property(fc.integer({ min: Date.UTC(1, 0, 1), max: Date.UTC(9999, 11, 31) }), (ms) => {
        const iso = new Date(ms).toISOString();
        expect(isoOfMs(ms)).toBe(iso);
        expect(msOfISO(iso)).toBe(ms);
      }),
      { seed: 66, numRuns: 400 },
    );
    expect(msOfISO('2024-02-29T23:59:59Z')).toBe(Date.UTC(2024, 1, 29, 23, 59, 59));
    expect(msOfISO('2024-02-29T23:59Z')).toBe(Date.UTC(2024, 1, 29, 23, 59));
  });
  it('is not a number where the text is none', () => {
    for (const text of ['', 'now', '2026-03-02', '2026-03-02T08:00:00+01:00']) {
      expect(msOfISO(text)).toBeNaN();
    }
  });
});

describe('topics of a skill', () => {
  it('are known, due, missed or fresh, and each is one of these', () => {
    const cards = bankOf(144);
    const own = cards.filter(({ skills }) => skills.includes('air'));
    const topics = [...new Set(own.map(({ topic }) => topic))];
    expect(topics).toHaveLength(4);
    const of = (i: number) => own.find(({ topic }) => topic === topics[i]) as (typeof own)[number];
    const answers = [
      answerTo(of(0), 9.9, true),
      answerTo(of(1), 1, true),
      answerTo(of(2), 9.9, false),
    ];
    const air = masteryOfTopics(cards, answers, atDay(10)).find(({ skill }) => skill === 'air');
    expect(air).toEqual({ skill: 'air', topics: 4, known: 1, due: 1, missed: 1, fresh: 1 });
    for (const one of masteryOfTopics(cards, answers, atDay(10))) {
      expect(one.known + one.due + one.missed + one.fresh).toBe(one.topics);
    }
  });
});
