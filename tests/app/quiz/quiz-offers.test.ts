import { describe, expect, it } from 'vitest';
import { courseEnd, setCourseEnd } from '../../../src/app/quiz/course-end.ts';
import { itemsOf, type QuizGround, quizOffers } from '../../../src/app/quiz/quiz-offers.ts';
import { answerTo, atDay, bankOf } from '../../quiz/taking/small-bank.ts';
import { createToyShelf } from '../work/toy-shelf.ts';

const cards = bankOf(120);
const [one, two] = [cards[0], cards[8]];
if (one === undefined || two === undefined) throw new Error('no cards');
const NEWCOMER: QuizGround = {
  cards,
  answers: [],
  ratings: {},
  nowISO: atDay(0),
  courseEnd: null,
};
const WEEK_ON: QuizGround = {
  ...NEWCOMER,
  answers: [answerTo(one, 0, false), answerTo(two, 0, true)],
  nowISO: atDay(7),
};

describe('what a quiz can begin with', () => {
  it('is for a newcomer all but what needs a past', () => {
    const { offers, nextDueISO } = quizOffers(NEWCOMER);
    expect(offers.map(({ mode, count }) => [mode, count])).toEqual([
      ['short', 5],
      ['standard', 10],
      ['exam', 30],
      ['got wrong', 0],
      ['due', 0],
    ]);
    expect(nextDueISO).toBeNull();
  });

  it('is nothing without a bank', () => {
    expect(quizOffers({ ...NEWCOMER, cards: [] }).offers.map(({ count }) => count)).toEqual([
      0, 0, 0, 0, 0,
    ]);
  });

  it('counts what stands wrong and, a week on, what is due', () => {
    const counts = new Map(quizOffers(WEEK_ON).offers.map(({ mode, count }) => [mode, count]));
    expect(counts.get('got wrong')).toBe(1);
    expect(counts.get('due')).toBe(2);
  });

  it('says when the next is due where none is yet', () => {
    const { offers, nextDueISO } = quizOffers({ ...WEEK_ON, nowISO: atDay(0.1) });
    expect(offers.find(({ mode }) => mode === 'due')?.count).toBe(0);
    expect(nextDueISO).not.toBeNull();
  });

  it('comes before the end of a course', () => {
    const known = [0, 1, 4, 12, 30].map((day) => answerTo(two, day, true));
    const ground = { ...NEWCOMER, answers: known, nowISO: atDay(30.1) };
    const without = quizOffers(ground).nextDueISO ?? '';
    const day = atDay(34).slice(0, 10);
    const before = quizOffers({ ...ground, courseEnd: day }).nextDueISO ?? '';
    expect(before < without).toBe(true);
    expect(before < day).toBe(true);
  });

  it('by skill asks for that skill alone', () => {
    const items = itemsOf(NEWCOMER, { mode: 'one skill', seed: 3, skill: 'wiring' });
    expect(items.length).toBeGreaterThan(0);
    for (const id of items) {
      expect(cards.find((card) => card.id === id)?.skills).toContain('wiring');
    }
  });
});

describe('the end of a course', () => {
  it('is kept as a day, and taken away by leaving it empty', () => {
    const shelf = createToyShelf();
    expect(courseEnd(shelf)).toBeNull();
    setCourseEnd('2026-12-18', shelf);
    expect(courseEnd(shelf)).toBe('2026-12-18');
    setCourseEnd('', shelf);
    expect(courseEnd(shelf)).toBeNull();
  });

  it('is none where what is kept is no day', () => {
    const shelf = createToyShelf();
    for (const text of ['soon', '2026-13-40', '']) {
      shelf.set('flamewright.quiz-course-end', text);
      expect(courseEnd(shelf)).toBeNull();
    }
  });
});
