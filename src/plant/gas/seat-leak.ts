import { describeMixture, type MixtureParameters, REFERENCE_PRESSURE_PA } from './mixture.ts';
import { conductanceOf, nozzleFlow, prepareNozzle } from './nozzle.ts';

/** Pressure difference at which every seat leak of the parameters is stated, Pa. */
export const SEAT_LEAK_TEST_PA = 10000;
/**
 * Leak of a sound safety shut-off valve of DN 65–80, dm³/h: the size of EN 161 class A.
 * A training value.
 */
export const SOUND_SEAT_LEAK_DM3_H = 0.1;

/**
 * Effective area (C_d·A) of the orifice that passes a stated leak to the open air, m².
 *
 * Equation: A = ρ_ref·q·√(R/M·T) / (p_up·Φ(Δp/p_up)), with q in dm³/h of gas at 15 °C, 101325 Pa.
 * Left out: laminar flow in a fine gap (a real leak falls faster with pressure than an orifice's).
 * Source: isentropic nozzle, as the reference decay.
 *
 * @param dm3PerHour leak at reference state, dm³/h
 * @param dpPa pressure difference at which it was found, Pa gauge
 */
export function leakAreaForFlow(
  dm3PerHour: number,
  dpPa: number,
  mixture: MixtureParameters,
  temperatureK: number,
  ambientPa: number = REFERENCE_PRESSURE_PA,
): number {
  const gas = describeMixture(mixture);
  const massFlow = (gas.densityKgM3 * dm3PerHour) / 1000 / 3600;
  const perArea = conductanceOf(1, gas.gasConstantJKgK, temperatureK);
  const curve = prepareNozzle(gas.heatCapacityRatio);
  return massFlow / nozzleFlow(curve, perArea, ambientPa + dpPa, ambientPa);
}
