import { type Gibbs, type Phase, phaseOf, powersOf } from './gibbs.ts';
import { REGION_1, type Term } from './if97-coefficients.ts';

const REFERENCE_PA = 16.53e6;
const REFERENCE_K = 1386;
const MOST_I = 32;
const LEAST_J = -41;
const MOST_J = 17;

/**
 * Liquid water.
 *
 * Equation: γ = Σ n (7.1 − π)^I (τ − 1.222)^J, π = p/16.53 MPa, τ = 1386 K/T.
 * Valid for: 273.15 to 623.15 K, from saturation to 100 MPa.
 * Source: IAPWS R7-97(2012), equation 7.
 */
export function liquidWater(kelvin: number, pascal: number): Phase {
  const pi = pascal / REFERENCE_PA;
  const tau = REFERENCE_K / kelvin;
  const a = 7.1 - pi;
  const b = tau - 1.222;
  const byA = powersOf(a, 0, MOST_I);
  const byB = powersOf(b, LEAST_J, MOST_J);
  const sum: Gibbs = { g: 0, gP: 0, gPP: 0, gT: 0, gTT: 0, gPT: 0 };
  for (let k = 0; k < REGION_1.length; k++) {
    const { i, j, n } = REGION_1[k] as Term;
    const term = n * (byA[i] as number) * (byB[j - LEAST_J] as number);
    sum.g += term;
    sum.gP -= (term * i) / a;
    sum.gPP += (term * i * (i - 1)) / (a * a);
    sum.gT += (term * j) / b;
    sum.gTT += (term * j * (j - 1)) / (b * b);
    sum.gPT -= (term * i * j) / (a * b);
  }
  return phaseOf(sum, kelvin, pascal, pi, tau);
}
