import { describe, expect, it } from 'vitest';
import type { DeskEntry } from '../../../machines/index.ts';
import {
  ARRIVE,
  at,
  check,
  judge,
  lock,
  madeDead,
  repair,
  rulesOf,
  sound,
  supply,
  volts,
} from './visit.ts';

const PART = 'upstream valve wiring';

describe('meters', () => {
  it('[SC-1] ohms and continuity across live volts are unsafe, volts and amps are not', () => {
    for (const range of ['ohms', 'continuity']) {
      const found = judge({ log: [check(5, `multimeter: ${range}`, 'L1', 'N')] });
      expect(found).toMatchObject([{ rule: 'SC-1', t: 5, severity: 'unsafe' }]);
    }
    expect(
      rulesOf({ log: [volts(5, 'L1'), check(6, 'multimeter: amps', 'controller:1')] }),
    ).toEqual([]);
  });
  it('[SC-1] the same leads on the same wires with the isolator off are right', () => {
    const ohms = check(5, 'multimeter: ohms', 'L1', 'N');
    expect(rulesOf({ log: [supply(4, false), ohms] })).toEqual([]);
    expect(rulesOf({ log: [supply(5, false), ohms] })).toEqual([]);
  });
  it('[SC-1] ohms along a live conductor are careless though nothing stands between the leads', () => {
    const found = judge({ log: [check(5, 'multimeter: ohms', 'L1', '24')] });
    expect(found).toMatchObject([{ rule: 'SC-1', severity: 'careless' }]);
  });
  it('[SC-1] ohms of a coil that is not told to work are right with the isolator on', () => {
    expect(rulesOf({ log: [check(5, 'multimeter: ohms', '54', 'N')] })).toEqual([]);
  });
  it('[SC-1] ohms of a coil are judged by whether it works at that moment', () => {
    const log = [
      at(1, { type: 'call-for-heat', on: true }),
      check(20, 'multimeter: ohms', '61', 'N'),
      check(120, 'multimeter: ohms', '61', 'N'),
    ];
    // The fan contactor is told to work when the drive to purge begins, well after valve proving.
    expect(judge({ log, untilS: 121 }).map(({ rule, t }) => [rule, t])).toEqual([['SC-1', 120]]);
  });
});

describe('hands on conductors', () => {
  it('[SC-2] work with the isolator on is unsafe', () => {
    expect(rulesOf({ log: [repair(5, PART, 'tighten')] })).toEqual(['SC-2']);
  });
  it('[SC-2] a part that is not electrical may be worked on with the isolator on', () => {
    expect(rulesOf({ log: [repair(5, 'regulator breather', 'clean')] })).toEqual([]);
  });
  it('[SC-2] resetting a drive or reporting takes no hand to a conductor', () => {
    expect(rulesOf({ log: [repair(5, 'fan drive', 'reset')] })).toEqual([]);
  });
  it('[SC-3] isolated and proved dead without a lock is careless; locked it is right', () => {
    const dead = [volts(5, 'L1'), supply(6, false), volts(7, 'L1')];
    expect(judge({ log: [...dead, repair(8, PART, 'tighten')] })).toMatchObject([
      { rule: 'SC-3', severity: 'careless' },
    ]);
    expect(rulesOf({ log: [...madeDead(5), repair(8, PART, 'tighten')] })).toEqual([]);
  });
  it('[SC-3] a lock put on while the isolator is on holds nothing', () => {
    const log = [lock(4, 'isolator'), ...madeDead(5).filter(({ type }) => type !== 'lock')];
    expect(rulesOf({ log: [...log, repair(8, PART, 'tighten')] })).toEqual(['SC-3']);
  });
  it('[SC-4] isolated and locked without measuring is unsafe', () => {
    const log = [supply(5, false), lock(6, 'isolator'), repair(8, PART, 'tighten')];
    expect(judge({ log })).toMatchObject([{ rule: 'SC-4', severity: 'unsafe' }]);
  });
  it('[SC-4] volts measured before the isolator went off prove nothing', () => {
    const log = [volts(4, 'L1'), supply(5, false), lock(6, 'isolator'), repair(8, PART, 'tighten')];
    expect(rulesOf({ log })).toEqual(['SC-4']);
  });
  it('[SC-4] a place that had no volts before proves nothing; one that had proves it', () => {
    const isolated = [supply(5, false), lock(5, 'isolator')];
    const work = repair(8, PART, 'tighten');
    expect(judge({ log: [...isolated, volts(7, '54'), work] })).toMatchObject([
      { rule: 'SC-4', what: { code: 'conduct.electrical-never-live.what' } },
    ]);
    expect(rulesOf({ log: [...isolated, volts(7, 'L1'), work] })).toEqual([]);
  });
  it('[SC-4] leads that were left on prove it once their zero is pinned', () => {
    const log = [volts(4, 'L1'), supply(5, false), lock(5, 'isolator'), repair(8, PART, 'tighten')];
    const pin: DeskEntry = {
      t: 6,
      type: 'pin',
      what: 'multimeter',
      place: 'L1',
      other: 'N',
      reading: '0.0 V',
      step: 'standby',
    };
    expect(rulesOf({ log, desk: [ARRIVE, pin] })).toEqual([]);
    expect(rulesOf({ log, desk: [ARRIVE, { ...pin, t: 4.5 }] })).toEqual(['SC-4']);
    expect(rulesOf({ log, desk: [ARRIVE, { ...pin, reading: '118.2 V' }] })).toEqual(['SC-4']);
  });
  it('[SC-4] the proof does not outlast the isolation', () => {
    const log = [
      ...madeDead(5),
      lock(8, 'isolator', false),
      supply(9, true),
      supply(12, false),
      lock(12, 'isolator'),
      repair(13, PART, 'tighten'),
    ];
    expect(rulesOf({ log })).toEqual(['SC-4']);
  });
});

describe('what was done before the visit', () => {
  it('is not the visitor’s, whether the log brings it or the setup does', () => {
    const before = repair(5, PART, 'tighten');
    const desk: DeskEntry[] = [{ ...ARRIVE, t: 10 } as DeskEntry];
    expect(rulesOf({ log: [before], desk })).toEqual([]);
    const setup = { ...sound, actions: [before] };
    expect(rulesOf({ setup, log: [], desk })).toEqual([]);
    expect(rulesOf({ setup, log: [before, repair(12, PART, 'refit')], desk })).toEqual(['SC-2']);
  });
});
