/** Every fault in a run of every plant that it applies to: the sequence stays safe, and it shows. */
import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { createRun } from '../../src/engine/index.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { brokenInvariants } from '../support/invariants.ts';
import { library } from '../support/library.ts';
import { readByHand, shownByHand, shownInRun } from './at-hand.ts';
import { checksThatShow } from './checks.ts';
import { exercised, START, soundSetup } from './exercises.ts';
import type { Asked, Found } from './put-through.ts';

const LONG_MS = 120_000;

let other: ChildProcess;
beforeAll(() => {
  const path = fileURLToPath(new URL('./put-through.ts', import.meta.url));
  other = fork(path, { execArgv: ['--import', 'tsx'] });
});
afterAll(() => {
  other.kill();
});

function ask(asked: Asked): Promise<Found> {
  return new Promise((resolve, reject) => {
    const fail = (code: unknown) => reject(new Error(`${asked.fault} on ${asked.plant}: ${code}`));
    if (other.exitCode !== null) return fail(other.exitCode);
    other.once('exit', fail);
    other.once('message', (found) => {
      other.off('exit', fail);
      resolve(found as Found);
    });
    other.send(asked);
  });
}

describe.each(library.plants.map((plant) => [plant.id, plant] as const))('%s', (id, plant) => {
  const setup = soundSetup(id);
  const faults = faultsOf(plant);

  it.each(faults.map((fault) => [fault.id] as const))(
    '%s: no invariant breaks at any severity, some check shows it at high and something at hand at typical severity',
    async (fault) => {
      const { wrong, shown, atHand } = await ask({ plant: id, fault });
      expect(wrong).toEqual([]);
      expect(shown).not.toBeNull();
      expect(atHand).not.toBeNull();
    },
    LONG_MS,
  );

  it('a sound run shows nothing against another one', () => {
    const sound = exercised(setup, START);
    expect(brokenInvariants(sound)).toEqual([]);
    expect(sound.status().lockout).toBeNull();
    expect([...checksThatShow(sound, exercised(setup, START))]).toEqual([]);
    expect(shownInRun(sound, exercised(setup, START))).toBeNull();
    expect(shownByHand(readByHand(setup), readByHand(setup))).toBeNull();
  });

  it('inserted and cleared again, every fault leaves the sound parameters behind', () => {
    const run = createRun(setup);
    run.advanceTo(1);
    for (const fault of faults) {
      run.act({ type: 'insert-fault', fault: fault.id, severity: fault.severity.typical });
    }
    for (const fault of faults) run.act({ type: 'clear-fault', fault: fault.id });
    run.advanceTo(1.01);
    expect(run.standingFaults()).toEqual([]);
    run.advanceTo(START.untilS);
    expect(run.status().step).toBe('modulation');
  });
});
