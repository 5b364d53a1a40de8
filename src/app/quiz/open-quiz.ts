/** A quiz under way as the device keeps it: what was said in it, and what is chosen but not yet given. */
import { z } from 'zod';
import type { Skill } from '../../../machines/job/index.ts';
import type { QuizEntry, QuizState } from '../../../machines/quiz/index.ts';
import {
  MOST_QUIZ_ENTRIES,
  MOST_QUIZ_PLACES,
  quizEntrySchema,
} from '../../judging/quiz-log/index.ts';
import type { Confidence, Response } from '../../quiz/index.ts';
import type { KeptQuiz } from '../../records/answers/index.ts';
import { confidence, responseSchema, skill } from '../../records/answers/index.ts';
import type { Shelf } from '../work/shelf.ts';
import { type KeepTrouble, tryPut } from './keep-answers.ts';
import { quizName } from './quiz-name.ts';

export const OPEN_PREFIX = 'flamewright.quiz-open.';
const VERSION = 1;

const place = z.number().int().min(0).max(MOST_QUIZ_PLACES);

/** What is chosen at a question and not yet given as its answer. */
export interface Draft {
  readonly place: number;
  readonly response: Response | null;
  readonly confidence: Confidence | null;
}
const draftSchema = z.strictObject({
  place,
  response: responseSchema.nullable(),
  confidence: confidence.nullable(),
}) satisfies z.ZodType<Draft>;

export interface OpenQuiz {
  /** Of a quiz by skill. */
  readonly skill: Skill | null;
  readonly entries: readonly QuizEntry[];
  /** One to a question at most. */
  readonly drafts: readonly Draft[];
}

const openSchema = z.object({
  v: z.literal(VERSION),
  skill: skill.nullable(),
  entries: z.array(quizEntrySchema).min(1).max(MOST_QUIZ_ENTRIES),
  drafts: z.array(draftSchema).max(MOST_QUIZ_PLACES),
});

/** Null where nothing of this name is kept, or nothing that can be read. */
export function readOpen(shelf: Shelf, name: string): OpenQuiz | null {
  const text = shelf.get(OPEN_PREFIX + name);
  if (text === null) return null;
  try {
    const read = openSchema.safeParse(JSON.parse(text));
    if (!read.success) return null;
    const { v: _, ...open } = read.data;
    const [first] = open.entries;
    return first?.type === 'begin' && quizName(first.atISO) === name ? open : null;
  } catch {
    return null;
  }
}

/** Checked like what is kept; null where it is no quiz that was begun. */
export function readOpenQuiz(data: unknown): OpenQuiz | null {
  const read = openSchema.omit({ v: true }).safeParse(data);
  return read.success && read.data.entries[0]?.type === 'begin' ? read.data : null;
}

/** @returns why it could not be kept; null when it is */
export function writeOpen(shelf: Shelf, open: OpenQuiz): KeepTrouble | null {
  const [first] = open.entries;
  if (first === undefined) throw new Error('a quiz that was never begun');
  return tryPut(
    shelf,
    OPEN_PREFIX + quizName(first.atISO),
    JSON.stringify({ v: VERSION, ...open }),
  );
}

export function dropOpen(shelf: Shelf, name: string): void {
  shelf.remove(OPEN_PREFIX + name);
}

/** Names of the quizzes under way that can be gone on with, the latest first. */
export function listOpen(shelf: Shelf): string[] {
  return shelf
    .keys()
    .filter((key) => key.startsWith(OPEN_PREFIX))
    .map((key) => key.slice(OPEN_PREFIX.length))
    .filter((name) => readOpen(shelf, name) !== null)
    .sort()
    .reverse();
}

/** The quiz that is over, as it is kept with its answers. */
export function closedQuiz(
  { mode: kind, items, startedISO, endedISO }: QuizState,
  of: Skill | null,
): KeptQuiz | null {
  if (kind === null || startedISO === null || endedISO === null) return null;
  return { startedISO, closedISO: endedISO, mode: kind, skill: of, items: [...items] };
}
