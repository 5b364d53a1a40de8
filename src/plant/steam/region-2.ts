import { exactLog } from '../../numeric/index.ts';
import { type Gibbs, type Phase, phaseOf, powersOf } from './gibbs.ts';
import { REGION_2, REGION_2_IDEAL, type Term } from './if97-coefficients.ts';

const REFERENCE_PA = 1e6;
const REFERENCE_K = 540;
const LEAST_IDEAL_J = -5;
const MOST_IDEAL_J = 3;
const MOST_I = 24;
const MOST_J = 58;

/**
 * Steam.
 *
 * Equation: γ = ln π + Σ n° τ^J° + Σ n π^I (τ − 0.5)^J, π = p/1 MPa, τ = 540 K/T.
 * Valid for: 273.15 to 623.15 K up to saturation; hotter, up to the border to region 3.
 * Source: IAPWS R7-97(2012), equations 15 to 17.
 */
export function steam(kelvin: number, pascal: number): Phase {
  const pi = pascal / REFERENCE_PA;
  const tau = REFERENCE_K / kelvin;
  const b = tau - 0.5;
  const byTau = powersOf(tau, LEAST_IDEAL_J, MOST_IDEAL_J);
  const byPi = powersOf(pi, 0, MOST_I);
  const byB = powersOf(b, 0, MOST_J);
  const sum: Gibbs = { g: exactLog(pi), gP: 1 / pi, gPP: -1 / (pi * pi), gT: 0, gTT: 0, gPT: 0 };
  for (let k = 0; k < REGION_2_IDEAL.length; k++) {
    const { j, n } = REGION_2_IDEAL[k] as Term;
    const term = n * (byTau[j - LEAST_IDEAL_J] as number);
    sum.g += term;
    sum.gT += (term * j) / tau;
    sum.gTT += (term * j * (j - 1)) / (tau * tau);
  }
  for (let k = 0; k < REGION_2.length; k++) {
    const { i, j, n } = REGION_2[k] as Term;
    const term = n * (byPi[i] as number) * (byB[j] as number);
    sum.g += term;
    sum.gP += (term * i) / pi;
    sum.gPP += (term * i * (i - 1)) / (pi * pi);
    sum.gT += (term * j) / b;
    sum.gTT += (term * j * (j - 1)) / (b * b);
    sum.gPT += (term * i * j) / (pi * b);
  }
  return phaseOf(sum, kelvin, pascal, pi, tau);
}
