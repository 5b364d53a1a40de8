import { exactExp, exactPow } from '../../numeric/index.ts';
import { number, type ParameterTable, type Values } from '../../quantity/index.ts';

export const ambientParameters = {
  altitudeM: number('m', -400, 4000, 'height of the boiler house above sea level', 0),
  temperatureC: number('°C', -40, 50, 'air temperature in the boiler house and outdoors', 20),
  weatherPa: number('Pa', -6000, 5000, 'barometer over that of the standard atmosphere', 0),
  relativeHumidity: number('1', 0, 1, 'humidity of the air over that of saturated air', 0),
} as const satisfies ParameterTable;
/** Weather that is left out is standard and dry. */
export type AmbientParameters = Pick<AmbientValues, 'altitudeM' | 'temperatureC'> &
  Partial<AmbientValues>;
type AmbientValues = Values<typeof ambientParameters>;

/** Air outside and in the boiler house. Shared by every part that breathes or vents. */
export interface AmbientState {
  parameters: AmbientParameters;
  pressurePa: number;
  temperatureK: number;
  densityKgM3: number;
}

export const AIR_MOLAR_MASS = 0.0289647;
const WATER_MOLAR_MASS = 0.01801528;
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
 * Equation: p = 101325 (1 − 0.0065 h / 288.15)^5.25588 + weather; ρ = (p·M − p_v (M − M_w)) / (R·T),
 *   vapour p_v = humidity · 611.2 exp(17.62 t / (243.12 + t)).
 * Valid for: the troposphere, −40 to 50 °C.
 * Left out: what vapour takes of the oxygen (as much as of the air: 2 % at 30 °C and half saturated).
 * Source: ISO 2533, standard atmosphere; Magnus formula with the constants of WMO-No. 8.
 */
export function prepareAmbient(state: AmbientState): void {
  const { altitudeM, temperatureC, weatherPa = 0, relativeHumidity = 0 } = state.parameters;
  const ratio = 1 - (LAPSE_K_PER_M * altitudeM) / SEA_LEVEL_K;
  state.pressurePa = SEA_LEVEL_PA * exactPow(ratio, PRESSURE_EXPONENT) + weatherPa;
  state.temperatureK = temperatureC + 273.15;
  const saturatedPa = 611.2 * exactExp((17.62 * temperatureC) / (243.12 + temperatureC));
  const lighter = gasDensity(
    relativeHumidity * saturatedPa,
    state.temperatureK,
    AIR_MOLAR_MASS - WATER_MOLAR_MASS,
  );
  state.densityKgM3 = gasDensity(state.pressurePa, state.temperatureK, AIR_MOLAR_MASS) - lighter;
}

/** Density of an ideal gas, kg/m³. */
export function gasDensity(
  pressurePa: number,
  temperatureK: number,
  molarMassKgMol: number,
): number {
  return (pressurePa * molarMassKgMol) / (GAS_CONSTANT * temperatureK);
}
