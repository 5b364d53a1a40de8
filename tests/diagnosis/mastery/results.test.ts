import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SKILLS } from '../../../machines/job/index.ts';
import {
  CONDUCT_WORDS,
  difficultyOfLevel,
  masteryWord,
  type PractiseResult,
  RESULT_KINDS,
  ratingsOf,
} from '../../../src/diagnosis/mastery/index.ts';

const SEED = 20261129;

const instant = fc
  .integer({ min: 0, max: 400 })
  .map((hours) => new Date(Date.UTC(2026, 0, 1) + hours * 3_600_000).toISOString());
const anyResult: fc.Arbitrary<PractiseResult> = fc.record({
  kind: fc.constantFrom(...RESULT_KINDS),
  id: fc.constantFrom('a', 'b', 'c'),
  startedISO: instant,
  atISO: instant,
  skills: fc.subarray([...SKILLS], { minLength: 1, maxLength: 4 }),
  difficulty: fc.constantFrom(-2, -1, 0, 1, 2),
  guidance: fc.constantFrom('guided', 'practice', 'assessment', null),
  hints: fc.integer({ min: 0, max: 6 }),
  outcome: fc.double({ min: 0, max: 1, noNaN: true }),
  conduct: fc.constantFrom(...CONDUCT_WORDS, null),
});
const anyResults = fc.uniqueArray(anyResult, {
  maxLength: 20,
  selector: ({ kind, id, startedISO }) => `${kind} ${id} ${startedISO}`,
});

describe('the ratings of a list of results', () => {
  it('are the same in whatever order the list comes', () => {
    fc.assert(
      fc.property(
        anyResults.chain((results) =>
          fc.tuple(
            fc.constant(results),
            fc.shuffledSubarray(results, { minLength: results.length }),
          ),
        ),
        ([results, shuffled]) => {
          expect(ratingsOf(shuffled)).toEqual(ratingsOf(results));
        },
      ),
      { seed: SEED },
    );
  });

  it('count a result once, however often it came in', () => {
    fc.assert(
      fc.property(anyResults, (results) => {
        expect(ratingsOf([...results, ...results])).toEqual(ratingsOf(results));
      }),
      { seed: SEED },
    );
  });
});

describe('a job', () => {
  const done = (change: Partial<PractiseResult>) => {
    const result = { ...JOB, ...change };
    return ratingsOf([result]);
  };

  it('gains less the more help there was', () => {
    const ways = [
      { guidance: 'assessment', hints: 0 },
      { guidance: 'practice', hints: 0 },
      { guidance: 'guided', hints: 0 },
      { guidance: 'guided', hints: 1 },
      { guidance: 'guided', hints: 4 },
    ] as const;
    const gained = ways.map((way) => done({ ...way, outcome: 1 }).fuel?.value ?? 0);
    expect(gained).toEqual([...gained].sort((a, b) => b - a));
    expect(new Set(gained).size).toBe(ways.length);
  });

  it('done unsafely lowers conduct, whatever its skills, and clean work raises it', () => {
    const unsafe = done({ conduct: 'unsafe' });
    const careless = done({ conduct: 'careless' });
    const clean = done({ conduct: 'clean' });
    expect(unsafe.conduct?.value).toBeLessThan(careless.conduct?.value ?? -9);
    expect(careless.conduct?.value).toBeLessThan(clean.conduct?.value ?? -9);
    expect(unsafe.fuel).toEqual(clean.fuel);
  });

  it('about conduct tells more of it than another', () => {
    const about = done({ skills: ['fuel', 'conduct'], conduct: 'unsafe' });
    const beside = done({ conduct: 'unsafe' });
    expect(about.conduct?.value).toBeLessThan(beside.conduct?.value ?? -9);
  });

  it('done again tells less, for its debrief was read', () => {
    const once = ratingsOf([JOB]);
    const again = { ...JOB, startedISO: LATER, atISO: LATER };
    const twice = ratingsOf([JOB, again]);
    const another = ratingsOf([JOB, { ...again, id: 'another' }]);
    const gain = (value: number | undefined) => (value ?? 0) - (once.fuel?.value ?? 0);
    expect(gain(twice.fuel?.value)).toBeGreaterThan(0);
    expect(gain(twice.fuel?.value)).toBeLessThan(0.3 * gain(another.fuel?.value));
  });
});

describe('the word for a skill', () => {
  const afterJobs = (count: number, level: number, outcome: number) =>
    masteryWord(
      ratingsOf(
        Array.from({ length: count }, (_, day) => {
          const atISO = new Date(Date.UTC(2026, 1, 1 + day)).toISOString();
          const difficulty = difficultyOfLevel(level);
          return { ...JOB, id: `${day}`, startedISO: atISO, atISO, difficulty, outcome };
        }),
      ).fuel,
    );

  it('is not yet tried without a result', () => {
    expect(masteryWord(undefined)).toBe('not yet tried');
  });
  it('makes nobody sure by one job, however hard', () => {
    expect(afterJobs(1, 5, 1)).not.toBe('sure');
  });
  it('goes from beginning to sure as jobs of growing levels go well', () => {
    expect(afterJobs(2, 1, 0.3)).toBe('beginning');
    expect(afterJobs(4, 1, 0.9)).toBe('getting there');
    expect(afterJobs(6, 2, 0.9)).toBe('steady');
    expect(afterJobs(16, 3, 0.9)).toBe('sure');
  });
  it('never gets to sure by easy jobs alone', () => {
    expect(afterJobs(12, 1, 0.95)).not.toBe('sure');
  });
});

const LATER = '2026-03-01T10:00:00.000Z';
const JOB: PractiseResult = {
  kind: 'job',
  id: 'a-job',
  startedISO: '2026-01-01T09:00:00.000Z',
  atISO: '2026-01-01T10:00:00.000Z',
  skills: ['fuel'],
  difficulty: difficultyOfLevel(2),
  guidance: 'practice',
  hints: 0,
  outcome: 0.9,
  conduct: 'clean',
};
