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
 * A conductive low-water cut-off: a bare rod down into the water, and a relay that asks whether
 * current flows from it to the shell. Levels are in metres from normal. The first clears itself when
 * the water is back, the second latches until reset by hand.
 *
 * Equation: the relay feels water while R ≤ R_threshold; R = R_bridge with the rod in steam, and
 * (R_water + R_scale) in parallel with R_bridge with the rod in water. So scale on the rod hides
 * water that is there, and a wet film over its insulator shows water that is gone.
 * `offsetM` is for what holds the water up around the rod, as a blocked chamber does.
 * Left out: polarisation (the measuring current alternates), foam.
 * Source: parallel resistances; magnitudes of boiler water at 500 µS/cm, own estimate.
 */
export const waterCutOffParameters = {
  id: name('name of the cut-off'),
  stands: choice(['first', 'second'], 'which of the two'),
  breakM: number('m', -3, 1, 'level at which it breaks'),
  makeM: number('m', -3, 1, 'level at which it makes again'),
  dwellS: number('s', 0, 60, 'how long before the contact moves, so that a wave does not', 2),
  offsetM: number('m', -3, 3, 'water stands this much higher at the rod than in the vessel', 0),
  waterOhm: number('Ω', 10, 1e6, 'from the rod through the water to the shell', 5000),
  thresholdOhm: number('Ω', 100, 1e7, 'resistance up to which the relay feels water', 30000),
  scaleOhm: number('Ω', 0, 1e9, 'film of scale on the rod, in series', 0),
  bridgeOhm: number('Ω', 10, 1e9, 'path over the insulator of the rod to the shell', 1e8),
  contact: choice(CONTACT_CONDITIONS, 'welded: stuck made; open: stuck open', 'sound'),
  manualReset: flag('latches when it breaks, until reset by hand', false),
} as const satisfies ParameterTable;
export type WaterCutOffParameters = Values<typeof waterCutOffParameters>;

export interface WaterCutOff {
  readonly parameters: WaterCutOffParameters;
  readonly snap: SnapSwitch;
  offsetM: number;
  /** Feels water wherever the level is, or nowhere. */
  alwaysWet: boolean;
  neverWet: boolean;
}

export function createWaterCutOff(
  parameters: WaterCutOffParameters,
  board: ContactBoard,
): WaterCutOff {
  const cutOff: WaterCutOff = {
    parameters,
    snap: createSnapSwitch(board),
    offsetM: 0,
    alwaysWet: false,
    neverWet: false,
  };
  prepareWaterCutOff(cutOff);
  return cutOff;
}

export function prepareWaterCutOff(cutOff: WaterCutOff): void {
  const p = cutOff.parameters;
  cutOff.offsetM = p.offsetM;
  const wetOhm = p.waterOhm + p.scaleOhm;
  cutOff.alwaysWet = p.bridgeOhm <= p.thresholdOhm;
  cutOff.neverWet = !cutOff.alwaysWet && !isWithin(wetOhm, p.bridgeOhm, p.thresholdOhm);
  prepareSnapSwitch(cutOff.snap, true, p.makeM, p.breakM, p.dwellS, p.manualReset, p.contact);
}

export function stepWaterCutOff(
  cutOff: WaterCutOff,
  levelM: number,
  resetPressed: boolean,
  stepS: number,
): void {
  let feltM = levelM + cutOff.offsetM;
  if (cutOff.alwaysWet) feltM = FAR_M;
  else if (cutOff.neverWet) feltM = -FAR_M;
  stepSnapSwitch(cutOff.snap, feltM, resetPressed, stepS);
}

const FAR_M = 1000;

function isWithin(oneOhm: number, otherOhm: number, limitOhm: number): boolean {
  return (oneOhm * otherOhm) / (oneOhm + otherOhm) <= limitOhm;
}
