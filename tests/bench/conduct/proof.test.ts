import { describe, expect, it } from 'vitest';
import { PROOF_IDS } from '../../../src/bench/index.ts';
import {
  at,
  CALL,
  check,
  cock,
  gasOff,
  gasOn,
  itemOf,
  lock,
  proofOf,
  repair,
  supply,
  withFault,
} from './visit.ts';

/** The dairy is released to modulation 218 s after its call, at the most. */
const RELEASED_S = 225;
const HELD_S = 285;
const adjust = (t: number, value: number) =>
  at(t, { type: 'adjust', part: 'airflow switch', setting: 'switch point', value });

describe('a proof', () => {
  it('says each of its items once, with what is needed for it', () => {
    const { items, proved } = proofOf({ log: [], untilS: 5 });
    expect(items.map(({ id }) => id)).toEqual(PROOF_IDS);
    expect(proved).toBe(false);
    expect(items.filter(({ met }) => !met).map(({ id }) => id)).toEqual([
      'full start',
      'held in service',
    ]);
  });
  it('stands after a start that reaches modulation and holds', () => {
    expect(proofOf({ log: [CALL], untilS: HELD_S }).proved).toBe(true);
  });
});

describe('a full start', () => {
  it('is met at release to modulation, not before', () => {
    expect(itemOf({ log: [CALL], untilS: 200 }, 'full start')).toMatchObject({
      met: false,
      why: 'not-through',
    });
    const { met, t } = itemOf({ log: [CALL], untilS: RELEASED_S }, 'full start');
    expect(met).toBe(true);
    // Light-off at 171 s, pilot and main trials and low-fire hold follow.
    expect(t).toBeGreaterThan(190);
  });
  it('must begin after the last change: a repair, a setting, a jumper', () => {
    const jumper = at(226, { type: 'jumper', from: 'L1', to: '24', on: true });
    for (const change of [repair(226, 'regulator breather', 'clean'), adjust(226, 51), jumper]) {
      const visit = { log: [CALL, change], untilS: HELD_S };
      expect(itemOf(visit, 'full start'), change.type).toMatchObject({ met: false, why: 'none' });
    }
  });
  it('is not undone by reporting, looking or turning a cock', () => {
    const log = [
      CALL,
      check(226, 'look', 'sight glass'),
      repair(226, 'remote enable', 'report'),
      cock(226, 0.99),
    ];
    expect(itemOf({ log, untilS: 230 }, 'full start').met).toBe(true);
  });
  it('is not met by one that locks out', () => {
    const setup = withFault('ignition transformer dead', 1);
    const visit = { setup, log: [CALL], untilS: HELD_S };
    expect(itemOf(visit, 'full start')).toMatchObject({ met: false, why: 'not-through' });
    expect(itemOf(visit, 'held in service')).toMatchObject({ met: false, why: 'in-lockout' });
  });
});

describe('held in service', () => {
  it('takes a minute of modulation', () => {
    const short = itemOf({ log: [CALL], untilS: 250 }, 'held in service');
    expect(short).toMatchObject({ met: false, why: 'too-short' });
    const full = itemOf({ log: [CALL], untilS: HELD_S }, 'full start');
    const held = itemOf({ log: [CALL], untilS: HELD_S }, 'held in service');
    expect(held.met).toBe(true);
    expect(held.t).toBeCloseTo((full.t ?? 0) + 60, 9);
  });
  it('is not met when the call ends before', () => {
    const log = [CALL, at(240, { type: 'call-for-heat', on: false })];
    expect(itemOf({ log, untilS: 400 }, 'held in service')).toMatchObject({
      met: false,
      why: 'too-short',
    });
  });
});

