import { exactCos } from './trigonometry.ts';

/** A function of x on [low, high] as a sum of Chebyshev polynomials. */
export interface ChebyshevSeries {
  readonly low: number;
  readonly high: number;
  readonly coefficients: Float64Array;
}

/**
 * Interpolates f at the Chebyshev points of [low, high]; near the best polynomial of that degree.
 *
 * Source: W. H. Press et al., Numerical Recipes, Chebyshev approximation.
 */
export function chebyshevFit(
  f: (x: number) => number,
  low: number,
  high: number,
  degree: number,
): ChebyshevSeries {
  const count = degree + 1;
  const middle = 0.5 * (high + low);
  const half = 0.5 * (high - low);
  const samples = new Float64Array(count);
  for (let j = 0; j < count; j++) {
    samples[j] = f(middle + half * exactCos((Math.PI * (j + 0.5)) / count));
  }
  const coefficients = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    let sum = 0;
    for (let j = 0; j < count; j++) {
      sum += (samples[j] as number) * exactCos((Math.PI * k * (j + 0.5)) / count);
    }
    coefficients[k] = (sum * (k === 0 ? 1 : 2)) / count;
  }
  return { low, high, coefficients };
}

/** Value of the series at x, by Clenshaw's recurrence. Outside [low, high] it diverges quickly. */
export function evaluateChebyshev(series: ChebyshevSeries, x: number): number {
  const c = series.coefficients;
  const t = (2 * x - series.low - series.high) / (series.high - series.low);
  let next = 0;
  let afterNext = 0;
  for (let k = c.length - 1; k > 0; k--) {
    const current = 2 * t * next - afterNext + (c[k] as number);
    afterNext = next;
    next = current;
  }
  return t * next - afterNext + (c[0] as number);
}

/**
 * The same polynomial as powers of x (lowest first), cheapest to evaluate in a step.
 * Loses digits when the degree is high or [low, high] lies far from 0: check the result.
 */
export function chebyshevToPowers(series: ChebyshevSeries): Float64Array {
  const count = series.coefficients.length;
  const scale = 2 / (series.high - series.low);
  const shift = -(series.high + series.low) / (series.high - series.low);
  const sum = new Float64Array(count);
  let previous = new Float64Array(count);
  let current = new Float64Array(count);
  previous[0] = 1;
  current[0] = shift;
  if (count > 1) current[1] = scale;
  for (let k = 0; k < count; k++) {
    const weight = series.coefficients[k] as number;
    const basis = k === 0 ? previous : current;
    for (let i = 0; i < count; i++) sum[i] = (sum[i] as number) + weight * (basis[i] as number);
    if (k === 0) continue;
    const next = new Float64Array(count);
    for (let i = 0; i < count; i++) {
      const raised = i > 0 ? scale * (current[i - 1] as number) : 0;
      next[i] = 2 * (shift * (current[i] as number) + raised) - (previous[i] as number);
    }
    previous = current;
    current = next;
  }
  return sum;
}

/** c₀ + c₁·x + c₂·x² + …, by Horner's rule. */
export function evaluatePolynomial(coefficients: Float64Array, x: number): number {
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * x + (coefficients[k] as number);
  return sum;
}
