/** Questions in words, one for each way of answering, for the tests of what leaves the program. */
import type { WordedChoice, WordedItem, WordedNumber, WordedOrder } from '../../src/quiz/index.ts';
import type { Paper } from '../../src/records/index.ts';
import { paperWords } from '../../src/wording/index.ts';

const BASE = {
  caution: null,
  start: ['0:00 call for heat', '0:32 purge', '1:02 lockout in purge: no air proved'],
  readings: ['Manometer: fan outlet, purge – low (2.10 mbar)'],
  tells: ['The dairy called for steam.', 'The start ended in lockout.'],
} as const;

export const CHOICE: WordedChoice = {
  ...BASE,
  id: 'cause/dairy/12',
  kind: 'cause',
  topic: 'cause/air switch',
  answer: 'choice',
  asks: 'What is the cause?',
  options: [
    { text: 'inlet louvre iced up', why: ['The fan outlet is low.', 'The air switch is sound.'] },
    { text: 'air switch set too high', why: ['It would leave the fan outlet as it was.'] },
    { text: 'nothing is wrong', why: [] },
  ],
  key: 0,
};
export const SPOT: WordedChoice = {
  ...CHOICE,
  id: 'where/school/3',
  kind: 'where',
  topic: 'where/gas train',
  answer: 'spot',
  caution: 'Gas can be in the furnace: keep to local codes & the equipment’s own instructions.',
  asks: 'Where is it?',
  key: 2,
};
export const ORDER: WordedOrder = {
  ...BASE,
  id: 'order/laundry/8',
  kind: 'order',
  topic: 'order/purge',
  answer: 'order',
  start: [],
  readings: [],
  asks: 'In which order?',
  steps: [
    { text: 'light-off', why: ['After the purge.'] },
    { text: 'prove air', why: ['Before the purge.'] },
    { text: 'purge', why: ['Once air is proved.'] },
  ],
  key: [1, 2, 0],
};
export const NUMBER: WordedNumber = {
  ...BASE,
  id: 'calculation/dairy/5',
  kind: 'calculation',
  topic: 'calculation/leak rate',
  answer: 'number',
  asks: 'What is the leak?',
  key: 12.3456789,
  from: 11.728395,
  to: 12.9629628,
  unit: 'dm³/h',
  said: '12 dm³/h',
  working: ['Volume × fall ÷ time', '0.004 × 3000 ÷ 1.0'],
  mistakes: [{ said: '120 dm³/h', why: 'The fall was read ten times too large.' }],
};
export const SAMPLES: readonly WordedItem[] = [CHOICE, SPOT, ORDER, NUMBER];

const WORDS: Paper['words'] = paperWords();

export function paperOf(items: readonly WordedItem[], category = 'Diagnosis'): Paper {
  return { number: 417, questions: items.map(questionOf(category)), words: WORDS };
}

function questionOf(category: string) {
  return (item: WordedItem) => ({
    item,
    category,
    readings: item.readings.map((line) => {
      const [of = '', said = ''] = line.split(' – ');
      return { of, said };
    }),
  });
}
