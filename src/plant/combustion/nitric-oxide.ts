import { exactExp } from '../../numeric/index.ts';
import { MOLAR_GAS_CONSTANT } from './thermodynamics.ts';

export interface NitricSurroundings {
  temperatureK: number;
  pressurePa: number;
  /** Mole fractions at equilibrium; nitric oxide's is where forming and breaking balance. */
  oxygenAtom: number;
  oxygen: number;
  nitrogen: number;
  hydroxyl: number;
  nitricOxide: number;
}

const STEPS = 40;

/**
 * Rate at which thermal NO forms from so much NO, mole fraction per second.
 *
 * Equation: O + N₂ ⇌ NO + N (1), N + O₂ ⇌ NO + O (2), N + OH ⇌ NO + H (3), with O, O₂, OH at
 *   equilibrium and N steady: d[NO]/dt = 2 R₁ (1 − α²) / (1 + α R₁/(R₂ + R₃)), α = [NO]/[NO]_eq,
 *   R the one-way rates at equilibrium; [N]_eq from k₁f [O][N₂] = k₁r [NO][N].
 * Valid for: behind the flame front, 1500 to 2600 K.
 * Left out: prompt NO, N₂O route, more O than equilibrium in the front: real burners make some
 *   10 to 20 ppm more.
 * Source: R. K. Hanson and S. Salimian (1984), as printed in S. R. Turns, An Introduction to
 *   Combustion.
 */
export function nitricOxideRate(at: NitricSurroundings, share: number): number {
  const { first, overOthers } = oneWayRates(at);
  return netRate(first, overOthers, share / at.nitricOxide);
}

/** Mole fraction of NO after a time at one temperature, from none. */
export function growNitricOxide(at: NitricSurroundings, timeS: number): number {
  const { first, overOthers } = oneWayRates(at);
  const whole = at.nitricOxide;
  const stepS = timeS / STEPS;
  let share = 0;
  for (let i = 0; i < STEPS; i++) {
    const half = share + 0.5 * stepS * netRate(first, overOthers, share / whole);
    share += stepS * netRate(first, overOthers, Math.min(half / whole, 1));
    share = Math.min(share, whole);
  }
  return share;
}

/** Mole fraction per second of the first reaction, and its ratio to the other two. */
function oneWayRates(at: NitricSurroundings): { first: number; overOthers: number } {
  const t = at.temperatureK;
  const molCm3 = (1e-6 * at.pressurePa) / (MOLAR_GAS_CONSTANT * t);
  const first = 1.8e14 * exactExp(-38370 / t) * at.oxygenAtom * at.nitrogen;
  const atom = first / (3.8e13 * exactExp(-425 / t) * at.nitricOxide);
  const others =
    1.8e10 * t * exactExp(-4680 / t) * atom * at.oxygen +
    7.1e13 * exactExp(-450 / t) * atom * at.hydroxyl;
  return { first: first * molCm3, overOthers: first / others };
}

function netRate(first: number, overOthers: number, alpha: number): number {
  return (2 * first * (1 - alpha * alpha)) / (1 + alpha * overOthers);
}
