import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createDecimatedSeries } from '../../../src/view/chart/decimated-series.ts';

function filled(values: readonly number[], capacity: number) {
  const series = createDecimatedSeries(capacity);
  for (const value of values) series.push(value);
  return series;
}

describe('a decimated series', () => {
  it('keeps the least and the greatest value of every stretch, however long the run', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 400 }),
        (values) => {
          const series = filled(values, 16);
          for (let b = 0; b < series.buckets; b += 1) {
            const part = values.slice(b * series.bucketSize, (b + 1) * series.bucketSize);
            expect(series.leastOf(b)).toBe(Math.min(...part));
            expect(series.greatestOf(b)).toBe(Math.max(...part));
            expect(series.lastOf(b)).toBe(part[part.length - 1]);
          }
        },
      ),
      { seed: 4 },
    );
  });

  it('keeps a single spike among a hundred thousand values', () => {
    const series = createDecimatedSeries(256);
    for (let i = 0; i < 100_000; i += 1) series.push(i === 54_321 ? 7 : 0);
    let greatest = 0;
    for (let b = 0; b < series.buckets; b += 1) greatest = Math.max(greatest, series.greatestOf(b));
    expect(greatest).toBe(7);
    expect(series.buckets).toBeLessThanOrEqual(256);
  });

  it('goes on from a cut as if what came after it had never been, but for the bucket cut in two', () => {
    const kept = [1, 2, 3, 4, 5, 6, 7, 8];
    const series = filled([...kept, 99, 98, 97], 4);
    series.truncate(kept.length);
    for (const value of [9, 10]) series.push(value);
    const whole = filled([...kept, 9, 10], 4);
    expect(series.count).toBe(whole.count);
    expect(series.bucketSize).toBe(whole.bucketSize);
    for (let b = 0; b < whole.buckets; b += 1) {
      expect(series.lastOf(b)).toBe(whole.lastOf(b));
      expect(series.greatestOf(b)).toBe(whole.greatestOf(b));
    }
  });
});
