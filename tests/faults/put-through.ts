/**
 * One fault on one plant at all its severities, in a process of its own: outside the test runner's
 * module wrappers the simulation runs at twice the speed.
 */
import type { Run } from '../../src/engine/index.ts';
import { type Fault, findFault } from '../../src/faults/index.ts';
import { brokenInvariants } from '../support/invariants.ts';
import { readByHand, shownByHand, shownInRun } from './at-hand.ts';
import { type Check, checksThatShow } from './checks.ts';
import {
  type Exercise,
  exercised,
  FURTHER,
  START,
  START_ALONE,
  soundSetup,
  withFault,
} from './exercises.ts';

export interface Asked {
  readonly plant: string;
  readonly fault: string;
}
export interface Found {
  /** Broken invariants and numbers that are none, at any severity. */
  readonly wrong: readonly string[];
  /** At high severity: the exercise in which a check shows it, and each such check with its reading. */
  readonly shown: {
    readonly by: string;
    readonly checks: readonly (readonly [Check, string])[];
  } | null;
  /** At typical severity: the first thing a technician has at hand that shows it. */
  readonly atHand: string | null;
}

const soundRuns = new Map<string, Run>();
const soundReadings = new Map<string, ReturnType<typeof readByHand>>();

function putThrough({ plant, fault: id }: Asked): Found {
  const fault = findFault(id);
  if (fault === undefined) throw new Error(`no fault ${id}`);
  const setup = soundSetup(plant);
  const { low, typical, high } = fault.severity;
  const wrong: string[] = [];
  const watched = (severity: number, exercise: Exercise): Run => {
    const run = exercised(withFault(setup, fault, severity), exercise);
    const last = run.frame(run.frameCount() - 1);
    const strange = run.channels.filter((_, i) => !Number.isFinite(last[i]));
    const found = [
      ...brokenInvariants(run),
      ...strange.map((channel) => `${channel.id} is no number`),
    ];
    wrong.push(...found.map((text) => `${text} (severity ${severity}, ${exercise.name})`));
    return run;
  };
  for (const severity of new Set([low, typical])) {
    if (severity !== high) watched(severity, START_ALONE);
  }
  for (const exercise of [START, ...FURTHER]) {
    const checks = [...checksThatShow(soundRun(plant, exercise), watched(high, exercise))];
    if (checks.length === 0) continue;
    return { wrong, shown: { by: exercise.name, checks }, atHand: atHand(plant, fault) };
  }
  return { wrong, shown: null, atHand: null };
}

/** By hand first, which costs one start; then by what the tools read through the exercises. */
function atHand(plant: string, fault: Fault): string | null {
  const sound = soundReadings.get(plant) ?? readByHand(soundSetup(plant));
  soundReadings.set(plant, sound);
  const setup = withFault(soundSetup(plant), fault, fault.severity.typical);
  const byHand = shownByHand(sound, readByHand(setup));
  if (byHand !== null) return byHand;
  for (const exercise of [START, ...FURTHER]) {
    const inRun = shownInRun(soundRun(plant, exercise), exercised(setup, exercise));
    if (inRun !== null) return `${inRun}, ${exercise.name}`;
  }
  return null;
}

function soundRun(plant: string, exercise: Exercise): Run {
  const key = `${plant}: ${exercise.name}`;
  const run = soundRuns.get(key) ?? exercised(soundSetup(plant), exercise);
  soundRuns.set(key, run);
  return run;
}

process.on('message', (asked: Asked) => {
  process.send?.(putThrough(asked));
});
