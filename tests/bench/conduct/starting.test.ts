import { describe, expect, it } from 'vitest';
import type { DeskEntry } from '../../../machines/index.ts';
import type { TimedAction } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';
import {
  ARRIVE,
  at,
  CALL,
  check,
  cock,
  judge,
  repair,
  rulesOf,
  traceOf,
  withFault,
} from './visit.ts';

const welded = withFault('airflow switch welded', 1);
const short = withFault('pilot does not reach main', 1);

function reset(t: number): TimedAction[] {
  return [at(t, { type: 'reset', pressed: true }), at(t + 0.5, { type: 'reset', pressed: false })];
}

describe('resets', () => {
  // With the airflow switch welded each start ends at the at-rest check, 33 s after its beginning.
  const log = [CALL, ...reset(50), ...reset(100), ...reset(150)];
  it('[SC-9] the third in a row without a look between is unsafe, and so is each after it', () => {
    const four = [...log, ...reset(200)];
    const found = judge({ setup: welded, log: four });
    expect(found.map(({ rule, t }) => [rule, t])).toEqual([
      ['SC-9', 150],
      ['SC-9', 200],
    ]);
    expect(found[0]?.what.params).toMatchObject({ resets: 3 });
  });
  it('[SC-9] two are right', () => {
    expect(rulesOf({ setup: welded, log: log.slice(0, -2) })).toEqual([]);
  });
  it('[SC-9] a check, a question or a repair between begins the count again', () => {
    const looked = [...log, check(140, 'multimeter: volts', '29', 'N')].sort((a, b) => a.t - b.t);
    expect(rulesOf({ setup: welded, log: looked })).toEqual([]);
    const asked: DeskEntry = { t: 120, type: 'ask', topic: 'what happened' };
    expect(rulesOf({ setup: welded, log, desk: [ARRIVE, asked] })).toEqual([]);
    const mended = [...log, repair(120, 'airflow switch tube', 'clean')].sort((a, b) => a.t - b.t);
    expect(rulesOf({ setup: welded, log: mended })).toEqual([]);
  });
  it('[SC-9] presses where there is no lockout are no resets', () => {
    expect(rulesOf({ log: [...reset(5), ...reset(10), ...reset(15)] })).toEqual([]);
  });
});

describe('unburnt gas', () => {
  // The pilot does not reach the main gas: 4 s of it stand unburnt in the furnace from 205 s on.
  const stop = [
    at(222, { type: 'emergency-stop', pressed: true }),
    at(224, { type: 'emergency-stop', pressed: false }),
  ];
  it('[SC-10] a second reset with gas in the furnace and no purge between is unsafe', () => {
    const log = [CALL, ...reset(215), ...stop, ...reset(226)];
    const found = judge({ setup: short, log, untilS: 228 });
    expect(found.map(({ rule, t }) => [rule, t])).toEqual([['SC-10', 226]]);
    expect(Number(found[0]?.state.params?.percent)).toBeGreaterThanOrEqual(25);
  });
  it('[SC-10] one reset, or a second after a whole purge, is right', () => {
    expect(rulesOf({ setup: short, log: [CALL, ...reset(215), ...stop], untilS: 228 })).toEqual([]);
    const log = [CALL, ...reset(215), ...reset(470)];
    expect(rulesOf({ setup: short, log, untilS: 472 })).toEqual([]);
    const again = traceOf({ setup: short, log }).acts.find(({ action }) => action.t === 470);
    expect(again?.before.combustible).toBeGreaterThan(0.25);
  });
  it('[SC-10] the same resets without gas in the furnace are right', () => {
    const log = [
      CALL,
      at(20, { type: 'emergency-stop', pressed: true }),
      at(22, { type: 'emergency-stop', pressed: false }),
      ...reset(24),
      at(30, { type: 'emergency-stop', pressed: true }),
      at(32, { type: 'emergency-stop', pressed: false }),
      ...reset(34),
    ];
    expect(rulesOf({ log })).toEqual([]);
  });
  it('[SC-10] a light-off into gas from valves that stick open is unsafe, with sound ones it is right', () => {
    const setup = shippedSetup('laundry-healthy-start');
    const stuck = ['upstream valve sticks part open', 'downstream valve sticks part open'];
    const faults = stuck.map((fault) => ({
      fault,
      severity: 0.2,
      onset: { kind: 'start' } as const,
    }));
    // Both valves stay a little open after the first run; with the cock shut nobody sees it.
    const log = [
      at(200, { type: 'call-for-heat', on: false }),
      cock(201, 0),
      cock(300, 1),
      ...reset(301),
      at(302, { type: 'call-for-heat', on: true }),
    ];
    const found = judge({ setup: { ...setup, faults }, log, untilS: 425 });
    expect(found.map(({ rule, what }) => [rule, what.params?.step])).toEqual([
      ['SC-10', 'spark check'],
    ]);
    expect(rulesOf({ setup, log, untilS: 425 })).toEqual([]);
  });
});
