import { describe, expect, it } from 'vitest';
import '../../house/all-messages.ts';
import { importWords } from '../../../src/app/learner/issue-words.ts';
import { learnerMap } from '../../../src/app/learner/learner-map.ts';
import { foundWords, helpWords, pathWords } from '../../../src/app/learner/result-words.ts';
import { reachWords } from '../../../src/app/learner/skill-bar.tsx';
import type { Exercise } from '../../../src/diagnosis/mastery/index.ts';
import { JOB_RESULT } from './any-results.ts';

const EXERCISES: readonly Exercise[] = [
  { kind: 'job', id: 'air-job', skills: ['air'], difficulty: -2 },
  { kind: 'drill', id: 'fuel-drill', skills: ['fuel'], difficulty: -1 },
];

describe('the learner map', () => {
  it('has every skill, also those of which nothing is known', () => {
    const { skills, history, next } = learnerMap([], EXERCISES);
    expect(skills).toHaveLength(9);
    expect(new Set(skills.map(({ word }) => word))).toEqual(new Set(['not yet tried']));
    expect(history).toEqual([]);
    expect(next.map(({ id }) => id)).toContain('air-job');
  });

  it('counts a result for each of its skills and for conduct, and knows the last time', () => {
    const later = { ...JOB_RESULT, id: 'later', atISO: '2026-06-01T10:00:00.000Z' };
    const { skills, history } = learnerMap([JOB_RESULT, later], EXERCISES);
    const of = (name: string) => skills.find(({ skill }) => skill === name);
    expect(of('fuel')).toMatchObject({ results: 2, lastISO: later.atISO });
    expect(of('conduct')).toMatchObject({ results: 2 });
    expect(of('air')).toMatchObject({ results: 0, lastISO: null, rating: null });
    expect(history.map(({ id }) => id)).toEqual(['later', JOB_RESULT.id]);
  });
});

describe('words of the map', () => {
  it('give where one stands as a stretch of levels, open at both ends', () => {
    expect(reachWords({ value: -1, count: 0 })).toBe('1 to 3');
    expect(reachWords({ value: -3.8, count: 30 })).toBe('below 1');
    expect(reachWords({ value: 1.9, count: 2 })).toBe('4 to above 5');
  });

  it('tell the parts of a result', () => {
    expect(foundWords(JOB_RESULT)).toBe('found by readings');
    expect(pathWords(JOB_RESULT)).toContain('80 %');
    expect(helpWords({ ...JOB_RESULT, guidance: 'guided', hints: 2 })).toBe('guided, 2 hints');
    expect(foundWords({ ...JOB_RESULT, kind: 'drill', outcome: 0 })).toBe('not answered right');
  });

  it('name the place in a broken file and what should stand there', () => {
    const issues = [
      { trouble: 'broken', where: 'results.3.outcome' },
      { trouble: 'broken', where: 'results.4.skills.0' },
    ] as const;
    const said = importWords({ taken: 0, issues, trouble: null });
    expect(said).toContain('results.3.outcome');
    expect(said).toContain('a number from 0 to 1');
    expect(said).toContain('1 more');
    const place = [{ trouble: 'broken', where: 'results.4.skills.0' }] as const;
    expect(importWords({ taken: 0, issues: place, trouble: null })).toContain('list of skills');
    const whole = [{ trouble: 'broken', where: 'results' }] as const;
    expect(importWords({ taken: 0, issues: whole, trouble: null })).toContain('5000');
    expect(importWords({ taken: 1, issues: [], trouble: null })).toContain('1 result');
  });
});
