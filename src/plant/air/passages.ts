import { number, type ParameterTable, type Values } from '../../quantity/index.ts';

/**
 * Losses of the air and flue passages, each as the pressure it takes at the rated flow: what a
 * commissioning sheet shows. Loss grows with the square of mass flow and falls with density.
 */
export const passageParameters = {
  ratedFlowKgS: number('kg/s', 0.01, 60, 'air flow at which the losses are stated'),
  roomOpeningPa: number('Pa', 0.1, 500, 'loss of the openings that let air into the room', 2),
  roomBlockage: number('1', 0, 0.98, 'share of the room openings that is closed', 0),
  screenPa: number('Pa', 1, 2000, 'loss of the clean inlet screen', 60),
  screenBlockage: number('1', 0, 0.98, 'share of the inlet screen that is blocked', 0),
  ductPa: number('Pa', 1, 3000, 'loss of ducts and windbox, damper apart', 100),
  headPa: number('Pa', 20, 6000, 'loss of the burner head'),
  headBlockage: number('1', 0, 0.9, 'share of the burner head that is blocked', 0),
  passPa: number('Pa', 1, 4000, 'loss of furnace outlet and passes at their rated temperature'),
  passBlockage: number('1', 0, 0.9, 'share of the passes that is blocked by soot', 0),
  ratedPassTemperatureC: number('°C', 20, 1500, 'gas temperature for which passPa is stated', 600),
  ductLengthM: number('m', 0.5, 200, 'length of the air column from inlet to stack top', 12),
  ductAreaM2: number('m²', 0.005, 20, 'mean area of that column'),
} as const satisfies ParameterTable;
export type PassageParameters = Values<typeof passageParameters>;

/**
 * Resistance in Pa per (kg/s)², of a passage that takes lossPa at ratedKgS when a share of it is
 * closed.
 *
 * Equation: R = Δp / ṁ² / (1 − b)².
 */
export function passageResistance(lossPa: number, ratedKgS: number, blockage: number): number {
  const open = 1 - blockage;
  return lossPa / (ratedKgS * ratedKgS * open * open);
}
