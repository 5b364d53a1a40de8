/**
 * One step of a run: 10 ms, or 5 ms to prove that the step does not matter.
 *
 * Order of a step, written down here and nowhere else:
 *   1 actions, load changes and fault onsets that are due
 *   2 commands of the machine → field actuators
 *   3 plant
 *   4 field sensors → packed word of inputs
 *   5 timers of the machine that have fallen due, then the word if it changed
 *   6 every tenth of a second: one frame to the recorder and to the hash
 */
import type { BurnerChange } from '../../machines/burner/index.ts';
import { driveField, readField, settleField } from '../field/index.ts';
import { addWords } from '../numeric/index.ts';
import { writeFrame } from './channels.ts';
import { lastChunk, nextFrameOffset } from './frame-store.ts';
import { gatherReadings, gatherSlowReadings } from './gather-readings.ts';
import { noteCommands, noteInputs } from './note-changes.ts';
import { stepPlant } from './plant-state.ts';
import { FRAME_MS, note, type RunState } from './run-state.ts';
import { startStepFaults, takeAllDue } from './take-due.ts';

export const STEP_MS = 10;
export const STEP_S = STEP_MS / 1000;
export const FRAME_S = FRAME_MS / 1000;

/** The moment before the first step: sensors settle, the machine is powered, frame 0. */
export function beginRun(run: RunState): void {
  const { plant, readings, logic } = run;
  gatherReadings(plant, readings);
  gatherSlowReadings(plant, readings);
  logic.inputs = settleField(run.field, readings);
  run.burner.send(logic.inputs);
  takeOutputs(run);
  record(run);
}

/** @param probe called after each phase with its number, from 0; for the bench */
export function stepRun(run: RunState, probe: ((phase: number) => void) | null): void {
  const { plant, field, readings, logic, clock } = run;
  const startMs = run.steps * run.stepMs;
  if (run.dueMs <= startMs) takeAllDue(run, startMs);
  if (probe !== null) probe(0);
  driveField(field, logic.commands, logic.target, readings, run.stepS);
  if (probe !== null) probe(1);
  stepPlant(plant, field.outputs, run.stepS);
  if (probe !== null) probe(2);
  gatherReadings(plant, readings);
  run.steps += 1;
  const recorded = run.steps % run.stepsPerFrame === 0;
  if (recorded) gatherSlowReadings(plant, readings);
  const word = readField(field, readings, run.stepS);
  if (probe !== null) probe(3);
  const nowMs = startMs + run.stepMs;
  if (run.clockDueMs <= nowMs) {
    clock.advanceTo(nowMs);
    takeOutputs(run);
  }
  if (word !== logic.inputs) {
    clock.advanceTo(nowMs);
    noteInputs(run, nowMs / 1000, logic.inputs, word);
    logic.inputs = word;
    run.burner.send(word);
    takeOutputs(run);
  }
  if (probe !== null) probe(4);
  if (recorded) record(run);
  if (probe !== null) probe(5);
}

/** What the machine reports of itself, as events of the run. */
export function noteBurner(run: RunState, change: BurnerChange): void {
  const { nowMs } = run.clock;
  const t = nowMs / 1000;
  switch (change.kind) {
    case 'step': {
      run.stepSinceMs = nowMs;
      const { step, rule } = change;
      note(run, rule === null ? { t, type: 'step', step } : { t, type: 'step', step, rule });
      startStepFaults(run, step);
      return;
    }
    case 'lockout':
      note(run, { t, type: 'lockout', cause: change.cause, step: change.step });
      return;
    case 'reset':
      note(run, { t, type: 'reset', count: change.resets.accepted });
      return;
    default:
      return;
  }
}

function takeOutputs(run: RunState): void {
  const { burner, clock, logic } = run;
  const before = logic.commands;
  const target = logic.target;
  logic.commands = burner.commands;
  logic.target = burner.target;
  logic.step = burner.step;
  run.clockDueMs = clock.nextDueMs;
  if (before !== logic.commands || target !== logic.target) {
    noteCommands(run, clock.nowMs / 1000, before, logic.commands, target, logic.target);
  }
}

function record(run: RunState): void {
  const { store } = run;
  const at = nextFrameOffset(store);
  const { numbers, words } = lastChunk(store);
  writeFrame(numbers, at, run.plant, run.field, run.logic, run.moving);
  addWords(run.hash, words, 2 * at, 2 * (at + store.width));
}
