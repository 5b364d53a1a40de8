import { LEAST_SATURATION_K, readSaturation, type Saturation } from '../steam/index.ts';
import type { VesselState } from './vessel-state.ts';

const CLOSE_K = 1e-7;
const MOST_ROUNDS = 30;
const MOST_CHANGE_K = 20;

/**
 * Temperature and water of a closed space that holds `massKg` and `energyJ`.
 *
 * Equation: M = ρ_w V_w + ρ_s V_s, V_w + V_s = V,
 *   U = ρ_w h_w V_w + ρ_s h_s V_s − pV + mC·T, all at saturation, by Newton's method in T. An
 *   accumulator holds boiling water at the same pressure, which takes and gives steam only:
 *   dM_a (h_s − h_w) = M_a (dh_w − dp/ρ_w).
 *   Steps change M and U by the flows alone, so both are conserved to the last digits whatever
 *   the step; this is the same balance as Åström and Bell's e₁₁ to e₂₂, not linearised.
 * Valid for: 0 to 340 °C. Below the boiling point at the pressure of the air, steam makes up its own
 *   part of the pressure in the steam space and air the rest, so that the gauge shows nothing and
 *   water is heated as water; an accumulator keeps what it held at 100 °C.
 * Left out: the air and its purging, water colder than the surface, steam hotter than its water.
 */
export function solveBoiling(state: VesselState): void {
  const { saturation: s, prepared } = state;
  const { boilingK } = prepared;
  let kelvin = s.temperatureK;
  const latent = s.steamEnthalpy - s.waterEnthalpy;
  const heldKg = state.accumulatorKg;
  const takes =
    heldKg > 0 ? (heldKg * (s.waterEnthalpySlope - s.pressureSlope / s.waterDensity)) / latent : 0;
  const from = Math.max(kelvin, boilingK);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    let accumulatorKg = heldKg;
    let accumulatorJ = heldKg * prepared.boilingEnergyJKg;
    let kgByK = 0;
    let jouleByK = 0;
    if (heldKg > 0 && kelvin > boilingK) {
      accumulatorKg = heldKg + takes * (kelvin - from);
      const energy = s.waterEnthalpy - s.pressurePa / s.waterDensity;
      accumulatorJ = accumulatorKg * energy;
      kgByK = takes;
      jouleByK =
        takes * energy +
        accumulatorKg *
          (s.waterEnthalpySlope -
            (s.pressureSlope - (s.pressurePa * s.waterDensitySlope) / s.waterDensity) /
              s.waterDensity);
    }
    const apart = s.waterDensity - s.steamDensity;
    const water = (state.massKg - accumulatorKg - s.steamDensity * prepared.volumeM3) / apart;
    const steam = prepared.volumeM3 - water;
    const excess = boilingEnergy(s, water, steam, prepared.metalJK) + accumulatorJ - state.energyJ;
    const byK =
      boilingEnergySlope(s, water, steam, prepared.metalJK) +
      jouleByK -
      ((s.waterDensity * s.waterEnthalpy - s.steamDensity * s.steamEnthalpy) / apart) *
        (boilingMassSlope(s, water, steam) + kgByK);
    let change = -excess / byK;
    if (change > MOST_CHANGE_K) change = MOST_CHANGE_K;
    else if (change < -MOST_CHANGE_K) change = -MOST_CHANGE_K;
    state.waterM3 = water;
    state.accumulatorKg = accumulatorKg;
    if (change < CLOSE_K && change > -CLOSE_K) break;
    kelvin += change;
    readSaturation(s, kelvin);
    kelvin = s.temperatureK;
  }
  state.waterTemperatureK = s.temperatureK;
  const gauge = s.pressurePa - state.ambient.pressurePa;
  state.gaugePa = Math.max(gauge, 0);
}

/** Energy of water, steam and metal of one temperature, J. */
export function boilingEnergy(
  s: Saturation,
  waterM3: number,
  steamM3: number,
  metalJK: number,
): number {
  return (
    s.waterDensity * s.waterEnthalpy * waterM3 +
    s.steamDensity * s.steamEnthalpy * steamM3 -
    s.pressurePa * (waterM3 + steamM3) +
    metalJK * (s.temperatureK - LEAST_SATURATION_K)
  );
}

/** Change of that energy with temperature, volumes held: e₂₂ · dp/dT. */
export function boilingEnergySlope(
  s: Saturation,
  waterM3: number,
  steamM3: number,
  metalJK: number,
): number {
  return (
    waterM3 * (s.waterDensitySlope * s.waterEnthalpy + s.waterDensity * s.waterEnthalpySlope) +
    steamM3 * (s.steamDensitySlope * s.steamEnthalpy + s.steamDensity * s.steamEnthalpySlope) -
    s.pressureSlope * (waterM3 + steamM3) +
    metalJK
  );
}

/** Change of mass with temperature, volumes held: e₁₂ · dp/dT. */
export function boilingMassSlope(s: Saturation, waterM3: number, steamM3: number): number {
  return waterM3 * s.waterDensitySlope + steamM3 * s.steamDensitySlope;
}

/** Puts a steam vessel at one temperature with this much water, and counts from here. */
export function fillBoiling(state: VesselState, kelvin: number, waterM3: number): void {
  const { saturation: s, prepared, parameters: p } = state;
  readSaturation(s, kelvin);
  const steamM3 = prepared.volumeM3 - waterM3;
  const hot = kelvin > prepared.boilingK;
  readSaturation(state.middle, hot ? kelvin : prepared.boilingK);
  const m = state.middle;
  state.accumulatorKg = p.kind === 'hot water' ? 0 : p.accumulatorM3 * m.waterDensity;
  state.massKg = s.waterDensity * waterM3 + s.steamDensity * steamM3 + state.accumulatorKg;
  state.energyJ =
    boilingEnergy(s, waterM3, steamM3, prepared.metalJK) +
    state.accumulatorKg * (m.waterEnthalpy - m.pressurePa / m.waterDensity);
  solveBoiling(state);
}
