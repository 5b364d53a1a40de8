import { describe, expect, it } from 'vitest';
import type { ConductFinding } from '../../src/bench/index.ts';
import {
  exerciseResultSchema,
  resultOfDrill,
  resultOfJob,
  resultOfLesson,
} from '../../src/judging/results/index.ts';

const job = { id: 'a-job', level: 4, skills: ['limits', 'wiring'] as ('limits' | 'wiring')[] };
const desk = { guidance: 'guided' as const, hints: [{ t: 1, rung: 0 as const }] };
const claim = { part: 'valve', right: true, supported: true, another: false, fault: 'x' };
const sound = { claims: [claim], missed: [], conduct: [] };
const finding = (severity: ConductFinding['severity']): ConductFinding => ({
  rule: 'SC-1',
  t: 5,
  what: { code: 'x' },
  state: { code: 'x' },
  severity,
});
const byReadings = {
  found: 'by readings' as const,
  path: { score: 0.8, bestMinutes: 10, regretMinutes: 2.5, redundant: 0, premature: 0 },
};

describe('the result of a job', () => {
  it('has its parts, its help, and fits what is kept', () => {
    const result = resultOfJob(job, desk, sound, byReadings);
    expect(exerciseResultSchema.parse(result)).toEqual(result);
    expect(result).toMatchObject({
      difficulty: 1,
      guidance: 'guided',
      hints: 1,
      conduct: 'clean',
      parts: { found: 'by readings', pathScore: 0.8 },
    });
    expect(result.outcome).toBeCloseTo(0.9, 12);
  });

  it('is unsafe by one unsafe act, whatever else was done, and next to nothing then', () => {
    const conduct = [finding('careless'), finding('unsafe')];
    const result = resultOfJob(job, desk, { ...sound, conduct }, byReadings);
    expect(result.conduct).toBe('unsafe');
    expect(result.outcome).toBeLessThanOrEqual(0.1);
  });

  it('without an atlas goes by what was claimed: readings, luck, half of it, nothing', () => {
    const outcomeOf = (verdict: Parameters<typeof resultOfJob>[2]) =>
      resultOfJob(job, desk, verdict, null).outcome;
    const outcomes = [
      outcomeOf(sound),
      outcomeOf({ ...sound, missed: ['fuse'] }),
      outcomeOf({ ...sound, claims: [{ ...claim, supported: false }] }),
      outcomeOf({ ...sound, claims: [{ ...claim, right: false }], missed: ['valve'] }),
      outcomeOf({ ...sound, conduct: [finding('unsafe')] }),
    ];
    expect(outcomes).toEqual([...outcomes].sort((a, b) => b - a));
    expect(new Set(outcomes).size).toBe(outcomes.length);
    expect(resultOfJob(job, desk, sound, null).parts.found).toBeNull();
  });
});

describe('the result of a drill or a lesson', () => {
  it('is right or wrong, easier than most jobs, and knows no conduct', () => {
    const drill = { id: 'a-drill', skill: 'air' as const };
    expect(resultOfDrill(drill, true)).toMatchObject({
      outcome: 1,
      skills: ['air'],
      conduct: null,
    });
    expect(resultOfDrill(drill, false).outcome).toBe(0);
  });

  it('is the share of the lesson’s questions that were answered rightly at first', () => {
    const ask = { question: '?', options: ['a', 'b'], right: 1, why: ['', ''] };
    const steps = [{ step: 'one', ask }, { step: 'two' }, { step: 'three', ask }];
    const answers = [1, 0, 0].map((option, t) => ({ t, step: '', option }));
    const result = resultOfLesson({ id: 'a-lesson', steps } as never, answers);
    expect(result?.outcome).toBe(0.5);
    expect(exerciseResultSchema.parse(result)).toEqual(result);
    expect(resultOfLesson({ id: 'a-lesson', steps: [{ step: 'two' }] } as never, [])).toBe(null);
  });
});
