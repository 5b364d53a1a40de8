import { describe, expect, it } from 'vitest';
import {
  createRun,
  type PlantFile,
  type Run,
  type RunSetup,
  type TimedAction,
} from '../../src/engine/index.ts';
import { FAULTS, type Fault, type FaultSubject, faultsOf } from '../../src/faults/index.ts';
import { library, shippedSetup } from '../support/library.ts';

const UNTIL_S = 330;
const DRAINED_S = 900;
/** What a technician can put a plant through; some faults only answer to one of these. */
const EXERCISES: readonly (readonly [string, readonly TimedAction[], number])[] = [
  ['a start and a stop', [{ t: 250, type: 'call-for-heat', on: false }], UNTIL_S],
  ['the gas shut off', [{ t: 230, type: 'turn-cock', cock: 'cock', opening: 0 }], UNTIL_S],
  [
    'a slow drain',
    [
      { t: 6, type: 'set-load', load: 1 },
      { t: 6, type: 'insert-fault', fault: 'feed pump fails', severity: 1 },
    ],
    DRAINED_S,
  ],
];
/** Frames are 0.1 s: every fifth is fine enough to see anything that moved. */
const EVERY = 5;

const copyOf = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (_id, plant) => {
  const subjects = faultsOf(plant);

  it('[catalogue] offers faults of every family', () => {
    expect(new Set(subjects.map(({ family }) => family)).size).toBeGreaterThanOrEqual(7);
    expect(subjects.length).toBeGreaterThanOrEqual(24);
  });

  it.each(subjects.map((fault) => [fault.id, fault] as const))(
    '%s: severity zero changes nothing',
    (_fault, fault) => {
      const changed = copyOf(plant);
      fault.apply(changed, 0);
      expect(changed).toEqual(plant);
    },
  );

  it.each(subjects.map((fault) => [fault.id, fault] as const))(
    '%s: changes one component and leaves the plant a possible one',
    (_fault, fault) => {
      const { low, typical, high } = fault.severity;
      expect(low).toBeGreaterThan(0);
      expect(typical).toBeGreaterThanOrEqual(low);
      expect(high).toBeGreaterThanOrEqual(typical);
      for (const severity of [low, typical, high]) {
        const changed = copyOf(plant);
        fault.apply(changed, severity);
        expect(changed).not.toEqual(plant);
        expect(sectionsChanged(plant, changed)).toHaveLength(1);
        expect(numbersOf(changed).every(Number.isFinite)).toBe(true);
      }
    },
  );
});

describe('in a run', () => {
  const healthy = EXERCISES.map((exercise) => exercised(shippedSetup('healthy-start'), exercise));
  const plant = (healthy[0] as Run).setup.plant;

  it.each(faultsOf(plant).map((fault) => [fault.id, fault] as const))(
    '%s: at high severity something a tool can read has moved',
    (_id, fault) => {
      const setup = withFault(shippedSetup('healthy-start'), fault, fault.severity.high);
      const moved = EXERCISES.some((exercise, i) => {
        const run = exercised(setup, exercise);
        return visibleDifference(healthy[i] as Run, run) !== null;
      });
      expect(moved).toBe(true);
    },
    60_000,
  );

  it('a fault that does nothing would be noticed', () => {
    const idle: Fault = { ...(FAULTS[0] as Fault), apply: () => undefined };
    const untouched = copyOf(plant);
    idle.apply(untouched, idle.severity.high);
    expect(untouched).toEqual(plant);
    const same = exercised(
      shippedSetup('healthy-start'),
      EXERCISES[0] as (typeof EXERCISES)[number],
    );
    expect(visibleDifference(healthy[0] as Run, same)).toBeNull();
  });

  it('inserted and cleared again, a fault leaves the sound parameters behind', () => {
    const run = createRun(shippedSetup('healthy-start'));
    run.advanceTo(1);
    for (const fault of faultsOf(plant)) {
      run.act({ type: 'insert-fault', fault: fault.id, severity: fault.severity.typical });
    }
    for (const fault of faultsOf(plant)) run.act({ type: 'clear-fault', fault: fault.id });
    run.advanceTo(1.01);
    expect(run.standingFaults()).toEqual([]);
    run.advanceTo(UNTIL_S);
    expect(run.status().step).toBe('modulation');
  });
});

function exercised(
  setup: RunSetup,
  [, actions, untilS]: readonly [string, readonly TimedAction[], number],
): Run {
  const run = createRun({ ...setup, actions: [...setup.actions, ...actions] });
  run.advanceTo(untilS);
  return run;
}

function withFault(setup: RunSetup, fault: Fault, severity: number): RunSetup {
  return { ...setup, faults: [{ fault: fault.id, severity, onset: { kind: 'start' } }] };
}

/** First visible channel that differs by more than the noise of the instruments, with its time. */
function visibleDifference(a: Run, b: Run): string | null {
  for (const [index, channel] of a.channels.entries()) {
    if (channel.part !== 'visible') continue;
    for (let k = 0; k < a.frameCount(); k += EVERY) {
      const x = a.frame(k)[index] as number;
      const y = b.frame(k)[index] as number;
      const noise = channel.kind === 'word' ? 0 : 1e-3 * (1 + Math.abs(x));
      if (Math.abs(x - y) > noise) return `${channel.id} at ${k * a.frameS} s`;
    }
  }
  return null;
}

function sectionsChanged(before: PlantFile, after: PlantFile): string[] {
  const changed: string[] = [];
  for (const key of Object.keys(before) as (keyof FaultSubject)[]) {
    const one = before[key] as unknown;
    const other = after[key] as unknown;
    if (JSON.stringify(one) !== JSON.stringify(other)) changed.push(key);
  }
  return changed;
}

function numbersOf(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(numbersOf);
}
