import type { FuelProperties } from './fuel-properties.ts';
import type { TankState } from './tank.ts';

/** Below this share of the lower limit no pocket of the mixture burns: purge codes ask for it. */
const NO_POCKET_BELOW = 0.25;
/** Above this multiple of the upper limit no pocket is lean enough to burn. */
const NO_POCKET_ABOVE = 3;
const HEAT_RATIO = 1.35;
const DISCHARGE = 0.6;

/**
 * Share of a mixture's fuel that lies in pockets able to burn, by mean fuel share over the lower
 * limit.
 *
 * Equation: a straight rise from 0 at a quarter of the lower limit to 1 at the limit; above the
 *   upper limit a straight fall to 0 at three times it.
 * Source: an allowance for imperfect mixing chosen here; it takes up the margin of four that the
 *   purge codes leave below the lower limit.
 */
export function burnableShare(overLowerLimit: number, fuel: FuelProperties): number {
  if (overLowerLimit <= NO_POCKET_BELOW) return 0;
  const lean = (overLowerLimit - NO_POCKET_BELOW) / (1 - NO_POCKET_BELOW);
  const overUpper = (overLowerLimit * fuel.lowerLimit) / fuel.upperLimit;
  const rich = (NO_POCKET_ABOVE - overUpper) / (NO_POCKET_ABOVE - 1);
  const share = Math.min(lean, rich);
  return share <= 0 ? 0 : Math.min(share, 1);
}

/** Fuel in a tank that would burn if it were lit now, kg. */
export function burnableFuel(
  tank: TankState,
  overLowerLimit: number,
  fuel: FuelProperties,
): number {
  const share = burnableShare(overLowerLimit, fuel);
  if (share === 0) return 0;
  const withAir = tank.airKg / fuel.airPerFuelKgKg;
  return share * Math.min(tank.fuelKg, withAir);
}

/** Fuel that a flame would consume in all: as it burns, the rest thins out until none can, kg. */
export function releasableFuel(
  tank: TankState,
  overLowerLimit: number,
  fuel: FuelProperties,
): number {
  if (burnableShare(overLowerLimit, fuel) === 0) return 0;
  const withAir = tank.airKg / fuel.airPerFuelKgKg;
  return Math.min(tank.fuelKg, withAir) * (1 - NO_POCKET_BELOW / overLowerLimit);
}

/**
 * Furnace overpressure while its gas expands or shrinks, one implicit step.
 *
 * Equation: dp/dt = (γ p₀ / V) · (V̇ − Cd·A·√(2 p / ρ)): volume made by heating against volume
 *   that leaves by the vents. It has both limits of a deflagration: vent-limited when slow,
 *   constant volume when fast.
 * Valid for: overpressures well below atmospheric; either sign.
 * Left out: inertia of relief doors, turbulence made by venting, acoustic waves.
 * Source: lumped model of vented explosions, after D. Bradley and A. Mitcheson, Combustion and
 *   Flame 32 (1978).
 */
export function stepVentedPressure(
  pressurePa: number,
  expansionM3S: number,
  volumeM3: number,
  ventAreaM2: number,
  gasDensityKgM3: number,
  atmospherePa: number,
  stepS: number,
): number {
  const stiffness = (HEAT_RATIO * atmospherePa * stepS) / volumeM3;
  const without = pressurePa + stiffness * expansionM3S;
  const vent = stiffness * DISCHARGE * ventAreaM2 * Math.sqrt(2 / gasDensityKgM3);
  const root = 0.5 * (Math.sqrt(vent * vent + 4 * Math.abs(without)) - vent);
  return without < 0 ? -root * root : root * root;
}

/**
 * Peak overpressure if so much energy were released in a furnace by a flame that takes burnS to
 * cross it, Pa.
 *
 * Equation: the lesser of the vent-limited ½ρ(V̇/(Cd·A))² with V̇ = (γ−1)/γ·Q/(τ·p₀) and ρ of the gas
 *   after Q, and the constant-volume (γ−1)·Q/V. Near what stepVentedPressure makes
 *   of the same fuel: 40 % for a furnace of 9 m³, a factor of two for one of 0.5 m³.
 * Valid for, left out, source: as stepVentedPressure. An estimate for an index, not for design.
 *
 * @param heatCapacityJK of the gas in the furnace
 */
export function estimatePuff(
  energyJ: number,
  burnS: number,
  volumeM3: number,
  ventAreaM2: number,
  gasDensityKgM3: number,
  gasTemperatureK: number,
  heatCapacityJK: number,
  atmospherePa: number,
): number {
  const closed = ((HEAT_RATIO - 1) * energyJ) / volumeM3;
  const made = ((HEAT_RATIO - 1) * energyJ) / (HEAT_RATIO * burnS * atmospherePa);
  const velocity = made / (DISCHARGE * ventAreaM2);
  const heated = 1 + energyJ / (heatCapacityJK * gasTemperatureK);
  const vented = (0.5 * gasDensityKgM3 * velocity * velocity) / heated;
  return Math.min(vented, closed);
}
