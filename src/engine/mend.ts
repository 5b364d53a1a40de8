/** What acts on parts do to the faults that stand, to those still to come, and to those set going. */
import {
  type FaultSubject,
  findFault,
  type HandAct,
  partsOf,
  type Remedy,
  settingsOf,
  writeSetting,
} from '../faults/index.ts';
import { forgetDrivenIf } from './driven-faults.ts';
import { copyData } from './live-parameters.ts';
import type { RunState } from './run-state.ts';
import { applyStanding, rewriteLive, type StandingFaults } from './standing-faults.ts';

type Wanted = (remedy: Remedy) => boolean;

/** A hand on a thing undoes whatever an earlier hand left there. True when something was undone. */
export function undo(run: RunState, act: HandAct): boolean {
  const wanted: Wanted = ({ way }) => way === act;
  forgetDrivenIf(run, (fault) => hasRemedy(fault, wanted));
  return takeAway(run.faults, wanted);
}

/** A part is put right: what stood there goes, and does not come back. */
export function repairPart(run: RunState, part: string, way: string): boolean {
  const wanted: Wanted = (remedy) => remedy.part === part && remedy.way === way;
  forgetOrders(run, wanted);
  return takeAway(run.faults, wanted);
}

/** Whether work on this part opens the gas train. */
export function opensGas({ faults }: RunState, part: string): boolean {
  return partsOf(faults.sound).some((one) => one.part === part && one.opens === 'gas');
}

/** A dial is set: that is from now on how this plant is set, whatever it was before. */
export function turnDial(run: RunState, part: string, setting: string, value: number): boolean {
  if (!writeSetting(run.faults.sound, part, setting, value)) return false;
  const wanted: Wanted = (remedy) =>
    remedy.way === 'adjust' && remedy.part === part && remedy.setting === setting;
  forgetOrders(run, wanted);
  if (!takeAway(run.faults, wanted)) rewriteLive(run.faults);
  return true;
}

/** Every dial as it stands: what people have set, not what has worn behind it. */
export function dialsAsTheyStand({ faults }: RunState) {
  const asSet = copyData<FaultSubject>(faults.sound);
  applyStanding(asSet, faults.standing, isOfDial);
  return settingsOf(asSet);
}

/** Takes off a jumper that was left between these wires before anyone came. */
export function takeOffLeftJumper(run: RunState, isThere: (from: string, to: string) => boolean) {
  const { faults } = run;
  const before = faults.sound.wiring.bridges.length;
  const left = faults.standing.filter((one) => {
    if (!hasRemedy(one.fault, ({ way }) => way === 'remove jumper')) return false;
    const alone = copyData<FaultSubject>(faults.sound);
    applyStanding(alone, [one], () => true);
    return alone.wiring.bridges.slice(before).some(({ from, to }) => isThere(from, to));
  });
  if (left.length === 0) return false;
  run.setup.faults.forEach(({ fault }, place) => {
    if (left.some((one) => one.fault === fault)) run.mended[place] = true;
  });
  forgetDrivenIf(run, (fault) => left.some((one) => one.fault === fault));
  keepOnly(faults, (fault) => !left.some((one) => one.fault === fault));
  return true;
}

function isOfDial(fault: string): boolean {
  return hasRemedy(fault, ({ way }) => way === 'adjust');
}

function hasRemedy(fault: string, wanted: Wanted): boolean {
  return findFault(fault)?.remedies.some(wanted) ?? false;
}

function forgetOrders(run: RunState, wanted: Wanted): void {
  run.setup.faults.forEach(({ fault }, place) => {
    if (hasRemedy(fault, wanted)) run.mended[place] = true;
  });
  forgetDrivenIf(run, (fault) => hasRemedy(fault, wanted));
}

function takeAway(faults: StandingFaults, wanted: Wanted): boolean {
  return keepOnly(faults, (fault) => !hasRemedy(fault, wanted));
}

/** True when something went. */
function keepOnly(faults: StandingFaults, keeps: (fault: string) => boolean): boolean {
  const left = faults.standing.filter(({ fault }) => keeps(fault));
  if (left.length === faults.standing.length) return false;
  faults.standing.splice(0, faults.standing.length, ...left);
  rewriteLive(faults);
  return true;
}
