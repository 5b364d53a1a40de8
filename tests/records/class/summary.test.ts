import { describe, expect, it } from 'vitest';
import { bestOfSeats, summaryOfClass } from '../../../src/records/class/index.ts';
import { BY_READINGS, LATER_AND_BETTER, OF_JOB, RESULTS } from './class-results.ts';

describe('a class at a glance', () => {
  const summary = summaryOfClass(OF_JOB);

  it('counts each seat once, by its best attempt', () => {
    expect(bestOfSeats(OF_JOB).map(({ seat, outcome }) => [seat, outcome])).toEqual([
      [1, 0.9],
      [2, 0.7],
      [3, null],
      [4, 0.2],
    ]);
    expect(summary).toMatchObject({ seats: 4, finished: 3, medianOutcome: 0.7, medianMinutes: 60 });
  });

  it('takes the middle between the two of an even number', () => {
    expect(summaryOfClass([BY_READINGS, LATER_AND_BETTER]).medianOutcome).toBeCloseTo(0.8, 12);
  });

  it('gives the share that found it by readings of those of whom it is known', () => {
    expect(summary.foundByReadings).toBeCloseTo(2 / 3, 12);
    expect(summary.foundByTrying).toBe(0);
  });

  it('puts first what most seats did against the rules, whichever attempt it was in', () => {
    expect(summary.conduct.map(({ rule, severity, seats }) => [rule, severity, seats])).toEqual([
      ['SC-2', 'careless', 2],
      ['SC-7', 'unsafe', 1],
    ]);
    expect(summary.missed).toEqual([{ part: 'strainer', seats: 1 }]);
    expect(summary.refused).toEqual([3, 4]);
  });

  it('says nothing of a class without results', () => {
    expect(summaryOfClass([])).toEqual({
      seats: 0,
      finished: 0,
      medianOutcome: null,
      medianMinutes: null,
      foundByReadings: null,
      foundByTrying: null,
      conduct: [],
      missed: [],
      refused: [],
    });
    expect(summaryOfClass(RESULTS.filter(({ what }) => what.kind === 'quiz')).foundByReadings).toBe(
      null,
    );
  });
});
