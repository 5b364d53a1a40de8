import { describe, expect, it } from 'vitest';
import { alignExpected, expectedTimeAt } from '../../../src/view/chart/alignment.ts';

const [STANDBY, DRIVE, PURGE, LIGHT, LOCKOUT] = [0, 1, 2, 3, 18];
/** Standby 0–5 s, drive 5–35 s, purge 35–80 s, light-off 80–100 s. */
const expected = [
  { step: STANDBY, tS: 0 },
  { step: DRIVE, tS: 5 },
  { step: PURGE, tS: 35 },
  { step: LIGHT, tS: 80 },
];
const END_S = 100;

describe('the expected run beside the actual one', () => {
  it('is shown as it stands before anything has happened', () => {
    const stretches = alignExpected([], expected, END_S, 0);
    expect(stretches.map(({ atS, untilS }) => [atS, untilS])).toEqual([
      [0, 5],
      [5, 35],
      [35, 80],
      [80, 100],
    ]);
  });

  it('begins anew at the entry of every step', () => {
    const actual = [
      { step: STANDBY, tS: 0 },
      { step: DRIVE, tS: 12 },
    ];
    expect(expectedTimeAt(alignExpected(actual, expected, END_S, 20), 20)).toBe(13);
  });

  it('holds the end of a step that lasts longer, and future steps wait for it', () => {
    const actual = [
      { step: STANDBY, tS: 0 },
      { step: DRIVE, tS: 5 },
    ];
    const stretches = alignExpected(actual, expected, END_S, 50);
    expect(expectedTimeAt(stretches, 48)).toBe(35);
    const purge = stretches.find(({ step }) => step === PURGE);
    expect([purge?.isFuture, purge?.atS, purge?.untilS]).toEqual([true, 50, 95]);
  });

  it('lets future steps follow on from where the current one is expected to end', () => {
    const actual = [
      { step: STANDBY, tS: 0 },
      { step: DRIVE, tS: 9 },
    ];
    const future = alignExpected(actual, expected, END_S, 15).filter(({ isFuture }) => isFuture);
    expect(future.map(({ step, atS }) => [step, atS])).toEqual([
      [PURGE, 39],
      [LIGHT, 84],
    ]);
  });

  it('leaves behind what a step did not wait for', () => {
    const actual = [
      { step: DRIVE, tS: 0 },
      { step: PURGE, tS: 10 },
    ];
    const [drive] = alignExpected(actual, expected, END_S, 12);
    expect([drive.atS, drive.untilS, drive.fromS, drive.toS]).toEqual([0, 10, 5, 35]);
  });

  it('takes up a step that comes round again', () => {
    const actual = [
      { step: DRIVE, tS: 0 },
      { step: PURGE, tS: 30 },
      { step: DRIVE, tS: 40 },
    ];
    expect(expectedTimeAt(alignExpected(actual, expected, END_S, 45), 45)).toBe(10);
  });

  it('expects nothing in a lockout, nor after it', () => {
    const actual = [
      { step: DRIVE, tS: 0 },
      { step: LOCKOUT, tS: 60 },
    ];
    const stretches = alignExpected(actual, expected, END_S, 80);
    expect(stretches.some(({ isFuture }) => isFuture)).toBe(false);
    expect(expectedTimeAt(stretches, 75)).toBeNull();
  });

  it('expects nothing beyond the end of the expected run', () => {
    const actual = [{ step: LIGHT, tS: 10 }];
    const stretches = alignExpected(actual, expected, END_S, 500);
    expect(expectedTimeAt(stretches, 25)).toBe(95);
    expect(expectedTimeAt(stretches, 40)).toBeNull();
  });
});
