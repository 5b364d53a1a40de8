import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Skill } from '../../../machines/job/index.ts';
import { SKILLS } from '../../../machines/job/index.ts';
import {
  afterResult,
  difficultyOfLevel,
  expectedScore,
  NEWCOMER,
  type Ratings,
  type Result,
  SKILL_ORDER,
  spreadOf,
} from '../../../src/diagnosis/mastery/index.ts';
import { createRandom, nextUniform } from '../../../src/numeric/index.ts';

const SEED = 20261129;

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const difficulty = fc.double({ min: -4, max: 4, noNaN: true });
const skillsOf = (all: readonly Skill[]) =>
  fc.subarray([...all], { minLength: 1, maxLength: Math.min(4, all.length) });
const anyResult: fc.Arbitrary<Result> = fc.record({
  skills: skillsOf(SKILLS),
  difficulty,
  outcome: unit,
  weight: unit,
});
const anyRatings: fc.Arbitrary<Ratings> = fc
  .array(anyResult, { maxLength: 30 })
  .map((results) => results.reduce(afterResult, {} as Ratings));

describe('a rating', () => {
  it('is never lowered by doing better', () => {
    fc.assert(
      fc.property(anyRatings, anyResult, unit, (ratings, result, other) => {
        const [worse, better] = [result.outcome, other].sort((a, b) => a - b) as [number, number];
        const low = afterResult(ratings, { ...result, outcome: worse });
        const high = afterResult(ratings, { ...result, outcome: better });
        for (const skill of result.skills) {
          expect(valueIn(high, skill)).toBeGreaterThanOrEqual(valueIn(low, skill));
        }
      }),
      { seed: SEED },
    );
  });

  it('goes up by a whole success and down by a whole failure, unless it stands at its bound', () => {
    fc.assert(
      fc.property(anyRatings, anyResult, (ratings, result) => {
        fc.pre(result.weight > 0);
        for (const skill of result.skills) {
          const before = valueIn(ratings, skill);
          const won = valueIn(afterResult(ratings, { ...result, outcome: 1 }), skill);
          const lost = valueIn(afterResult(ratings, { ...result, outcome: 0 }), skill);
          expect(won).toBeGreaterThanOrEqual(before);
          expect(lost).toBeLessThanOrEqual(before);
        }
      }),
      { seed: SEED },
    );
  });

  it('stays within its bounds and is known the better, the more results there are', () => {
    fc.assert(
      fc.property(anyRatings, anyResult, (ratings, result) => {
        const after = afterResult(ratings, result);
        for (const skill of result.skills) {
          const rating = after[skill] ?? NEWCOMER;
          expect(Math.abs(rating.value)).toBeLessThanOrEqual(4);
          expect(spreadOf(rating)).toBeLessThanOrEqual(spreadOf(ratings[skill] ?? NEWCOMER));
        }
      }),
      { seed: SEED },
    );
  });

  it('does not depend on the order of two results of different skills', () => {
    fc.assert(
      fc.property(anyRatings, anyResult, anyResult, unit, (ratings, one, two, cut) => {
        const at = 1 + Math.floor(cut * (SKILLS.length - 2));
        const first = { ...one, skills: among(one.skills, SKILLS.slice(0, at)) };
        const second = { ...two, skills: among(two.skills, SKILLS.slice(at)) };
        expect(afterResult(afterResult(ratings, first), second)).toEqual(
          afterResult(afterResult(ratings, second), first),
        );
      }),
      { seed: SEED },
    );
  });

  it('of a skill that was not asked for stays as it is', () => {
    fc.assert(
      fc.property(anyRatings, anyResult, (ratings, result) => {
        const after = afterResult(ratings, result);
        for (const skill of SKILLS.filter((each) => !result.skills.includes(each))) {
          expect(after[skill]).toEqual(ratings[skill]);
        }
      }),
      { seed: SEED },
    );
  });

  it('loses more by an easy job failed than by a hard one failed', () => {
    for (const skills of [['fuel'], ['fuel', 'wiring', 'conduct']] as const) {
      const lost = ([1, 2, 3, 4, 5] as const).map((level) => {
        const result = { skills, difficulty: difficultyOfLevel(level), outcome: 0, weight: 1 };
        return NEWCOMER.value - valueIn(afterResult({}, result), 'fuel');
      });
      expect(lost).toEqual([...lost].sort((a, b) => b - a));
      expect(new Set(lost).size).toBe(5);
    }
  });

  it.each([-1.5, -0.5, 0.5, 1.5])(
    'comes near to an ability of %s within thirty jobs of one or two skills, whoever has it',
    (ability) => {
      const missed: number[] = [];
      for (let learner = 0; learner < 40; learner += 1) {
        const chance = createRandom(1000 + learner);
        let ratings: Ratings = {};
        for (let job = 0; job < 30; job += 1) {
          const skills: readonly Skill[] = job % 2 === 0 ? ['fuel'] : ['fuel', 'air'];
          // Levels as they are suggested: about where the learner seems to stand.
          const level = Math.round(valueIn(ratings, 'fuel') + 2 + 0.5 * (job % 3));
          const task = difficultyOfLevel(Math.min(5, Math.max(1, level)));
          const outcome = nextUniform(chance) < expectedScore(ability, task) ? 1 : 0;
          ratings = afterResult(ratings, { skills, difficulty: task, outcome, weight: 1 });
        }
        missed.push(valueIn(ratings, 'fuel') - ability);
      }
      const mean = missed.reduce((sum, each) => sum + each, 0) / missed.length;
      const typical = Math.sqrt(missed.reduce((sum, each) => sum + each * each, 0) / missed.length);
      // What the page shows as the spread after so many is 0.45; the start pulls a little towards it.
      expect(typical).toBeLessThan(0.65);
      expect(Math.abs(mean)).toBeLessThan(0.35);
    },
  );
});

it('every skill of the desk has its place among the skills', () => {
  expect(SKILL_ORDER).toEqual(SKILLS);
});

function valueIn(ratings: Ratings, skill: Skill): number {
  return (ratings[skill] ?? NEWCOMER).value;
}

function among(skills: readonly Skill[], allowed: readonly Skill[]): readonly Skill[] {
  const left = skills.filter((skill) => allowed.includes(skill));
  return left.length > 0 ? left : allowed.slice(0, 1);
}
