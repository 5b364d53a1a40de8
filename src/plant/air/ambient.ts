import { exactPow } from '../../numeric/index.ts';
import { number, type ParameterTable, type Values } from '../../quantity/index.ts';

export const ambientParameters = {
  altitudeM: number('m', -400, 4000, 'height of the boiler house above sea level', 0),
  temperatureC: number('°C', -40, 50, 'air temperature in the boiler house and outdoors', 20),
} as const satisfies ParameterTable;
export type AmbientParameters = Values<typeof ambientParameters>;

/** Air outside and in the boiler house. Shared by every part that breathes or vents. */
export interface AmbientState {
  parameters: AmbientParameters;
  pressurePa: number;
  temperatureK: number;
  densityKgM3: number;
}

export const AIR_MOLAR_MASS = 0.0289647;
export const GAS_CONSTANT = 8.314462618;
export const GRAVITY = 9.80665;

const SEA_LEVEL_PA = 101325;
const SEA_LEVEL_K = 288.15;
const LAPSE_K_PER_M = 0.0065;
const PRESSURE_EXPONENT = 5.25588;

export function createAmbient(parameters: AmbientParameters): AmbientState {
  const state = { parameters, pressurePa: 0, temperatureK: 0, densityKgM3: 0 };
  prepareAmbient(state);
  return state;
}

/**
 * Pressure, temperature and density of the surrounding air.
 *
 * Equation: p = 101325 (1 − 0.0065 h / 288.15)^5.25588; ρ = p·M / (R·T).
 * Valid for: the troposphere; the pressure is the standard one, whatever the temperature.
 * Left out: humidity (at most 2 % of density at 30 °C), weather.
 * Source: ISO 2533, standard atmosphere.
 */
export function prepareAmbient(state: AmbientState): void {
  const { altitudeM, temperatureC } = state.parameters;
  const ratio = 1 - (LAPSE_K_PER_M * altitudeM) / SEA_LEVEL_K;
  state.pressurePa = SEA_LEVEL_PA * exactPow(ratio, PRESSURE_EXPONENT);
  state.temperatureK = temperatureC + 273.15;
  state.densityKgM3 = gasDensity(state.pressurePa, state.temperatureK, AIR_MOLAR_MASS);
}

/** Density of an ideal gas, kg/m³. */
export function gasDensity(
  pressurePa: number,
  temperatureK: number,
  molarMassKgMol: number,
): number {
  return (pressurePa * molarMassKgMol) / (GAS_CONSTANT * temperatureK);
}
