/**
 * A run: scenario, seed and action log, stepped at 10 ms.
 *
 * Order of a step, written down here and nowhere else:
 *   1 actions, load changes and fault onsets that are due
 *   2 commands of the machine → field actuators
 *   3 plant
 *   4 field sensors → packed word of inputs
 *   5 timers of the machine that have fallen due, then the word if it changed
 *   6 every tenth step: one frame to the recorder and to the hash
 */
import {
  type Burner,
  type BurnerChange,
  type Cause,
  createBurner,
  STEPS,
  type StepName,
} from '../../machines/burner/index.ts';
import { createSimulatedClock } from '../../machines/index.ts';
import type { FaultSubject } from '../faults/index.ts';
import {
  createField,
  createReadings,
  driveField,
  prepareField,
  readField,
  settleField,
} from '../field/index.ts';
import { addText, addWords, createHash, digest } from '../numeric/index.ts';
import type { Action, TimedAction } from './actions.ts';
import {
  type ChannelInfo,
  channelsOf,
  type LogicWords,
  movingPlaces,
  writeFrame,
} from './channels.ts';
import type { RunEvent } from './events.ts';
import {
  createFrameStore,
  firstFrame,
  frameAt,
  lastChunk,
  nextFrameOffset,
} from './frame-store.ts';
import { gatherReadings, gatherSlowReadings } from './gather-readings.ts';
import { copyData } from './live-parameters.ts';
import { noteCommands, noteInputs } from './note-changes.ts';
import { operate } from './operate.ts';
import { createPlant, preparePlant, stepPlant } from './plant-state.ts';
import { createSchedule, nextDueMs, putAt, putFirst, takeDue } from './schedule.ts';
import type { RunSetup } from './setup.ts';
import {
  createStandingFaults,
  type FaultOrder,
  insertFault,
  intermittentChance,
  nextSpellMs,
  removeFault,
  type StandingFault,
} from './standing-faults.ts';

export const STEP_MS = 10;
export const STEP_S = STEP_MS / 1000;
const STEPS_PER_FRAME = 10;
export const FRAME_S = STEP_S * STEPS_PER_FRAME;

export interface RunStatus {
  readonly step: StepName;
  /** When the step was entered, s. */
  readonly sinceS: number;
  readonly lockout: Cause | null;
  readonly lockoutStep: StepName | null;
  readonly resets: number;
}

export interface Run {
  readonly setup: RunSetup;
  readonly channels: readonly ChannelInfo[];
  readonly frameS: number;
  timeS(): number;
  /** Steps on until the time is reached; a time already passed changes nothing. */
  advanceTo(timeS: number): void;
  /** Does it now, that is before the next step; returns it as the log keeps it. */
  act(action: Action): TimedAction;
  /** All actions with their times: those taken, then those still to come. */
  log(): readonly TimedAction[];
  events(): readonly RunEvent[];
  /** Frames recorded so far; frame k is at k · frameS. Those before `firstFrame` are gone. */
  frameCount(): number;
  firstFrame(): number;
  frame(k: number): Float64Array;
  /** Over every recorded quantity and every event so far. */
  hash(): string;
  status(): RunStatus;
  /** Hidden from a learner's tools: what stands. */
  standingFaults(): readonly StandingFault[];
}

export interface RunOptions {
  /** `hash only` records into one frame that is overwritten: for checking a log. */
  readonly keep?: 'all' | 'hash only';
  /** Called after each phase of a step (0 due, 1 drive, 2 plant, 3 read, 4 machine, 5 record), for the bench. */
  readonly probe?: (phase: number) => void;
}

type Due =
  | { readonly kind: 'action'; readonly action: TimedAction }
  | { readonly kind: 'load'; readonly load: number }
  | { readonly kind: 'fault'; readonly order: FaultOrder; readonly place: number };

