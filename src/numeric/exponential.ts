import { floatCell, floatWords, HIGH } from './float-words.ts';

/** ln 2 in two parts; the first has 21 trailing zero bits, so k · LN2_HIGH is exact for |k| < 2²¹. */
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const SQRT2_HIGH_WORD = 0x3ff6a09e;
const EXP_OVERFLOW = 709.782712893384;
const EXP_UNDERFLOW = -745.1332191019411;

/** 2^k for k = −1022…1023, by exact doubling and halving. */
const POWERS_OF_TWO = new Float64Array(2046);
POWERS_OF_TWO[1022] = 1;
for (let k = 1023; k < 2046; k++) POWERS_OF_TWO[k] = (POWERS_OF_TWO[k - 1] as number) * 2;
for (let k = 1021; k >= 0; k--) POWERS_OF_TWO[k] = (POWERS_OF_TWO[k + 1] as number) * 0.5;

/**
 * eˣ, the same bits in every JavaScript engine.
 *
 * Equation: x = k·ln 2 + r with |r| ≤ ln 2 / 2, eˣ = 2ᵏ·eʳ, eʳ by its power series to r¹³
 * (remainder below 5e-18).
 * Valid for: all x; within about 1 ulp of the true value where the result is a normal number.
 */
export function exactExp(x: number): number {
  if (Number.isNaN(x)) return x;
  if (x > EXP_OVERFLOW) return Infinity;
  if (x < EXP_UNDERFLOW) return 0;
  const k = Math.floor(x / Math.LN2 + 0.5);
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const tail =
    1 / 2 +
    r *
      (1 / 6 +
        r *
          (1 / 24 +
            r *
              (1 / 120 +
                r *
                  (1 / 720 +
                    r *
                      (1 / 5040 +
                        r *
                          (1 / 40320 +
                            r *
                              (1 / 362880 +
                                r *
                                  (1 / 3628800 +
                                    r *
                                      (1 / 39916800 +
                                        r * (1 / 479001600 + r * (1 / 6227020800)))))))))));
  // What rounding took from r is added back before the sum with 1.
  const y = 1 + (high + (r * r * tail - low));
  if (k > 1022) return y * 2 * (POWERS_OF_TWO[k + 1021] as number);
  if (k >= -1022) return y * (POWERS_OF_TWO[k + 1022] as number);
  return y * (POWERS_OF_TWO[k + 1122] as number) * (POWERS_OF_TWO[922] as number);
}

/**
 * ln x, the same bits in every JavaScript engine.
 *
 * Equation: x = 2ᵏ·m with √½ ≤ m < √2; ln m = 2·artanh(s), s = f / (2 + f), f = m − 1, the odd
 * series to s²³ (remainder below 1e-17 of s).
 * Valid for: x > 0 within about 1 ulp; 0 gives −∞, negative numbers NaN.
 */
export function exactLog(x: number): number {
  if (!(x > 0)) return x === 0 ? -Infinity : NaN;
  if (x === Infinity) return x;
  let k = 0;
  let mantissa = x;
  if (x < 2.2250738585072014e-308) {
    mantissa = x * 18014398509481984;
    k = -54;
  }
  floatCell[0] = mantissa;
  const highWord = floatWords[HIGH] as number;
  k += (highWord >>> 20) - 1023;
  const fraction = (highWord & 0xfffff) | 0x3ff00000;
  if (fraction > SQRT2_HIGH_WORD) {
    k += 1;
    floatWords[HIGH] = fraction - 0x100000;
  } else {
    floatWords[HIGH] = fraction;
  }
  const f = (floatCell[0] as number) - 1;
  const s = f / (2 + f);
  const z = s * s;
  const series =
    z *
    (2 / 3 +
      z *
        (2 / 5 +
          z *
            (2 / 7 +
              z *
                (2 / 9 +
                  z *
                    (2 / 11 +
                      z *
                        (2 / 13 +
                          z *
                            (2 / 15 +
                              z * (2 / 17 + z * (2 / 19 + z * (2 / 21 + z * (2 / 23)))))))))));
  // ln(1 + f) = f − (f²/2 − s·(f²/2 + series)): the large term f stays exact.
  const halfSquare = 0.5 * f * f;
  if (k === 0) return f - (halfSquare - s * (halfSquare + series));
  return k * LN2_HIGH - (halfSquare - (s * (halfSquare + series) + k * LN2_LOW) - f);
}

/**
 * x to the power y, the same bits in every JavaScript engine.
 *
 * Equation: xʸ = e^(y·ln x). Relative error about |y·ln x| · 2e-16, so 1e-13 for results
 * between 1e-200 and 1e200.
 * Valid for: x ≥ 0; negative x gives NaN.
 */
export function exactPow(x: number, y: number): number {
  if (y === 0 || x === 1) return 1;
  if (y === 1) return x;
  if (y === 2) return x * x;
  if (y === 0.5) return Math.sqrt(x);
  return exactExp(y * exactLog(x));
}
