import type { StepName, Timings, Variant } from '../../machines/index.ts';
import { createRig, type Inputs, type Rig } from './rig.ts';

/** Short times in whole seconds, so that one character of a pattern is one second. */
export const SHORT: Timings = {
  relaySettleS: 1,
  atRestLimitS: 5,
  startBlockedLimitS: 6,
  vpEmptyS: 2,
  vpHoldEmptyS: 3,
  vpFillS: 2,
  vpHoldFullS: 3,
  drivePurgeLimitS: 6,
  purgeDwellS: 1,
  purgeS: 4,
  purgeLimitS: 7,
  prePurgeLimitS: 15,
  driveLightOffLimitS: 5,
  lightOffDwellS: 1,
  sparkCheckS: 2,
  pilotTrialS: 3,
  pilotProvingS: 3,
  mainTrialS: 3,
  mainProvingS: 3,
  lowFireHoldS: 2,
  warmUpLimitS: 6,
  curveDeviationS: 2,
  runDownS: 2,
  valveCloseLimitS: 2,
  postPurgeS: 3,
  flameOutS: 2,
  flameFailureResponseS: 1,
  resetPressS: 2,
  resetWindowS: 60,
  repeatedResets: 3,
  recyclesAllowed: 0,
  requiredAirChanges: 4,
  lostProofInPurge: 'drive again',
};

/** What each character gives at the start of its second; `1` gives all that is waited for, `0` the contrary. */
export type Legend = { readonly [character: string]: Inputs };

export interface PatternOptions {
  readonly timings?: Partial<Timings>;
  readonly legend?: Legend;
  /** Before the pattern, once the step is reached. */
  readonly before?: Inputs;
}

/** Brings a plant to a step and lives through the pattern from its first instant. */
export function live(
  variant: Variant,
  step: StepName,
  pattern: string,
  options: PatternOptions = {},
): Rig {
  const rig = createRig(variant, { ...SHORT, ...options.timings });
  rig.reach(step);
  if (options.before !== undefined) rig.give(options.before);
  liveOn(rig, pattern, options.legend);
  return rig;
}

export function liveOn(rig: Rig, pattern: string, legend: Legend = {}): void {
  for (const character of pattern) {
    const given = legend[character];
    if (given !== undefined) rig.give(given);
    else if (character === '1' || character === '0') rig.oblige(character === '1');
    else if (character !== '.') throw new Error(`the legend does not know ${character}`);
    rig.pass(1);
  }
}
