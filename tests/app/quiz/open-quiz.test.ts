import { describe, expect, it } from 'vitest';
import { foldQuiz, type QuizEntry } from '../../../machines/quiz/index.ts';
import { chosenAt, placeStates } from '../../../src/app/quiz/exam-places.ts';
import {
  dropOpen,
  listOpen,
  OPEN_PREFIX,
  type OpenQuiz,
  readOpen,
  writeOpen,
} from '../../../src/app/quiz/open-quiz.ts';
import { quizName, startedOf } from '../../../src/app/quiz/quiz-name.ts';
import { createToyShelf } from '../work/toy-shelf.ts';

const ITEMS = ['cause/dairy/1', 'cause/dairy/2', 'order/school/3'];
const begun = (atISO: string, mode: 'short' | 'exam' = 'short'): QuizEntry => ({
  type: 'begin',
  atISO,
  mode,
  seed: 7,
  items: ITEMS,
});
const NINE = '2026-05-04T09:00:00.000Z';
const TEN = '2026-05-04T10:00:00.000Z';
const choice = (option: number) => ({ is: 'choice', option }) as const;
const answered: QuizEntry = {
  type: 'answer',
  atISO: TEN,
  place: 0,
  response: choice(1),
  confidence: 55,
};
const quiz: OpenQuiz = {
  skill: null,
  entries: [begun(NINE), answered],
  drafts: [{ place: 1, response: { is: 'order', order: [1, 0, 2] }, confidence: null }],
};

describe('a quiz under way', () => {
  it('comes back with what was said in it and what was only chosen', () => {
    const shelf = createToyShelf();
    expect(writeOpen(shelf, quiz)).toBeNull();
    expect(readOpen(shelf, quizName(NINE))).toEqual(quiz);
    dropOpen(shelf, quizName(NINE));
    expect(shelf.keys()).toEqual([]);
  });

  it('goes by when it was begun, in an address and back', () => {
    expect(startedOf(quizName(NINE))).toBe(NINE);
    expect(quizName(NINE)).toMatch(/^\d{17}$/);
  });

  it('stands beside others, the latest first; what cannot be read is none and stays', () => {
    const shelf = createToyShelf();
    writeOpen(shelf, quiz);
    writeOpen(shelf, { ...quiz, entries: [begun(TEN)] });
    const broken = OPEN_PREFIX + quizName('2026-05-04T11:00:00.000Z');
    shelf.set(broken, '{"v":1,"entries":[]}');
    expect(listOpen(shelf)).toEqual([quizName(TEN), quizName(NINE)]);
    expect(shelf.get(broken)).not.toBeNull();
  });

  it('is not taken for one of another name', () => {
    const shelf = createToyShelf();
    writeOpen(shelf, quiz);
    shelf.set(OPEN_PREFIX + quizName(TEN), shelf.get(OPEN_PREFIX + quizName(NINE)) ?? '');
    expect(readOpen(shelf, quizName(TEN))).toBeNull();
  });

  it('says so where the device has no room', () => {
    expect(writeOpen(createToyShelf(100), quiz)).toBe('no room');
  });
});

describe('an exam', () => {
  const state = foldQuiz([begun(NINE, 'exam'), answered]);

  it('shows what is open, begun and answered; a whole choice is as good as given', () => {
    expect(placeStates(state, [])).toEqual(['answered', 'open', 'open']);
    const drafts = [
      { place: 1, response: choice(0), confidence: null },
      { place: 2, response: choice(0), confidence: 95 as const },
    ];
    expect(placeStates(state, drafts)).toEqual(['answered', 'begun', 'answered']);
  });

  it('shows at a question what was chosen last, else what was answered', () => {
    expect(chosenAt(state, [], 0)).toEqual({ response: choice(1), confidence: 55 });
    const drafts = [{ place: 0, response: null, confidence: 95 as const }];
    expect(chosenAt(state, drafts, 0)).toEqual({ response: null, confidence: 95 });
    expect(chosenAt(state, drafts, 1)).toEqual({ response: null, confidence: null });
  });
});
