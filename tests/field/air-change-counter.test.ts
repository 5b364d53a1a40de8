import { describe, expect, it } from 'vitest';
import { clearAir, countAir, createAirChangeCounter } from '../../src/field/air-change-counter.ts';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  type AirChangeCounterParameters,
  airChangeCounterParameters,
} from '../../src/field/index.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.01;

function counter(given: Partial<AirChangeCounterParameters> = {}) {
  const p = fillDefaults(airChangeCounterParameters, {
    id: 'counter',
    referenceFlowM3S: 1.5,
    referencePa: 1400,
    volumeM3: 20,
    changesRequired: 8,
    ...given,
  });
  return createAirChangeCounter(p, createContactBoard());
}

function secondsToMake(c: ReturnType<typeof counter>, differentialPa: number): number {
  for (let i = 1; i <= 100_000; i++) {
    countAir(c, differentialPa, STEP_S);
    if (c.contact.made) return i * STEP_S;
  }
  return Number.POSITIVE_INFINITY;
}

describe('air-change counter', () => {
  it.each([
    // Rows of the purge examples, air_side.json (own computation, t = N·V/Q; tolerance one step).
    [6, 1.2, 4, 20.0],
    [6, 0.84, 4, 28.571],
    [20, 1.5, 8, 106.667],
    [20, 1.5, 5, 66.667],
  ])(
    '%d m³ at %d m³/s make %d changes in %d s',
    (volumeM3, referenceFlowM3S, changesRequired, t) => {
      const c = counter({ volumeM3, referenceFlowM3S, changesRequired });
      const seconds = secondsToMake(c, 1400);
      expect(seconds).toBeGreaterThan(t - 0.011);
      expect(seconds).toBeLessThan(t + 0.011);
    },
  );

  it('takes twice as long on a quarter of the differential', () => {
    expect(secondsToMake(counter(), 350)).toBeCloseTo(213.33, 1);
  });

  it('counts nothing without air, and less than there is through a leaking line', () => {
    expect(secondsToMake(counter(), 2)).toBe(Number.POSITIVE_INFINITY);
    expect(secondsToMake(counter({ lineShare: 0 }), 1400)).toBe(Number.POSITIVE_INFINITY);
    expect(secondsToMake(counter({ lineShare: 0.25 }), 1400)).toBeCloseTo(213.33, 1);
  });

  it('begins again from nothing when the command falls', () => {
    const c = counter();
    secondsToMake(c, 1400);
    clearAir(c);
    expect([c.changes, c.contact.made]).toEqual([0, false]);
    expect(secondsToMake(c, 1400)).toBeCloseTo(106.67, 1);
  });
});
