import { number, type ParameterTable, type Values } from '../../quantity/index.ts';
import { GRAVITY } from './ambient.ts';

export const stackParameters = {
  heightM: number('m', 0, 80, 'height of the stack above the boiler outlet'),
  lossPa: number('Pa', 1, 2000, 'loss of flue and stack at rated flow and rated flue temperature'),
  ratedTemperatureC: number('°C', 50, 600, 'flue temperature for which the loss is stated', 230),
  blockage: number('1', 0, 0.98, 'share of the flue closed by what lies in it', 0),
  damperShut: number('1', 0, 0.98, 'share of the flue that its damper closes', 0),
} as const satisfies ParameterTable;
export type StackParameters = Values<typeof stackParameters>;

/**
 * Buoyant draught of a column of flue gas, Pa.
 *
 * Equation: Δp = g · H · (ρ_air − ρ_gas).
 * Left out: cooling along the stack, wind.
 * Source: hydrostatics; as in any text on chimneys.
 */
export function stackDraught(
  heightM: number,
  airDensityKgM3: number,
  gasDensityKgM3: number,
): number {
  return GRAVITY * heightM * (airDensityKgM3 - gasDensityKgM3);
}
