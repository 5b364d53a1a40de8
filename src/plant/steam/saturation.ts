import { liquidWater } from './region-1.ts';
import { steam } from './region-2.ts';
import { saturationPressure, saturationPressureSlope } from './region-4.ts';

/**
 * Water and steam in equilibrium at one temperature; slopes are along the line of saturation, for
 * a kelvin.
 */
export interface Saturation {
  temperatureK: number;
  pressurePa: number;
  waterDensity: number;
  waterEnthalpy: number;
  steamDensity: number;
  steamEnthalpy: number;
  pressureSlope: number;
  waterDensitySlope: number;
  waterEnthalpySlope: number;
  steamDensitySlope: number;
  steamEnthalpySlope: number;
}

export const LEAST_SATURATION_K = 273.16;
export const MOST_SATURATION_K = 621.16;
const SPACING_K = 2;
const ROWS = 174;
const QUANTITIES = 5;
const ROW_NUMBERS = 4 * QUANTITIES;

let table: Float64Array | null = null;

export function createSaturation(): Saturation {
  const s: Saturation = {
    temperatureK: 0,
    pressurePa: 0,
    waterDensity: 0,
    waterEnthalpy: 0,
    steamDensity: 0,
    steamEnthalpy: 0,
    pressureSlope: 0,
    waterDensitySlope: 0,
    waterEnthalpySlope: 0,
    steamDensitySlope: 0,
    steamEnthalpySlope: 0,
  };
  readSaturation(s, 373.15);
  return s;
}

/**
 * Fills `s` at a temperature, held to the range of the table.
 *
 * Equation: between points 2 K apart, cubics with IF97's own values and slopes at the points.
 * Valid for: 273.16 to 621.16 K (0.6 kPa to 16 MPa), values within 1e-6 of IF97, slopes within
 *   1e-4; 2e-8 and 1e-6 between 100 and 220 °C. A slope is the exact derivative of the value that
 *   is read, so that balances close.
 */
export function readSaturation(s: Saturation, kelvin: number): void {
  const rows = table ?? tabulate();
  const held = Math.max(kelvin, LEAST_SATURATION_K);
  const place = (held - LEAST_SATURATION_K) / SPACING_K;
  const row = place < ROWS ? Math.floor(place) : ROWS - 1;
  const t = place < ROWS ? place - row : 1;
  const at = row * ROW_NUMBERS;
  s.temperatureK = place < ROWS ? held : MOST_SATURATION_K;
  s.pressurePa = cubic(rows, at, t);
  s.pressureSlope = cubicSlope(rows, at, t);
  s.waterDensity = cubic(rows, at + 4, t);
  s.waterDensitySlope = cubicSlope(rows, at + 4, t);
  s.waterEnthalpy = cubic(rows, at + 8, t);
  s.waterEnthalpySlope = cubicSlope(rows, at + 8, t);
  s.steamDensity = cubic(rows, at + 12, t);
  s.steamDensitySlope = cubicSlope(rows, at + 12, t);
  s.steamEnthalpy = cubic(rows, at + 16, t);
  s.steamEnthalpySlope = cubicSlope(rows, at + 16, t);
}

function cubic(rows: Float64Array, at: number, t: number): number {
  return (
    (rows[at] as number) +
    t * ((rows[at + 1] as number) + t * ((rows[at + 2] as number) + t * (rows[at + 3] as number)))
  );
}

function cubicSlope(rows: Float64Array, at: number, t: number): number {
  return (
    ((rows[at + 1] as number) +
      t * (2 * (rows[at + 2] as number) + t * 3 * (rows[at + 3] as number))) /
    SPACING_K
  );
}

/** A row of the table: for each quantity the four factors of its cubic. Built once, on first use. */
function tabulate(): Float64Array {
  const rows = new Float64Array(ROWS * ROW_NUMBERS);
  let low = pointAt(LEAST_SATURATION_K);
  for (let row = 0; row < ROWS; row++) {
    const high = pointAt(LEAST_SATURATION_K + SPACING_K * (row + 1));
    for (let q = 0; q < QUANTITIES; q++) {
      const at = row * ROW_NUMBERS + 4 * q;
      const y0 = low[2 * q] as number;
      const rise = (high[2 * q] as number) - y0;
      const m0 = SPACING_K * (low[2 * q + 1] as number);
      const m1 = SPACING_K * (high[2 * q + 1] as number);
      rows[at] = y0;
      rows[at + 1] = m0;
      rows[at + 2] = 3 * rise - 2 * m0 - m1;
      rows[at + 3] = m0 + m1 - 2 * rise;
    }
    low = high;
  }
  table = rows;
  return rows;
}

/** Value and slope of each quantity, by IF97. */
function pointAt(kelvin: number): readonly number[] {
  const pascal = saturationPressure(kelvin);
  const slope = saturationPressureSlope(kelvin);
  const water = liquidWater(kelvin, pascal);
  const vapour = steam(kelvin, pascal);
  return [pascal, slope, ...densityAndHeat(water), ...densityAndHeat(vapour)];

  function densityAndHeat(phase: typeof water): readonly number[] {
    const v = phase.volumeM3Kg;
    const volumeSlope = phase.volumePerK + phase.volumePerPa * slope;
    const heatSlope = phase.heatCapacityJKgK + (v - kelvin * phase.volumePerK) * slope;
    return [1 / v, -volumeSlope / (v * v), phase.enthalpyJKg, heatSlope];
  }
}
