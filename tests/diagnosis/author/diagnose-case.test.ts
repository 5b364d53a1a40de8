import { describe, expect, it } from 'vitest';
import {
  afterSeeing,
  type CaseDiagnosed,
  causeShares,
  diagnoseCase,
  priorBelief,
  rankCorrelation,
  sharesOf,
  toolFor,
} from '../../../src/diagnosis/index.ts';
import { exerciseOf, jobs } from '../shipped-cases.ts';
import { particlesOf } from '../small-particles.ts';

const LONG_MS = 240_000;

function diagnosed(id: string, tools?: readonly string[]): CaseDiagnosed {
  const exercise = exerciseOf(id);
  return diagnoseCase(tools === undefined ? exercise : { ...exercise, tools });
}

describe('the plant of a case', () => {
  const rows = [
    { fault: 'a', priorWeight: 1, plants: [[2], [0], [0]] },
    { fault: 'b', priorWeight: 1, plants: [[1], [1]] },
  ];

  it('does not count for its cause by a reading that no other plant has', () => {
    const particles = particlesOf(rows);
    const sharesSeen = (own: number | undefined, bin: number) => {
      const all = own === undefined ? particles : { ...particles, own };
      const belief = afterSeeing(priorBelief(all), all, [{ key: 0, bin }]);
      return causeShares(all, sharesOf(belief));
    };
    // Bin 2 is that of the first plant alone.
    expect(sharesSeen(undefined, 2)[0]).toBeGreaterThan(0.9);
    expect(sharesSeen(0, 2)[0]).toBeCloseTo(0.5, 9);
    // What others have too counts as ever.
    expect(sharesSeen(0, 1)[1]).toBeGreaterThan(0.9);
  });
});

describe('diagnosis for an author', () => {
  it('of a job with one fault ends at its cause, with minutes and difficulty in their range', () => {
    const found = diagnosed('school-cold-classrooms');
    expect(found).toMatchObject({ found: true });
    expect(found.rounds.map(({ cause }) => cause)).toEqual(['airflow switch tube off']);
    const path = found.rounds[0]?.path ?? [];
    expect(path.at(-1)?.check).toBe('look|air switch tube');
    expect(path.at(-1)?.told).toContainEqual(expect.objectContaining({ word: 'look.tube.off' }));
    expect(found.minutes).toBe(path.reduce((sum, { minutes }) => sum + minutes, 0));
    expect(found.difficulty).toBeGreaterThanOrEqual(1);
  });

  it('of a job with two faults finds the second after the first is mended', () => {
    const found = diagnosed('laundry-one-thing-at-a-time');
    expect(found.rounds.map(({ cause }) => cause)).toEqual([
      'pilot orifice blocked',
      'regulator droops',
    ]);
    expect(found.found).toBe(true);
    const [first] = found.rounds;
    expect(found.checks).toBeGreaterThan(first?.path.length ?? 0);
  });

  it('of a plant that is only used wrongly comes to that', () => {
    const found = diagnosed('laundry-dead-after-cleaning');
    expect(found.found).toBe(true);
    expect(found.rounds.map(({ cause }) => cause)).toEqual([null]);
  });

  it('of a fault that a start does not show says so, with no way that leads nowhere', () => {
    const found = diagnosed('laundry-water-where-it-should-be');
    const last = found.rounds.at(-1);
    expect(found.found).toBe(false);
    expect(last).toMatchObject({ cause: 'feed pump fails', found: false, path: [] });
    expect(last?.inseparable).toContain(null);
  });

  it('makes no check with a tool that is not permitted, and names one that would tell the rest', () => {
    const all = diagnosed('school-never-long-enough');
    expect(all.rounds[0]).toMatchObject({ inseparable: [], wouldSeparate: null });
    const bare = diagnosed('school-never-long-enough', []);
    const [round] = bare.rounds;
    for (const { check } of round?.path ?? []) expect(toolFor(check)).toBeNull();
    expect(round?.inseparable).toContain('mains volts low under load');
    expect(toolFor(round?.wouldSeparate?.check ?? '')).toBe('multimeter');
    expect(bare.score).toBeGreaterThan(all.score - 1e-9);
  });

  it(
    'finds what is wrong in nearly every shipped job, and orders them much as their writers did',
    () => {
      const all = jobs.map(({ id, level }) => ({ level, ...diagnosed(id) }));
      const missed = all.filter(({ found }) => !found);
      expect(missed.length).toBeLessThanOrEqual(2);
      const agreement = rankCorrelation(
        all.map(({ level }) => level),
        all.map(({ score }) => score),
      );
      // Their levels weigh people, paper and safety too, of which an atlas knows nothing.
      expect(agreement).toBeGreaterThan(0.5);
    },
    LONG_MS,
  );
});

describe('rank correlation', () => {
  it('is that of the ranks, whatever the distances', () => {
    expect(rankCorrelation([1, 2, 3, 4], [1, 10, 100, 1000])).toBeCloseTo(1, 12);
    expect(rankCorrelation([1, 2, 3], [9, 5, 1])).toBeCloseTo(-1, 12);
    expect(rankCorrelation([1, 1, 1], [1, 2, 3])).toBe(0);
    // By hand: d² = 1 + 1 + 0 + 0, 1 − 6·2/(4·15).
    expect(rankCorrelation([1, 2, 3, 4], [2, 1, 3, 4])).toBeCloseTo(0.8, 12);
  });
});
