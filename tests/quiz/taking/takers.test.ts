import { describe, expect, it } from 'vitest';
import {
  calibrationOf,
  dueTopics,
  type Item,
  type ItemCard,
  type Option,
  QUIZ_MODES,
} from '../../../src/quiz/index.ts';
import { BY_THE_KEY, guesser, takeQuiz } from '../../support/quiz-takers.ts';
import { atDay, bankOf, START_MS } from './small-bank.ts';

const OPTION: Option = { says: { code: 'x' }, why: [], share: null, decidedBy: null, atS: null };

/** An item of a card, in every way of answering; what it says does not matter here. */
function itemOf({ place, ...card }: ItemCard): Item {
  const stem = {
    tells: [],
    asks: { code: 'x' },
    readings: [],
    shows: { chart: false, trends: [] },
  };
  const base = { ...card, stem, run: null, caution: null };
  const three = [OPTION, OPTION, OPTION];
  if (card.kind === 'order') return { ...base, answer: 'order', steps: three, key: [2, 0, 1] };
  if (card.kind === 'calculation') {
    return {
      ...base,
      answer: 'number',
      key: 50,
      tolerance: 0.02,
      of: 'time' as never,
      working: [],
    };
  }
  return { ...base, answer: 'choice', options: three, key: place ?? 0 };
}
const ITEMS = bankOf(320).map(itemOf);

describe('a simulated taker', () => {
  it('who goes by the key is right at everything, in every mode', () => {
    for (const mode of QUIZ_MODES) {
      const { quiz, given } = takeQuiz(ITEMS, mode, BY_THE_KEY, START_MS);
      expect(quiz.phase).toBe('over');
      expect(given.map(({ item }) => item)).toEqual(ITEMS.map(({ id }) => id));
      expect(given.filter(({ right }) => !right)).toEqual([]);
      expect(new Set(given.map((answer) => answer.mode))).toEqual(new Set([mode]));
    }
  });
  it('who guesses is right at about every third choice, and says no more than that', () => {
    const { given } = takeQuiz(ITEMS, 'standard', guesser(9), START_MS);
    const choices = given.filter(({ response }) => response.is === 'choice');
    const share = choices.filter(({ right }) => right).length / choices.length;
    // Of 240 choices, three standard deviations.
    expect(Math.abs(share - 1 / 3)).toBeLessThan(0.09);
    const numbers = given.filter(({ response }) => response.is === 'number');
    expect(numbers.filter(({ right }) => right).length).toBeLessThan(4);
    expect(calibrationOf(choices).verdict).toBe('about right');
    expect(dueTopics(given, atDay(2)).length).toBe(80);
  });
});
