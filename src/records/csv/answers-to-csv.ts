import { formatQuantity, type UnitSystem } from '../../quantity/index.ts';
import type { GivenAnswer, Response } from '../../quiz/index.ts';
import type { RecordFile } from '../file.ts';
import type { ItemInWords, ItemsInWords } from '../item-in-words.ts';
import { type CsvCell, csvText } from './csv-text.ts';

export const RESULT_COLUMNS = [
  'answered',
  'quiz',
  'mode',
  'item',
  'kind',
  'plant',
  'topic',
  'skills',
  'difficulty',
  'question',
  /** Number of the option, numbers of the steps in the order given, or the number in SI. */
  'answer',
  'answer-said',
  /** 1 or 0, so that a column can be summed. */
  'right',
  /** How sure, as a chance in a hundred. */
  'confidence',
] as const;
export type ResultColumn = (typeof RESULT_COLUMNS)[number];

export interface ResultWords {
  readonly columns: Readonly<Record<ResultColumn, string>>;
  readonly units: UnitSystem;
  readonly items: ItemsInWords;
}

/** Without it many a spreadsheet takes UTF-8 for something else. */
const BYTE_ORDER_MARK = '\ufeff';

/** A heading, then a line for each answer, in the order given; RFC 4180. */
export function answersToCsv(answers: readonly GivenAnswer[], words: ResultWords): string {
  const heading = RESULT_COLUMNS.map((column) => words.columns[column]);
  const lines = answers.map((answer) => {
    const cells = cellsOf(answer, words);
    return RESULT_COLUMNS.map((column) => cells[column]);
  });
  return csvText([heading, ...lines]);
}

export function resultsCsv(answers: readonly GivenAnswer[], words: ResultWords): RecordFile {
  return {
    name: 'flamewright-answers.csv',
    type: 'text/csv;charset=utf-8',
    data: `${BYTE_ORDER_MARK}${answersToCsv(answers, words)}`,
  };
}

function cellsOf(answer: GivenAnswer, words: ResultWords): Record<ResultColumn, CsvCell> {
  const known = words.items.get(answer.item);
  return {
    answered: answer.atISO,
    quiz: answer.quizStartedISO,
    mode: answer.mode,
    item: answer.item,
    kind: answer.kind,
    plant: answer.plant,
    topic: answer.topic,
    skills: answer.skills.join('; '),
    difficulty: answer.difficulty,
    question: known?.words.asks ?? null,
    answer: plainly(answer.response),
    'answer-said': known === undefined ? null : said(answer.response, known, words.units),
    right: answer.right ? 1 : 0,
    confidence: answer.confidence,
  };
}

function plainly(response: Response): CsvCell {
  switch (response.is) {
    case 'choice':
      return response.option + 1;
    case 'order':
      return response.order.map((place) => place + 1).join(' ');
    case 'number':
      return response.value;
  }
}

/** Null where the answer is of another kind than the question as it is known now. */
function said(response: Response, { item, words }: ItemInWords, units: UnitSystem): string | null {
  if (response.is === 'number') {
    if (item.answer !== 'number') return null;
    // With a sign of its own: behind a hyphen a spreadsheet would look for a formula.
    return formatQuantity(response.value, item.of, units).replace('-', '\u2212');
  }
  if (response.is === 'order') {
    if (words.answer !== 'order') return null;
    return response.order.map((place) => words.steps[place]?.text ?? '').join('; ');
  }
  return words.answer === 'choice' || words.answer === 'spot'
    ? (words.options[response.option]?.text ?? null)
    : null;
}
