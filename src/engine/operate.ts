/** What an action of the log does to panel, cocks, load, parts and faults. */
import { type FaultSubject, fuseOf } from '../faults/index.ts';
import { holdServo, isAcrossContact, renewFuse, wireAt } from '../field/index.ts';
import type { Action } from './actions.ts';
import { forgetDriven, startRamp, startSpells } from './driven-faults.ts';
import { ISOLATOR, JUMPER_OHM } from './hands.ts';
import { opensGas, repairPart, takeOffLeftJumper, turnDial, undo } from './mend.ts';
import type { RunState } from './run-state.ts';
import { insertFault, removeFault, rewriteLive } from './standing-faults.ts';
import { surround } from './surroundings.ts';

type ActionOf<T extends Action['type']> = Extract<Action, { type: T }>;

/**
 * An act that the plant does not let happen (a locked isolator, a name it does not have) changes
 * nothing and stays in the log.
 *
 * @returns true when parameters changed, so that derived constants must be prepared anew
 */
export function operate(run: RunState, action: Action, t: number): boolean {
  const { plant, faults, field, hands } = run;
  const { panel } = field;
  switch (action.type) {
    case 'call-for-heat':
      panel.callForHeat = action.on;
      return false;
    case 'reset':
      panel.resetPressed = action.pressed;
      return false;
    case 'reset-limits':
      panel.limitResetPressed = action.pressed;
      return action.pressed && undo(run, 'reset-limits');
    case 'emergency-stop':
      panel.emergencyStopPressed = action.pressed;
      return false;
    case 'supply':
      if (!hands.locks.includes(ISOLATOR)) panel.supplyOn = action.on;
      return false;
    case 'second-setpoint':
      panel.secondSetpoint = action.on;
      return false;
    case 'remote-enable':
      panel.remoteEnable = action.on;
      return false;
    case 'firing':
      panel.firingMode = action.mode;
      panel.handRate = action.rate;
      return undo(run, 'firing');
    case 'set-load':
      plant.load = action.load;
      return false;
    case 'turn-cock':
      if (hands.locks.includes(action.cock)) return false;
      setOpening(faults.sound, action.cock, action.opening);
      if (!undo(run, 'turn-cock')) rewriteLive(faults);
      return true;
    case 'insert-fault':
      forgetDriven(run, action.fault);
      insertFault(faults, action.fault, action.severity);
      return true;
    case 'clear-fault':
      forgetDriven(run, action.fault);
      return removeFault(faults, action.fault);
    case 'ramp-fault':
      return startRamp(run, action, t);
    case 'intermittent-fault':
      return startSpells(run, action, t);
    case 'set-weather':
    case 'set-gas-supply':
    case 'set-mains':
      surround(run, action);
      return true;
    case 'lock':
      lock(run, action);
      return false;
    case 'repair':
      return repair(run, action, t);
    case 'adjust':
      return turnDial(run, action.part, action.setting, action.value);
    case 'jumper':
      return action.on ? putJumper(run, action) : takeJumper(run, action);
    case 'stroke':
      holdServo(field, action.servo, action.deg);
      return false;
    case 'check':
      return false;
  }
}

/** The isolator is locked off or not at all; a cock where it stands. */
function lock({ hands, field, faults }: RunState, { point, on }: ActionOf<'lock'>): void {
  const { locks } = hands;
  const at = locks.indexOf(point);
  if (!on) {
    if (at >= 0) locks.splice(at, 1);
    return;
  }
  const holds =
    point === ISOLATOR
      ? !field.panel.supplyOn
      : faults.sound.gasTrain.edges.some(({ kind, id }) => kind === 'cock' && id === point);
  if (at < 0 && holds) locks.push(point);
}

function repair(run: RunState, { part, way }: ActionOf<'repair'>, t: number): boolean {
  if (opensGas(run, part)) run.hands.opened.push({ part, t });
  const fuse = way === 'replace' ? fuseOf(run.faults.sound, part) : null;
  if (fuse !== null) renewFuse(run.field.wiring, fuse);
  return repairPart(run, part, way);
}

function putJumper({ hands, field, faults }: RunState, { from, to }: ActionOf<'jumper'>): boolean {
  if (!isAcrossContact(field.wiring, from, to)) return false;
  hands.jumpers.push({ from, to });
  faults.sound.wiring.bridges.push({ from, to, ohm: JUMPER_OHM });
  rewriteLive(faults);
  return true;
}

/** The last one put between these wires; where none was, one that stood there before. */
function takeJumper(run: RunState, { from, to }: ActionOf<'jumper'>): boolean {
  const { hands, faults, field } = run;
  const wires = [wireAt(field.wiring, from), wireAt(field.wiring, to)];
  const isThere = (one: string, other: string) => {
    const a = wireAt(field.wiring, one);
    const b = wireAt(field.wiring, other);
    return a !== b && wires.includes(a) && wires.includes(b);
  };
  const mine = hands.jumpers.filter((one) => isThere(one.from, one.to)).at(-1);
  if (mine === undefined) return takeOffLeftJumper(run, isThere);
  hands.jumpers.splice(hands.jumpers.indexOf(mine), 1);
  const { bridges } = faults.sound.wiring;
  const itself = bridges.findIndex((one) => one.from === mine.from && one.to === mine.to);
  bridges.splice(itself, 1);
  rewriteLive(faults);
  return true;
}

function setOpening(subject: FaultSubject, id: string, opening: number): void {
  for (const edge of subject.gasTrain.edges) {
    if (edge.kind === 'cock' && edge.id === id) edge.opening = opening;
  }
}
