import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactCos, exactSin } from '../../src/numeric/index.ts';

const SEED = 20261;

describe('exactSin and exactCos', () => {
  it('are within 1e-15 of the engine up to a million radians', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (x) => {
        expect(Math.abs(exactSin(x) - Math.sin(x))).toBeLessThan(1e-15);
        expect(Math.abs(exactCos(x) - Math.cos(x))).toBeLessThan(1e-15);
      }),
      { seed: SEED, numRuns: 2000 },
    );
  });
  it('keep 1e-13 relative over the first turns, and near zero crossings', () => {
    let worst = 0;
    for (let x = -20.0011; x <= 20; x += 0.00173) {
      worst = Math.max(worst, Math.abs(exactSin(x) / Math.sin(x) - 1));
      worst = Math.max(worst, Math.abs(exactCos(x) / Math.cos(x) - 1));
    }
    expect(worst).toBeLessThan(1e-13);
    expect(Math.abs(exactSin(Math.PI) - Math.sin(Math.PI))).toBeLessThan(1e-29);
    expect(exactSin(0)).toBe(0);
    expect(exactCos(0)).toBe(1);
  });
  it('stay on the unit circle', () => {
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (x) => {
        const s = exactSin(x);
        const c = exactCos(x);
        expect(Math.abs(s * s + c * c - 1)).toBeLessThan(1e-15);
      }),
      { seed: SEED },
    );
  });
});
