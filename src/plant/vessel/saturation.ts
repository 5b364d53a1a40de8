/**
 * Water and steam at saturation, by polynomials in u = p_bar^¼ − 1.5.
 *
 * Valid for: 0.9 to 22 bar absolute; within 3e-5 of IAPWS-IF97 in temperature, 1e-4 in water
 *   enthalpy, 2e-5 in densities, 2e-6 in steam enthalpy, 0.25 % in the slopes.
 * Source: least squares fit made here to IAPWS R7-97(2012), regions 1, 2 and 4.
 */
export interface Saturation {
  temperatureK: number;
  waterDensity: number;
  waterEnthalpy: number;
  steamDensity: number;
  steamEnthalpy: number;
  /** Slopes with pressure, per Pa. */
  temperatureSlope: number;
  waterDensitySlope: number;
  waterEnthalpySlope: number;
  steamDensitySlope: number;
  steamEnthalpySlope: number;
}

const PA_PER_BAR = 1e5;
const LOWEST_PA = 0.9e5;
const HIGHEST_PA = 22e5;
const CENTRE = 1.5;

const T = [
  425.455845110862, 100.6902744133602, -6.776342116794323, 4.329415094968302, -1.8606059324981934,
] as const;
const WATER_DENSITY = [
  914.8427982481492, -95.07552227600112, -15.548724655434135, -2.0344949117153504,
  -1.7466732624500643,
] as const;
const WATER_ENTHALPY = [
  642212.8708079515, 435414.0590461382, -15049.41898950271, 23081.917331270637, -6589.651566386746,
] as const;
/** Density over pressure in bar. */
const STEAM_DENSITY = [
  0.5332313970025923, -0.08181623806844482, 0.055464673976904105, -0.01284493436880585,
  0.009909146304997863, -0.002508546745142869,
] as const;
const STEAM_ENTHALPY = [
  2748659.983348173, 118671.47384244688, -57736.09955622658, -2886.917386467555, -4974.280172593493,
  -322.13864063946187,
] as const;

export function createSaturation(): Saturation {
  const s: Saturation = {
    temperatureK: 0,
    waterDensity: 0,
    waterEnthalpy: 0,
    steamDensity: 0,
    steamEnthalpy: 0,
    temperatureSlope: 0,
    waterDensitySlope: 0,
    waterEnthalpySlope: 0,
    steamDensitySlope: 0,
    steamEnthalpySlope: 0,
  };
  readSaturation(s, PA_PER_BAR);
  return s;
}

/** Fills `s` at an absolute pressure, held to the range of the fit. */
export function readSaturation(s: Saturation, pressurePa: number): void {
  const held = pressurePa < LOWEST_PA ? LOWEST_PA : Math.min(pressurePa, HIGHEST_PA);
  const bar = held / PA_PER_BAR;
  const root = Math.sqrt(Math.sqrt(bar));
  const u = root - CENTRE;
  const slope = root / (4 * held);
  s.temperatureK = quartic(T, u);
  s.temperatureSlope = quarticSlope(T, u) * slope;
  s.waterDensity = quartic(WATER_DENSITY, u);
  s.waterDensitySlope = quarticSlope(WATER_DENSITY, u) * slope;
  s.waterEnthalpy = quartic(WATER_ENTHALPY, u);
  s.waterEnthalpySlope = quarticSlope(WATER_ENTHALPY, u) * slope;
  const perBar = quintic(STEAM_DENSITY, u);
  s.steamDensity = bar * perBar;
  s.steamDensitySlope = perBar / PA_PER_BAR + bar * quinticSlope(STEAM_DENSITY, u) * slope;
  s.steamEnthalpy = quintic(STEAM_ENTHALPY, u);
  s.steamEnthalpySlope = quinticSlope(STEAM_ENTHALPY, u) * slope;
}

type Quartic = readonly [number, number, number, number, number];
type Quintic = readonly [number, number, number, number, number, number];

function quartic(c: Quartic, u: number): number {
  return c[0] + u * (c[1] + u * (c[2] + u * (c[3] + u * c[4])));
}
function quarticSlope(c: Quartic, u: number): number {
  return c[1] + u * (2 * c[2] + u * (3 * c[3] + u * 4 * c[4]));
}
function quintic(c: Quintic, u: number): number {
  return c[0] + u * (c[1] + u * (c[2] + u * (c[3] + u * (c[4] + u * c[5]))));
}
function quinticSlope(c: Quintic, u: number): number {
  return c[1] + u * (2 * c[2] + u * (3 * c[3] + u * (4 * c[4] + u * 5 * c[5])));
}
