import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CLASS_COLUMNS,
  type ClassColumn,
  type ClassColumnWords,
  classCsv,
  classToCsv,
} from '../../../src/records/class/index.ts';
import { readCsv } from '../read-csv.ts';
import { BY_READINGS, RESULTS } from './class-results.ts';

const WORDS = Object.fromEntries(
  CLASS_COLUMNS.map((column) => [column, `the ${column}`]),
) as ClassColumnWords;

function columnOf(text: string, column: ClassColumn): (string | undefined)[] {
  const [heading = [], ...rows] = readCsv(text);
  return rows.map((row) => row[heading.indexOf(`the ${column}`)]);
}

describe('results of a class as a table', () => {
  const text = classToCsv(RESULTS, WORDS);

  it('have a line an attempt, seat by seat and in the order of time', () => {
    expect(columnOf(text, 'seat')).toEqual(['1', '1', '2', '2', '3', '4', '5']);
    expect(columnOf(text, 'attempt')).toEqual(['1', '1', '1', '2', '1', '1', '1']);
    expect(columnOf(text, 'kind')[1]).toBe('quiz');
  });

  it('give figures that can be summed, and leave empty what is not known', () => {
    expect(columnOf(text, 'outcome')).toEqual(['0.9', '0.5', '0.03', '0.7', '', '0.2', '']);
    expect(columnOf(text, 'minutes')).toEqual(['43.2', '', '120', '60', '', '90', '']);
    expect(columnOf(text, 'unsafe')).toEqual(['0', '0', '1', '0', '0', '0', '0']);
    expect(columnOf(text, 'refused')).toEqual(['0', '0', '0', '0', '1', '1', '0']);
    expect(columnOf(text, 'quiz-right')).toEqual(['', '2', '', '', '', '', '']);
  });

  it('name what was broken, named and not believed', () => {
    expect(columnOf(text, 'conduct')[2]).toBe('SC-7 unsafe; SC-2 careless');
    expect(columnOf(text, 'claims-wrong')[2]).toBe('gas regulator');
    expect(columnOf(text, 'missed')[5]).toBe('strainer');
    expect(columnOf(text, 'remarks')).toEqual([
      '',
      '',
      '',
      '',
      'not ordered (log.12)',
      'outcome differs: 1 / 0.2',
      'not finished',
    ]);
  });

  it('begin as a file with the mark that tells spreadsheets of UTF-8', () => {
    expect(classCsv(RESULTS, WORDS).data).toBe(`\ufeff${text}`);
  });

  it('read back whatever someone calls himself, and never as a formula', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 24 }), (nickname) => {
        const [read] = columnOf(classToCsv([{ ...BY_READINGS, nickname }], WORDS), 'nickname');
        expect(read?.replace(/^'/, '')).toBe(nickname.replace(/^'/, ''));
        expect(read).not.toMatch(/^[=+\-@\t\r]/);
      }),
      { seed: 4, numRuns: 500 },
    );
  });
});
