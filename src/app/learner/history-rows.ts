/** What the list of results shows: the questions of a quiz together, everything else by itself. Pure. */
import type { Skill } from '../../../machines/job/index.ts';
import { SKILL_ORDER } from '../../diagnosis/mastery/index.ts';
import type { KeptResult } from './result-record.ts';

export interface QuizRow {
  readonly kind: 'questions';
  readonly startedISO: string;
  /** Of the last answer. */
  readonly atISO: string;
  readonly skills: readonly Skill[];
  readonly right: number;
  readonly count: number;
}

/** @param results the latest first */
export function historyRows(results: readonly KeptResult[]): readonly (KeptResult | QuizRow)[] {
  const rows: (KeptResult | QuizRow)[] = [];
  const seen = new Set<string>();
  for (const result of results) {
    if (result.kind !== 'quiz') {
      rows.push(result);
      continue;
    }
    if (seen.has(result.startedISO)) continue;
    seen.add(result.startedISO);
    rows.push(
      rowOf(
        result,
        results.filter(
          ({ kind, startedISO }) => kind === 'quiz' && startedISO === result.startedISO,
        ),
      ),
    );
  }
  return rows;
}

function rowOf({ startedISO, atISO }: KeptResult, answers: readonly KeptResult[]): QuizRow {
  return {
    kind: 'questions',
    startedISO,
    atISO,
    skills: SKILL_ORDER.filter((skill) => answers.some(({ skills }) => skills.includes(skill))),
    right: answers.filter(({ outcome }) => outcome === 1).length,
    count: answers.length,
  };
}
