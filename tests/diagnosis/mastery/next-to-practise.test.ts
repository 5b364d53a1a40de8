import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Skill } from '../../../machines/job/index.ts';
import {
  difficultyOfLevel,
  type Exercise,
  expectedScore,
  meanValue,
  nextOfSkill,
  nextToPractise,
  type PractiseResult,
  type Ratings,
  ratingsOf,
  SKILL_ORDER,
  usualDifficulty,
} from '../../../src/diagnosis/mastery/index.ts';
import { createRandom, nextUniform } from '../../../src/numeric/index.ts';
import { library } from '../../support/library.ts';

const SEED = 20261129;

const EXERCISES = exercisesShipped();

describe('what to practise next', () => {
  it('begins with a lesson, and elsewhere with a guided job of the first level', () => {
    const [first, ...others] = nextToPractise({}, EXERCISES, []);
    expect(first).toMatchObject({ kind: 'lesson', skill: 'sequence', why: 'not tried' });
    expect(others).toHaveLength(2);
    for (const { kind, id, guidance, why } of others) {
      expect({ kind, guidance, why }).toEqual({
        kind: 'job',
        guidance: 'guided',
        why: 'not tried',
      });
      expect(difficultyOf(kind, id)).toBe(difficultyOfLevel(1));
    }
  });

  it('never names an exercise or a skill twice, and is the same whenever it is asked', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 25 }), fc.integer(), (jobs, seed) => {
        const done = practised(jobs, seed, 0);
        const next = nextToPractise(ratingsOf(done), EXERCISES, done);
        expect(new Set(next.map(({ kind, id }) => `${kind} ${id}`)).size).toBe(next.length);
        expect(new Set(next.map(({ skill }) => skill)).size).toBe(next.length);
        expect(nextToPractise(ratingsOf(done), EXERCISES, [...done].reverse())).toEqual(next);
      }),
      { seed: SEED, numRuns: 30 },
    );
  });

  it('never comes back to one of the last four exercises while there are others', () => {
    for (let seed = 0; seed < 20; seed += 1) {
      const done = practised(12, seed, 0.5);
      const lately = done.slice(-4).map(({ kind, id }) => `${kind} ${id}`);
      for (const { kind, id } of nextToPractise(ratingsOf(done), EXERCISES, done)) {
        expect(lately).not.toContain(`${kind} ${id}`);
      }
    }
  });

  it('goes to the weakest of the skills that are known equally well', () => {
    const done = SKILL_ORDER.flatMap((skill) => series(skill, 8, skill === 'wiring' ? 0.2 : 0.9));
    const [first] = nextToPractise(ratingsOf(done), EXERCISES, done);
    expect(first).toMatchObject({ skill: 'wiring', why: 'weakest' });
  });

  it('goes to a skill without results before one that is merely weak', () => {
    const done = SKILL_ORDER.filter((skill) => skill !== 'limits').flatMap((skill) =>
      series(skill, 8, 0.5),
    );
    const [first] = nextToPractise(ratingsOf(done), EXERCISES, done);
    expect(first).toMatchObject({ skill: 'limits', why: 'not tried', guidance: 'guided' });
  });

  it('lets help fade: guided, then alone, then without feedback', () => {
    const steps = [
      { done: [] as PractiseResult[], guidance: 'guided' },
      { done: series('fuel', 1, 0.9, 'guided'), guidance: 'practice' },
      { done: series('fuel', 1, 0.2, 'guided'), guidance: 'guided' },
      { done: series('fuel', 6, 0.9, 'practice'), guidance: 'assessment' },
    ];
    for (const { done, guidance } of steps) {
      const next = nextOfSkill('fuel', ratingsOf(done), JOBS, done);
      expect(next?.guidance).toBe(guidance);
    }
  });

  it('keeps away from what would mostly fail and from what is certain, once a skill has been tried', () => {
    for (const ability of [-1, 0, 1]) {
      for (let seed = 0; seed < 10; seed += 1) {
        const done = practised(14, seed, ability);
        const ratings = ratingsOf(done);
        for (const { skill, expected, why } of nextToPractise(ratings, EXERCISES, done)) {
          if (why === 'not tried') continue;
          // A little below one half where all the easier ones were done lately.
          expect(expected).toBeGreaterThan(Math.min(0.4, easiest(skill, ratings) - 1e-9));
          expect(expected).toBeLessThan(0.95);
        }
      }
    }
  });

  it('takes a learner who follows it to every skill within a dozen exercises', () => {
    const done = practised(12, 7, 0.5);
    const tried = new Set(done.flatMap(({ skills }) => skills));
    expect([...tried].sort()).toEqual([...SKILL_ORDER].sort());
  });

  it('is nothing where there is nothing to practise', () => {
    expect(nextToPractise({}, [], [])).toEqual([]);
    expect(nextOfSkill('fuel', {}, [], [])).toBeNull();
  });
});

