/** Answers as a device keeps them, and the questions they are about. */
import type { GivenAnswer, Item, WordedItem } from '../../src/quiz/index.ts';
import type { ItemInWords, ItemsInWords } from '../../src/records/index.ts';
import { CHOICE, NUMBER, ORDER, SPOT } from './samples.ts';

const QUIZ = '2026-03-02T09:00:00.000Z';
const ABOUT = {
  plant: 'dairy',
  skills: ['air', 'sensing'],
  difficulty: -0.5,
  mode: 'short',
  quizStartedISO: QUIZ,
} as const;

export const ANSWERS: readonly GivenAnswer[] = [
  answer(CHOICE, '2026-03-02T09:01:00.000Z', { is: 'choice', option: 0 }, true),
  answer(SPOT, '2026-03-02T09:02:00.000Z', { is: 'choice', option: 1 }, false),
  answer(ORDER, '2026-03-02T09:03:00.000Z', { is: 'order', order: [1, 2, 0] }, true),
  answer(NUMBER, '2026-03-02T09:04:00.000Z', { is: 'number', value: -3.5 }, false),
];

export const ITEMS: ItemsInWords = new Map(
  [CHOICE, SPOT, ORDER, NUMBER].map((words): [string, ItemInWords] => [
    words.id,
    { words, item: itemOf(words) },
  ]),
);

function answer(
  { id, kind, topic }: WordedItem,
  atISO: string,
  response: GivenAnswer['response'],
  right: boolean,
): GivenAnswer {
  return { ...ABOUT, item: id, kind, topic, atISO, response, right, confidence: 75 };
}

/** Only what is asked of it here. */
function itemOf(words: WordedItem): Item {
  const known =
    words.answer === 'number'
      ? { answer: words.answer, key: 0.0034, tolerance: 0.05, of: 'leak' }
      : { answer: words.answer, key: words.key };
  return { ...known, id: words.id } as Item;
}
