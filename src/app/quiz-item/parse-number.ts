import { displayOf, type QuantityKind, type UnitSystem } from '../../quantity/index.ts';

/** A number as people write it: comma or point, spaces between thousands, the unit after it. */
const NUMBER = /^[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;
const MINUS = /[\u2212\u2013]/g;
const SPACES = /[\s\u00a0\u2009\u202f]/g;

/**
 * @returns the number in the reader's unit; null where the text is none, or could be two: with both
 *   a comma and a point nobody knows which of them is the decimal sign
 */
export function parseNumber(text: string, kind: QuantityKind, units: UnitSystem): number | null {
  const { symbol } = displayOf(kind, units);
  const written = text.replace(MINUS, '-').replace(SPACES, '');
  const unit = symbol.replace(SPACES, '');
  const bare =
    unit !== '' && written.toLowerCase().endsWith(unit.toLowerCase())
      ? written.slice(0, -unit.length)
      : written;
  if (!NUMBER.test(bare)) return null;
  const value = Number(bare.replace(',', '.'));
  return Number.isFinite(value) ? value : null;
}
