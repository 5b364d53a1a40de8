/**
 * Quiz answers on a shelf. Each writing begins with what is there by then, so that two pages that
 * are open at once lose nothing of each other's. What cannot be read stands aside until it is erased.
 */
import { z } from 'zod';
import type { GivenAnswer } from '../../quiz/index.ts';
import {
  type KeptQuiz,
  mergeRecords,
  NO_RECORD,
  type QuizRecord,
  type RecordIssue,
  type RecordRead,
  readRecord,
  writeRecord,
} from '../../records/answers/index.ts';
import { isFull, type Shelf } from '../work/shelf.ts';

// The page may run no script text, and Zod would try.
z.config({ jitless: true });

export const QUIZ_KEY = 'flamewright.quiz';
const ASIDE_PREFIX = 'flamewright.quiz-aside.';

export type KeepTrouble = 'newer version' | 'no room' | 'storage refused';

export interface AnswersKept {
  readonly record: QuizRecord;
  /** Null when all that is kept can be read; 'newer version' means that nothing may be written. */
  readonly trouble: 'broken' | 'newer version' | null;
  /** Something that could not be read stands aside. */
  readonly aside: boolean;
}

export function keptAnswers(shelf: Shelf): AnswersKept {
  const { record, issues } = read(shelf);
  const [first] = issues;
  const trouble =
    first === undefined ? null : isNewer(issues) ? ('newer version' as const) : 'broken';
  return { record, trouble, aside: asideKeys(shelf).length > 0 };
}

/** 'kept': it is among the answers; 'erased': its quiz was begun before answers were erased. */
export type AnswerKept = 'kept' | 'erased' | KeepTrouble;

/** Takes answers in, and the quiz they belong to once that is over. */
export function addAnswers(
  shelf: Shelf,
  quizStartedISO: string,
  answers: readonly GivenAnswer[],
  quiz: KeptQuiz | null = null,
): AnswerKept {
  const { record, issues } = read(shelf);
  if (isNewer(issues)) return 'newer version';
  if (record.erasedISO !== null && quizStartedISO <= record.erasedISO) return 'erased';
  const more = { answers, quizzes: quiz === null ? [] : [quiz], erasedISO: null };
  const merged = mergeRecords(record, more);
  if (writeRecord(merged) === writeRecord(record)) return 'kept';
  return put(shelf, merged, issues) ?? 'kept';
}

export interface AnswersImported {
  /** How many answers were not there before. */
  readonly taken: number;
  /** What is wrong with the file: then nothing of it was taken. */
  readonly issues: readonly RecordIssue[];
  readonly trouble: KeepTrouble | null;
}

export function importAnswers(shelf: Shelf, text: string): AnswersImported {
  const brought = readRecord(text);
  if (brought.issues.length > 0) return { taken: 0, issues: brought.issues, trouble: null };
  const { record, issues } = read(shelf);
  if (isNewer(issues)) return { taken: 0, issues: [], trouble: 'newer version' };
  const merged = mergeRecords(record, { ...brought.record, erasedISO: null });
  const trouble = put(shelf, merged, issues);
  const taken = merged.answers.length - record.answers.length;
  return { taken: trouble === null ? taken : 0, issues: [], trouble };
}

/** The text of a file with every answer that can be read. */
export function exportAnswers(shelf: Shelf): string {
  return writeRecord({ ...read(shelf).record, erasedISO: null }, 1);
}

/** Throws all of it away, what stands aside too. Quizzes begun before then count no more. */
export function eraseAnswers(shelf: Shelf, nowISO: string): void {
  for (const key of asideKeys(shelf)) shelf.remove(key);
  shelf.remove(QUIZ_KEY);
  tryPut(shelf, QUIZ_KEY, writeRecord({ ...NO_RECORD, erasedISO: nowISO }));
}

function read(shelf: Shelf): RecordRead {
  const text = shelf.get(QUIZ_KEY);
  return text === null ? { record: NO_RECORD, issues: [] } : readRecord(text);
}

function isNewer(issues: readonly RecordIssue[]): boolean {
  return issues.some(({ trouble }) => trouble === 'newer version');
}

/** What could not be read is kept aside before anything is written in its place. */
function put(shelf: Shelf, record: QuizRecord, issues: readonly RecordIssue[]): KeepTrouble | null {
  const before = shelf.get(QUIZ_KEY);
  if (issues.length > 0 && before !== null) {
    const trouble = tryPut(shelf, freeAsideKey(shelf), before);
    if (trouble !== null) return trouble;
  }
  return tryPut(shelf, QUIZ_KEY, writeRecord(record));
}

function asideKeys(shelf: Shelf): string[] {
  return shelf.keys().filter((key) => key.startsWith(ASIDE_PREFIX));
}

function freeAsideKey(shelf: Shelf): string {
  const taken = asideKeys(shelf);
  let n = taken.length + 1;
  while (taken.includes(`${ASIDE_PREFIX}${n}`)) n += 1;
  return `${ASIDE_PREFIX}${n}`;
}

export function tryPut(shelf: Shelf, key: string, text: string): KeepTrouble | null {
  try {
    shelf.set(key, text);
    return null;
  } catch (error) {
    return isFull(error) ? 'no room' : 'storage refused';
  }
}
