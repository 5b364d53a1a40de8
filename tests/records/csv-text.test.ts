import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CsvCell, csvText } from '../../src/records/csv/csv-text.ts';
import { readCsv } from './read-csv.ts';

const PROPERTY = { numRuns: 400, seed: 61 };
/** Texts in which what the format and spreadsheets care about is common. */
const touchy = fc.string({
  unit: fc.oneof(
    fc.constantFrom(...'",\r\n\t=+-@\'＝－; 7a'),
    fc.string({ minLength: 1, maxLength: 1, unit: 'grapheme' }),
  ),
  maxLength: 12,
});
const cell: fc.Arbitrary<CsvCell> = fc.oneof(
  touchy,
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.constant(null),
);
const rows = fc.integer({ min: 1, max: 5 }).chain((width) =>
  fc.array(fc.array(cell, { minLength: width, maxLength: width }), {
    minLength: 1,
    maxLength: 6,
  }),
);

describe('a table as text', () => {
  it('gives a reader of RFC 4180 every cell back, a guarded text with its apostrophe', () => {
    fc.assert(
      fc.property(rows, (given) => {
        const read = readCsv(csvText(given));
        expect(read.length).toBe(given.length);
        for (const [y, row] of given.entries()) {
          expect(read[y]?.length).toBe(row.length);
          for (const [x, one] of row.entries()) {
            const back = read[y]?.[x] ?? '';
            if (one === null) expect(back).toBe('');
            else if (typeof one === 'number') expect(Number(back)).toBe(one === 0 ? 0 : one);
            else expect(back === one || back === `'${one}`).toBe(true);
          }
        }
      }),
      PROPERTY,
    );
  });

  it('lets no cell of text begin as a formula does', () => {
    fc.assert(
      fc.property(fc.constantFrom(...'=+-@\t\r\n＝＋－＠'), touchy, (sign, rest) => {
        const [[back = ''] = []] = readCsv(csvText([[`${sign}${rest}`]]));
        expect(back).toBe(`'${sign}${rest}`);
      }),
      PROPERTY,
    );
  });

  it.each([
    ['a command behind a sign', "=cmd|' /C calc'!A0", "'=cmd|' /C calc'!A0\r\n"],
    ['a negative amount that comes as a word', '-3.2 mbar', "'-3.2 mbar\r\n"],
    ['a negative number', -3.2, '-3.2\r\n'],
    ['what is no number', Number.NaN, '""\r\n'],
    ['a quote', 'the "pilot"', '"the ""pilot"""\r\n'],
    ['an empty line to be', '', '""\r\n'],
  ])('writes %s', (_, given, text) => {
    expect(csvText([[given]])).toBe(text);
  });
});
