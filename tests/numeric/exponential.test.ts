import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactExp, exactLog, exactPow } from '../../src/numeric/index.ts';

/** Units in the last place of a double near 1. */
const ULP = 2.220446049250313e-16;
const SEED = 20260;

function relativeError(value: number, truth: number): number {
  return truth === value ? 0 : Math.abs(value - truth) / Math.abs(truth);
}

describe('exactExp', () => {
  it('is within two units in the last place of the engine over all normal results', () => {
    let worst = 0;
    for (let x = -708; x <= 709.7; x += 0.0137) {
      worst = Math.max(worst, relativeError(exactExp(x), Math.exp(x)));
    }
    expect(worst).toBeLessThan(2 * ULP);
  });
  it('keeps full relative accuracy of eˣ − 1 for small x', () => {
    for (const x of [1e-3, 1e-5, -1e-7]) {
      // Only the rounding of 1 + x is lost.
      expect(Math.abs(exactExp(x) - 1 - Math.expm1(x))).toBeLessThan(ULP);
    }
  });
  it('is exact at the ends of its range', () => {
    expect(exactExp(0)).toBe(1);
    expect(exactExp(710)).toBe(Infinity);
    expect(exactExp(-746)).toBe(0);
    expect(exactExp(709.78)).toBeGreaterThan(1.79e308);
    expect(exactExp(-745)).toBe(5e-324);
    expect(exactExp(NaN)).toBeNaN();
    expect(exactExp(-Infinity)).toBe(0);
  });
  it('never falls as x rises, beyond its own rounding', () => {
    fc.assert(
      fc.property(fc.double({ min: -700, max: 700, noNaN: true }), (x) => {
        expect(exactExp(x + Math.abs(x) * 1e-13 + 1e-13)).toBeGreaterThanOrEqual(exactExp(x));
      }),
      { seed: SEED },
    );
  });
});

describe('exactLog', () => {
  it('is within two units in the last place of the engine, near 1 too', () => {
    let worst = 0;
    for (let x = 0.5; x < 2; x += 0.000137) {
      worst = Math.max(worst, relativeError(exactLog(x), Math.log(x)));
    }
    expect(worst).toBeLessThan(2 * ULP);
    fc.assert(
      fc.property(fc.double({ min: Number.MIN_VALUE, max: 1.7e308, noNaN: true }), (x) => {
        expect(relativeError(exactLog(x), Math.log(x))).toBeLessThan(2 * ULP);
      }),
      { seed: SEED },
    );
  });
  it('answers the edges as a logarithm does', () => {
    expect(exactLog(1)).toBe(0);
    expect(exactLog(0)).toBe(-Infinity);
    expect(exactLog(-1)).toBeNaN();
    expect(exactLog(Infinity)).toBe(Infinity);
  });
  it('undoes exactExp', () => {
    fc.assert(
      fc.property(fc.double({ min: -700, max: 700, noNaN: true }), (x) => {
        // One rounding of eˣ is 1.1e-16 absolute in its logarithm.
        expect(Math.abs(exactLog(exactExp(x)) - x)).toBeLessThan(3 * ULP * (1 + Math.abs(x)));
      }),
      { seed: SEED },
    );
  });
});

describe('exactPow', () => {
  it('is within 1e-13 of the engine for results between 1e-100 and 1e100', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -230, max: 230, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (exponent, x) => {
          const y = exponent / (Math.abs(Math.log(x)) + 1e-3);
          if (Math.abs(y * Math.log(x)) > 230) return;
          expect(relativeError(exactPow(x, y), x ** y)).toBeLessThan(1e-13);
        },
      ),
      { seed: SEED },
    );
  });
  it('gives the plain cases exactly', () => {
    expect(exactPow(7.3, 0)).toBe(1);
    expect(exactPow(7.3, 1)).toBe(7.3);
    expect(exactPow(7.3, 2)).toBe(7.3 * 7.3);
    expect(exactPow(0, 1.4)).toBe(0);
    expect(exactPow(-2, 1.5)).toBeNaN();
  });
});
