import { describe, expect, it } from 'vitest';
import {
  answersToCsv,
  RESULT_COLUMNS,
  type ResultColumn,
  type ResultWords,
  resultsCsv,
} from '../../src/records/index.ts';
import { ANSWERS, ITEMS } from './answers.ts';
import { readCsv } from './read-csv.ts';

const WORDS: ResultWords = {
  columns: Object.fromEntries(RESULT_COLUMNS.map((column) => [column, `the ${column}`])) as Record<
    ResultColumn,
    string
  >,
  units: 'SI',
  items: ITEMS,
};

function columnOf(text: string, column: ResultColumn): (string | undefined)[] {
  const [heading = [], ...rows] = readCsv(text);
  return rows.map((row) => row[heading.indexOf(`the ${column}`)]);
}

describe('answers as a table', () => {
  it('have a line each, with what was answered as data and in words', () => {
    const text = answersToCsv(ANSWERS, WORDS);
    expect(columnOf(text, 'item')).toEqual(ANSWERS.map(({ item }) => item));
    expect(columnOf(text, 'answer')).toEqual(['1', '2', '2 3 1', '-3.5']);
    expect(columnOf(text, 'answer-said')).toEqual([
      'inlet louvre iced up',
      'air switch set too high',
      'prove air; purge; light-off',
      // A minus, not a hyphen, which would have to be guarded.
      '−4 dm³/h',
    ]);
    expect(columnOf(text, 'right')).toEqual(['1', '0', '1', '0']);
    expect(columnOf(text, 'question')[3]).toBe('What is the leak?');
  });

  it('lose no line where the questions are not at hand', () => {
    const text = answersToCsv(ANSWERS, { ...WORDS, items: new Map() });
    expect(columnOf(text, 'answered')).toEqual(ANSWERS.map(({ atISO }) => atISO));
    expect(columnOf(text, 'answer')).toEqual(['1', '2', '2 3 1', '-3.5']);
    expect(new Set(columnOf(text, 'answer-said'))).toEqual(new Set(['']));
  });

  it('begin as a file with the mark that tells spreadsheets of UTF-8', () => {
    const { data } = resultsCsv(ANSWERS, WORDS);
    expect(data).toBe(`\ufeff${answersToCsv(ANSWERS, WORDS)}`);
  });
});
