import { describe, expect, it } from 'vitest';
import { historyRows } from '../../../src/app/learner/history-rows.ts';
import { JOB_RESULT } from './any-results.ts';

const question = { ...JOB_RESULT, kind: 'quiz', conduct: null } as const;

describe('the list of results', () => {
  it('shows the questions of a quiz as one, where its last answer stands', () => {
    const rows = historyRows([
      { ...question, id: 'b', outcome: 1, skills: ['air'], atISO: '2026-05-06T10:00:00.000Z' },
      JOB_RESULT,
      { ...question, id: 'a', outcome: 0, skills: ['fuel'] },
    ]);
    expect(rows).toEqual([
      {
        kind: 'questions',
        startedISO: question.startedISO,
        atISO: '2026-05-06T10:00:00.000Z',
        skills: ['fuel', 'air'],
        right: 1,
        count: 2,
      },
      JOB_RESULT,
    ]);
  });

  it('keeps two quizzes apart', () => {
    const rows = historyRows([
      { ...question, startedISO: '2026-05-06T09:00:00.000Z' },
      { ...question, startedISO: '2026-05-05T09:00:00.000Z' },
    ]);
    expect(rows).toHaveLength(2);
  });
});
