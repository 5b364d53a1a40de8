import { describe, expect, it } from 'vitest';
import {
  chebyshevFit,
  chebyshevToPowers,
  evaluateChebyshev,
  evaluatePolynomial,
} from '../../src/numeric/index.ts';

describe('chebyshevFit', () => {
  it('reproduces a polynomial of its own degree to rounding', () => {
    const cubic = (x: number) => 2 - x + 3 * x * x - 0.5 * x * x * x;
    const series = chebyshevFit(cubic, -1, 4, 3);
    const powers = chebyshevToPowers(series);
    [2, -1, 3, -0.5].forEach((c, k) => {
      expect(powers[k]).toBeCloseTo(c, 12);
    });
    for (let x = -1; x <= 4; x += 0.37) {
      expect(evaluateChebyshev(series, x)).toBeCloseTo(cubic(x), 12);
      expect(evaluatePolynomial(powers, x)).toBeCloseTo(cubic(x), 12);
    }
  });
  it('gains digits with every degree on a smooth function', () => {
    let previous = 1;
    for (const degree of [2, 4, 6, 8]) {
      const series = chebyshevFit(Math.exp, 0, 1, degree);
      let worst = 0;
      for (let x = 0; x <= 1; x += 0.01) {
        worst = Math.max(worst, Math.abs(evaluateChebyshev(series, x) - Math.exp(x)));
      }
      expect(worst).toBeLessThan(previous / 100);
      previous = worst;
    }
    // (ln-free bound) (b − a)^(n+1) / (2^(2n+1)·(n+1)!)·e for n = 8.
    expect(previous).toBeLessThan(6e-11);
  });
  it('of degree 0 is a constant, as powers too', () => {
    const series = chebyshevFit(() => 5, 2, 3, 0);
    expect(evaluateChebyshev(series, 2.5)).toBe(5);
    expect(Array.from(chebyshevToPowers(series))).toEqual([5]);
  });
});
