import { choice, flag, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import type { ContactBoard } from './contact.ts';
import {
  CONTACT_CONDITIONS,
  createSnapSwitch,
  prepareSnapSwitch,
  type SnapSwitch,
  stepSnapSwitch,
} from './snap-switch.ts';

/**
 * A low-water cut-off on the level in the vessel, in metres from normal. The first clears itself
 * when the water is back, the second latches until reset by hand. A fouled probe still feels
 * water after the level has left it: it senses too high by the offset.
 */
export const waterCutOffParameters = {
  id: name('name of the cut-off'),
  stands: choice(['first', 'second'], 'which of the two'),
  breakM: number('m', -3, 1, 'level at which it breaks'),
  makeM: number('m', -3, 1, 'level at which it makes again'),
  dwellS: number('s', 0, 60, 'how long before the contact moves, so that a wave does not', 2),
  offsetM: number('m', -3, 3, 'senses this much too high, as a fouled probe does', 0),
  contact: choice(CONTACT_CONDITIONS, 'welded: stuck made; open: stuck open', 'sound'),
  manualReset: flag('latches when it breaks, until reset by hand', false),
} as const satisfies ParameterTable;
export type WaterCutOffParameters = Values<typeof waterCutOffParameters>;

export interface WaterCutOff {
  readonly parameters: WaterCutOffParameters;
  readonly snap: SnapSwitch;
  offsetM: number;
}

export function createWaterCutOff(
  parameters: WaterCutOffParameters,
  board: ContactBoard,
): WaterCutOff {
  const cutOff: WaterCutOff = { parameters, snap: createSnapSwitch(board), offsetM: 0 };
  prepareWaterCutOff(cutOff);
  return cutOff;
}

export function prepareWaterCutOff(cutOff: WaterCutOff): void {
  const p = cutOff.parameters;
  cutOff.offsetM = p.offsetM;
  prepareSnapSwitch(cutOff.snap, true, p.makeM, p.breakM, p.dwellS, p.manualReset, p.contact);
}

export function stepWaterCutOff(
  cutOff: WaterCutOff,
  levelM: number,
  resetPressed: boolean,
  stepS: number,
): void {
  stepSnapSwitch(cutOff.snap, levelM + cutOff.offsetM, resetPressed, stepS);
}
