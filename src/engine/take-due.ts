/** Actions, load changes and fault onsets, each at its time. */
import type { StepName } from '../../machines/burner/index.ts';
import { prepareField } from '../field/index.ts';
import type { TimedAction } from './actions.ts';
import type { DrivenFault } from './driven-fault.ts';
import { takeDriven } from './driven-faults.ts';
import { operate } from './operate.ts';
import { preparePlant } from './plant-state.ts';
import { type Due, note, type RunState } from './run-state.ts';
import { nextDueMs, putAt, putFirst, takeDue } from './schedule.ts';
import { insertFault, nextSpellMs, removeFault, type StandingFault } from './standing-faults.ts';

/** What the scenario orders of load and faults. */
export function putOrders(run: RunState): void {
  const { due, setup } = run;
  for (const { atS, load } of setup.load) {
    putAt(due, Math.round(atS * 1000), { kind: 'load', load });
  }
  setup.faults.forEach((order, place) => {
    const { onset } = order;
    const item: Due = { kind: 'fault', order, place };
    if (onset.kind === 'start') putAt(due, 0, item);
    else if (onset.kind === 'time') putAt(due, Math.round(onset.atS * 1000), item);
    else if (onset.kind === 'intermittent') putAt(due, Math.round(onset.fromS * 1000), item);
  });
  run.dueMs = nextDueMs(due);
}

/** Behind what is already there for the same instant. */
export function putAction(run: RunState, action: TimedAction): void {
  putAt(run.due, Math.round(action.t * 1000), { kind: 'action', action });
  run.dueMs = nextDueMs(run.due);
}

/** Faults that come when the sequence enters a step. */
export function startStepFaults(run: RunState, step: StepName): void {
  run.setup.faults.forEach((order, place) => {
    if (run.mended[place]) return;
    if (order.onset.kind === 'step' && order.onset.step === step) {
      putFirst(run.due, run.clock.nowMs, { kind: 'fault', order, place });
      run.dueMs = nextDueMs(run.due);
    }
  });
}

export function takeAllDue(run: RunState, nowMs: number): void {
  const { due } = run;
  let changed = false;
  for (let item = takeDue(due, nowMs); item !== undefined; item = takeDue(due, nowMs)) {
    changed = takeOne(run, item, nowMs) || changed;
  }
  run.dueMs = nextDueMs(due);
  if (changed) {
    preparePlant(run.plant);
    prepareField(run.field);
  }
}

/** True when parameters changed. */
function takeOne(run: RunState, item: Due, nowMs: number): boolean {
  switch (item.kind) {
    case 'load':
      run.plant.load = item.load;
      return false;
    case 'action':
      return takeAction(run, item.action, nowMs / 1000);
    case 'fault':
      if (run.mended[item.place]) return false;
      takeFault(run, item, nowMs);
      return true;
    case 'driven':
      return takeDrivenNoted(run, item.driven, nowMs);
  }
}

/** Told when it comes, goes, or has come to its end; the steps of a ramp between are not. */
function takeDrivenNoted(run: RunState, driven: DrivenFault, nowMs: number): boolean {
  const { fault } = driven;
  const before = standingOf(run, fault);
  const changed = takeDriven(run, driven, nowMs);
  if (!changed) return false;
  const after = standingOf(run, fault);
  const ended = !run.driven.includes(driven);
  if (after === undefined || before === undefined || ended) {
    const severity = after ?? before ?? 0;
    note(run, { t: nowMs / 1000, type: 'fault', fault, severity, on: after !== undefined });
  }
  return true;
}

function standingOf(run: RunState, fault: string): number | undefined {
  return run.faults.standing.find((one) => one.fault === fault)?.severity;
}

function takeAction(run: RunState, action: TimedAction, t: number): boolean {
  const { faults } = run;
  run.taken.push(action);
  note(run, { t, type: 'action', action });
  const standing = [...faults.standing];
  const changed = operate(run, action, t);
  noteFaults(run, t, standing);
  return changed;
}

/** One that is intermittent comes and goes in turn, by its own chance. */
function takeFault(run: RunState, item: Extract<Due, { kind: 'fault' }>, nowMs: number): void {
  const { faults } = run;
  const { fault, severity, onset } = item.order;
  const stands = faults.standing.some((one) => one.fault === fault);
  const comes = onset.kind !== 'intermittent' || !stands;
  if (comes) insertFault(faults, fault, severity);
  else removeFault(faults, fault);
  note(run, { t: nowMs / 1000, type: 'fault', fault, severity, on: comes });
  const chance = run.chances[item.place];
  if (onset.kind === 'intermittent' && chance !== undefined) {
    putFirst(run.due, nowMs + nextSpellMs(chance, onset, comes), item);
  }
}

function noteFaults(run: RunState, t: number, before: readonly StandingFault[]): void {
  const { standing } = run.faults;
  for (const { fault, severity } of before) {
    if (!standing.some((one) => one.fault === fault)) {
      note(run, { t, type: 'fault', fault, severity, on: false });
    }
  }
  for (const { fault, severity } of standing) {
    if (!before.some((one) => one.fault === fault && one.severity === severity)) {
      note(run, { t, type: 'fault', fault, severity, on: true });
    }
  }
}