/** @throws RangeError when the plant's data contradict themselves; a checked library never does */
export function createRun(setup: RunSetup, options: RunOptions = {}): Run {
  const probe = options.probe ?? null;
  const faults = createStandingFaults(subjectOf(setup), subjectOf(setup));
  const { live } = faults;
  const plant = createPlant(live, setup.initial, setup.seed);
  const field = createField(live, setup.seed);
  const readings = createReadings();
  const clock = createSimulatedClock();
  const due = createSchedule<Due>();
  const events: RunEvent[] = [];
  const taken: TimedAction[] = [];
  const channels = channelsOf(plant);
  const store = createFrameStore(
    channels.length,
    options.keep === 'hash only' ? 'last frame' : 'all',
  );
  const moving = movingPlaces(plant);
  const hash = createHash();
  const logic: LogicWords = { inputs: 0, commands: 0, step: 0, target: 0 };
  const chances = setup.faults.map((order, place) => intermittentChance(setup.seed, order, place));
  const operated = { panel: field.panel, plant, faults };
  let steps = 0;
  let dueMs = 0;
  let clockDueMs = 0;
  let stepSinceMs = 0;

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
  takeAllDue(0);
  // Behind loads and faults of the same instant, as an act of that instant would come.
  for (const action of setup.actions) {
    putAt(due, Math.round(action.t * 1000), { kind: 'action', action });
  }
  dueMs = nextDueMs(due);

  const burner: Burner = createBurner({
    variant: setup.plant.variant,
    timings: setup.profile.timings,
    clock,
    changes: noteBurner,
  });
  gatherReadings(plant, readings);
  gatherSlowReadings(plant, readings);
  logic.inputs = settleField(field, readings);
  burner.send(logic.inputs);
  takeOutputs();
  record();

  function note(event: RunEvent): void {
    events.push(event);
    addText(hash, JSON.stringify(event));
  }

  function noteBurner(change: BurnerChange): void {
    const t = clock.nowMs / 1000;
    switch (change.kind) {
      case 'step': {
        stepSinceMs = clock.nowMs;
        const { step, rule } = change;
        note(rule === null ? { t, type: 'step', step } : { t, type: 'step', step, rule });
        startStepFaults(step);
        return;
      }
      case 'lockout':
        note({ t, type: 'lockout', cause: change.cause, step: change.step });
        return;
      case 'reset':
        note({ t, type: 'reset', count: change.resets.accepted });
        return;
      default:
        return;
    }
  }

  function startStepFaults(step: StepName): void {
    setup.faults.forEach((order, place) => {
      if (order.onset.kind === 'step' && order.onset.step === step) {
        putFirst(due, clock.nowMs, { kind: 'fault', order, place });
        dueMs = nextDueMs(due);
      }
    });
  }

  function takeAllDue(nowMs: number): void {
    let changed = false;
    for (let item = takeDue(due, nowMs); item !== undefined; item = takeDue(due, nowMs)) {
      changed = takeOne(item, nowMs) || changed;
    }
    dueMs = nextDueMs(due);
    if (changed) {
      preparePlant(plant);
      prepareField(field);
    }
  }

  function takeOne(item: Due, nowMs: number): boolean {
    const t = nowMs / 1000;
    if (item.kind === 'load') {
      plant.load = item.load;
      return false;
    }
    if (item.kind === 'action') {
      const { action } = item;
      taken.push(action);
      note({ t, type: 'action', action });
      const standing = [...faults.standing];
      const changed = operate(operated, action);
      noteFaults(t, standing);
      return changed;
    }
    const { fault, severity, onset } = item.order;
    const stands = faults.standing.some((one) => one.fault === fault);
    const comes = onset.kind !== 'intermittent' || !stands;
    if (comes) insertFault(faults, fault, severity);
    else removeFault(faults, fault);
    note({ t, type: 'fault', fault, severity, on: comes });
    const chance = chances[item.place];
    if (onset.kind === 'intermittent' && chance !== undefined) {
      putFirst(due, nowMs + nextSpellMs(chance, onset, comes), item);
    }
    return true;
  }

  function noteFaults(t: number, before: readonly StandingFault[]): void {
    for (const { fault, severity } of before) {
      if (!faults.standing.some((one) => one.fault === fault)) {
        note({ t, type: 'fault', fault, severity, on: false });
      }
    }
    for (const { fault, severity } of faults.standing) {
      if (!before.some((one) => one.fault === fault && one.severity === severity)) {
        note({ t, type: 'fault', fault, severity, on: true });
      }
    }
  }

  function takeOutputs(): void {
    const before = logic.commands;
    const target = logic.target;
    logic.commands = burner.commands;
    logic.target = burner.target;
    logic.step = burner.step;
    clockDueMs = clock.nextDueMs;
    if (before !== logic.commands || target !== logic.target) {
      noteCommands(note, clock.nowMs / 1000, before, logic.commands, target, logic.target);
    }
  }

  function record(): void {
    const at = nextFrameOffset(store);
    const { numbers, words } = lastChunk(store);
    writeFrame(numbers, at, plant, field, logic, moving);
    addWords(hash, words, 2 * at, 2 * (at + store.width));
  }

  function step(): void {
    const startMs = steps * STEP_MS;
    if (dueMs <= startMs) takeAllDue(startMs);
    if (probe !== null) probe(0);
    driveField(field, logic.commands, logic.target, readings, STEP_S);
    if (probe !== null) probe(1);
    stepPlant(plant, field.outputs, STEP_S);
    if (probe !== null) probe(2);
    gatherReadings(plant, readings);
    if (steps % STEPS_PER_FRAME === STEPS_PER_FRAME - 1) gatherSlowReadings(plant, readings);
    const word = readField(field, readings, STEP_S);
    if (probe !== null) probe(3);
    steps += 1;
    const nowMs = startMs + STEP_MS;
    if (clockDueMs <= nowMs) {
      clock.advanceTo(nowMs);
      takeOutputs();
    }
    if (word !== logic.inputs) {
      clock.advanceTo(nowMs);
      noteInputs(note, nowMs / 1000, logic.inputs, word);
      logic.inputs = word;
      burner.send(word);
      takeOutputs();
    }
    if (probe !== null) probe(4);
    if (steps % STEPS_PER_FRAME === 0) record();
    if (probe !== null) probe(5);
  }

  return {
    setup,
    channels,
    frameS: FRAME_S,
    timeS: () => (steps * STEP_MS) / 1000,
    advanceTo(timeS) {
      const until = Math.round((timeS * 1000) / STEP_MS);
      while (steps < until) step();
    },
    act(action) {
      const timed: TimedAction = { t: (steps * STEP_MS) / 1000, ...action };
      putAt(due, steps * STEP_MS, { kind: 'action', action: timed });
      dueMs = nextDueMs(due);
      return timed;
    },
    log: () => [
      ...taken,
      ...due.entries.flatMap(({ what }) => (what.kind === 'action' ? [what.action] : [])),
    ],
    events: () => events,
    frameCount: () => store.count,
    firstFrame: () => firstFrame(store),
    frame: (k) => frameAt(store, k),
    hash: () => digest(hash),
    status: () => ({
      step: STEPS[logic.step] as StepName,
      sinceS: stepSinceMs / 1000,
      lockout: burner.cause,
      lockoutStep: burner.lockoutStep,
      resets: burner.resets.accepted,
    }),
    standingFaults: () => faults.standing,
  };
}

/** A copy of the plant's data with what the profile decides about its devices filled in. */
function subjectOf(setup: RunSetup): FaultSubject {
  const copy = copyData<FaultSubject>(setup.plant);
  const { flameFailureResponseS, requiredAirChanges } = setup.profile.timings;
  for (const relay of copy.field.flameRelays) relay.responseS = flameFailureResponseS;
  for (const counter of copy.field.airChangeCounters) counter.changesRequired = requiredAirChanges;
  return copy;
}
