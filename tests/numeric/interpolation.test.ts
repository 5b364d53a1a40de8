import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createLinearTable, createMonotoneTable, readTable } from '../../src/numeric/index.ts';

const SEED = 20263;
const POINTS = fc.array(
  fc.record({
    step: fc.double({ min: 0.01, max: 10, noNaN: true }),
    y: fc.double({ min: -100, max: 100, noNaN: true }),
  }),
  { minLength: 2, maxLength: 12 },
);

function toCurve(points: readonly { step: number; y: number }[]): { x: number[]; y: number[] } {
  let sum = 0;
  return {
    x: points.map(({ step }) => {
      sum += step;
      return sum;
    }),
    y: points.map(({ y }) => y),
  };
}

describe('curve tables', () => {
  it('go through their points and hold their end values', () => {
    fc.assert(
      fc.property(POINTS, (points) => {
        const { x, y } = toCurve(points);
        for (const table of [createLinearTable(x, y), createMonotoneTable(x, y)]) {
          x.forEach((at, i) => {
            expect(readTable(table, at)).toBeCloseTo(y[i] as number, 10);
          });
          expect(readTable(table, (x[0] as number) - 1)).toBe(y[0]);
          expect(readTable(table, (x[x.length - 1] as number) + 1)).toBe(y[y.length - 1]);
        }
      }),
      { seed: SEED },
    );
  });
  it('stay between neighbouring points, the cubic too', () => {
    fc.assert(
      fc.property(POINTS, fc.double({ min: 0, max: 1, noNaN: true }), (points, t) => {
        const { x, y } = toCurve(points);
        for (const table of [createLinearTable(x, y), createMonotoneTable(x, y)]) {
          for (let i = 1; i < x.length; i++) {
            const x0 = x[i - 1] as number;
            const value = readTable(table, x0 + t * ((x[i] as number) - x0));
            const low = Math.min(y[i - 1] as number, y[i] as number);
            const high = Math.max(y[i - 1] as number, y[i] as number);
            expect(value).toBeGreaterThanOrEqual(low - 1e-10);
            expect(value).toBeLessThanOrEqual(high + 1e-10);
          }
        }
      }),
      { seed: SEED },
    );
  });
  it('read a straight line exactly between two points', () => {
    expect(readTable(createLinearTable([0, 10], [0, 5]), 4)).toBe(2);
    expect(readTable(createMonotoneTable([0, 10], [0, 5]), 4)).toBeCloseTo(2, 14);
  });
  it('follow a smooth curve closely with the cubic', () => {
    const x = Array.from({ length: 19 }, (_, i) => i * 5);
    const table = createMonotoneTable(
      x,
      x.map((degrees) => Math.sin((degrees * Math.PI) / 180)),
    );
    for (let degrees = 0; degrees <= 80; degrees += 0.7) {
      // Third order in the spacing: 5° is 0.087 rad.
      expect(
        Math.abs(readTable(table, degrees) - Math.sin((degrees * Math.PI) / 180)),
      ).toBeLessThan(5e-4);
    }
  });
  it('refuse points that do not rise, or that do not pair up', () => {
    expect(() => createLinearTable([0, 1, 1], [0, 1, 2])).toThrow(RangeError);
    expect(() => createLinearTable([0], [0])).toThrow(RangeError);
    expect(() => createMonotoneTable([0, 1], [0])).toThrow(RangeError);
    expect(() => createMonotoneTable([0, NaN], [0, 1])).toThrow(RangeError);
  });
});