describe('a leak test', () => {
  const opened = [...gasOff(4), repair(5, 'strainer', 'clean'), ...gasOn(6)];
  const sprayed = [check(20, 'leak spray', 'strainer-inlet'), check(25, 'leak spray', 'inlet')];
  it('is needless while the train is shut', () => {
    expect(itemOf({ log: [] }, 'leak test')).toMatchObject({ met: true, t: null });
  });
  it('is met with the last joint of the opened part, under pressure', () => {
    expect(itemOf({ log: opened }, 'leak test')).toMatchObject({ met: false, why: 'missing' });
    expect(itemOf({ log: [...opened, ...sprayed.slice(0, 1)] }, 'leak test').met).toBe(false);
    const { met, t } = itemOf({ log: [...opened, ...sprayed], untilS: 40 }, 'leak test');
    expect(met).toBe(true);
    // One frame may pass until the pressure behind the wet joint is looked at.
    expect(t).toBeGreaterThanOrEqual(25);
    expect(t).toBeLessThan(25.2);
  });
  it('is wanted anew when the train is opened again', () => {
    const again = [...gasOff(50), repair(51, 'strainer', 'clean'), ...gasOn(52)];
    const visit = { log: [...opened, ...sprayed, ...again], untilS: 70 };
    expect(itemOf(visit, 'leak test').met).toBe(false);
  });
});

describe('jumpers, locks and settings', () => {
  it('a jumper stands or is out again', () => {
    const on = at(5, { type: 'jumper', from: 'L1', to: '24', on: true });
    const off = at(9, { type: 'jumper', from: 'L1', to: '24', on: false });
    expect(itemOf({ log: [on] }, 'jumpers out')).toMatchObject({ met: false, why: 'standing' });
    expect(itemOf({ log: [on, off] }, 'jumpers out')).toMatchObject({ met: true, t: 9 });
  });
  it('a lock is on or off again, and the isolator with it', () => {
    const locked = [supply(5, false), lock(6, 'isolator')];
    const unlocked = [...locked, lock(8, 'isolator', false)];
    expect(itemOf({ log: locked }, 'locks off')).toMatchObject({ met: false, why: 'standing' });
    expect(itemOf({ log: unlocked }, 'locks off')).toMatchObject({ met: false, why: 'isolated' });
    expect(itemOf({ log: [...unlocked, supply(9, true)] }, 'locks off')).toMatchObject({
      met: true,
      t: 8,
    });
  });
  it('a setting is as the sheet, or off it', () => {
    const id = 'settings as the sheet';
    expect(itemOf({ log: [adjust(5, 15)] }, id)).toMatchObject({ met: false, why: 'off' });
    expect(itemOf({ log: [adjust(5, 15), adjust(9, 51)] }, id)).toMatchObject({ met: true, t: 9 });
  });
  it('a setting that was wrong before may stay as it was found, or come nearer, not go farther', () => {
    const id = 'settings as the sheet';
    const setup = withFault('airflow switch set too high', 3);
    const found = 200;
    expect(itemOf({ setup, log: [] }, id).met).toBe(true);
    expect(itemOf({ setup, log: [adjust(5, found - 50)] }, id).met).toBe(true);
    expect(itemOf({ setup, log: [adjust(5, found + 100)] }, id).met).toBe(false);
  });
});

describe('limits', () => {
  it('worked on are proved when they have tripped and made again since', () => {
    const id = 'limits proved';
    const work = [...gasOff(5), repair(6, 'low-gas switch', 'replace'), ...gasOn(7)];
    expect(itemOf({ log: [] }, id)).toMatchObject({ met: true, why: 'needless' });
    expect(itemOf({ log: work, untilS: 20 }, id)).toMatchObject({ met: false, why: 'missing' });
  });
  it('that every start trips are proved by a start', () => {
    const log = [repair(5, 'airflow switch', 'replace'), { ...CALL, t: 6 }];
    expect(itemOf({ log, untilS: 20 }, 'limits proved').met).toBe(false);
    const stop = at(240, { type: 'call-for-heat', on: false });
    expect(itemOf({ log: [...log, stop], untilS: 400 }, 'limits proved').met).toBe(true);
  });
});