const JOBS = EXERCISES.filter(({ kind }) => kind === 'job');

/** A learner of an ability who does what is suggested first, seeded. */
function practised(count: number, seed: number, ability: number): PractiseResult[] {
  const chance = createRandom(seed);
  const done: PractiseResult[] = [];
  for (let day = 0; day < count; day += 1) {
    const [next] = nextToPractise(ratingsOf(done), EXERCISES, done, 1);
    const exercise = EXERCISES.find(({ kind, id }) => kind === next?.kind && id === next.id);
    if (next === undefined || exercise === undefined) break;
    const ease = next.guidance === 'guided' ? 0.5 : 0;
    const well = nextUniform(chance) < expectedScore(ability, exercise.difficulty - ease);
    const atISO = new Date(Date.UTC(2026, 0, 1 + day)).toISOString();
    done.push({
      ...exercise,
      startedISO: atISO,
      atISO,
      guidance: next.guidance,
      hints: 0,
      outcome: well ? 0.9 : 0.2,
      conduct: exercise.kind === 'job' ? 'clean' : null,
    });
  }
  return done;
}

/** What the easiest job of a skill would let expect with all the guidance that there is. */
function easiest(skill: Skill, ratings: Ratings): number {
  const chances = JOBS.filter(({ skills }) => skills.includes(skill)).map(
    ({ skills, difficulty }) => expectedScore(meanValue(ratings, skills), difficulty - 0.5),
  );
  return Math.max(...chances);
}

/** Jobs of the second level that train one skill alone, on days of their own. */
function series(
  skill: Skill,
  count: number,
  outcome: number,
  guidance: PractiseResult['guidance'] = 'practice',
): PractiseResult[] {
  return Array.from({ length: count }, (_, day) => {
    const atISO = new Date(Date.UTC(2026, SKILL_ORDER.indexOf(skill), 1 + day)).toISOString();
    return {
      kind: 'job',
      id: `${skill}-${day}`,
      startedISO: atISO,
      atISO,
      skills: [skill],
      difficulty: difficultyOfLevel(2),
      guidance,
      hints: 0,
      outcome,
      conduct: null,
    };
  });
}

function difficultyOf(kind: string, id: string): number | undefined {
  return EXERCISES.find((each) => each.kind === kind && each.id === id)?.difficulty;
}

function exercisesShipped(): Exercise[] {
  const { lessons, jobs, drills } = library;
  return [
    ...lessons.map(({ id }) => ({
      kind: 'lesson' as const,
      id,
      skills: ['sequence'] as const,
      difficulty: usualDifficulty('lesson'),
    })),
    ...jobs.map(({ id, skills, level }) => ({
      kind: 'job' as const,
      id,
      skills,
      difficulty: difficultyOfLevel(level),
    })),
    ...drills.map(({ id, skill }) => ({
      kind: 'drill' as const,
      id,
      skills: [skill],
      difficulty: usualDifficulty('drill'),
    })),
  ];
}
