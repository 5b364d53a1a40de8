/** Numbers as people type them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseNumber } from '../../../src/app/quiz-item/parse-number.ts';
import { QUANTITY_KINDS } from '../../../src/quantity/index.ts';
import { quantityText } from '../../../src/wording/index.ts';

describe('a typed number', () => {
  it.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    [' 1 234,5 ', 1234.5],
    ['1\u202f234.5', 1234.5],
    [',5', 0.5],
    ['7.', 7],
    ['-3', -3],
    ['\u22123,2', -3.2],
    ['+4', 4],
    ['12,5 mbar', 12.5],
    ['12.5MBAR', 12.5],
  ])('%j is %d', (text, value) => {
    expect(parseNumber(text, 'gas pressure', 'SI')).toBe(value);
  });

  it.each(['', ' ', '1,234.5', '1.234,5', '1,2,3', 'abc', '12 bar', '1e3', '--2', '.', '5 inWC'])(
    '%j is none, or could be two',
    (text) => {
      expect(parseNumber(text, 'gas pressure', 'SI')).toBeNull();
    },
  );

  it('is read back as the page writes it, in any quantity and unit', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...QUANTITY_KINDS),
        fc.constantFrom('SI' as const, 'US' as const),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (kind, units, value) => {
          const shown = quantityText(value, kind, units);
          const read = parseNumber(shown, kind, units);
          expect(read).not.toBeNull();
          const digits = /-?[\d.]+/.exec(shown.replace('\u2212', '-'))?.[0];
          expect(read).toBe(Number(digits));
        },
      ),
      { seed: 6, numRuns: 300 },
    );
  });
});
