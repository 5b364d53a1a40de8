/** Quiz answers as the device keeps them and as a file carries them; all else is made from them. */
import { z } from 'zod';
import { type GivenAnswer, mergeAnswers } from '../../quiz/index.ts';
import { answerSchema, instant, itemName, mode, skill } from './answer-schema.ts';

export const QUIZ_VERSION = 1;
const FILE_WORD = 'flamewright quiz';

/** Thirty a day for a year; a file that is longer was not made by answering. */
const MOST_ANSWERS = 12_000;
const MOST_QUIZZES = 4000;
const MOST_ITEMS = 200;

/** A quiz that is over: what was asked, answered or not. */
export const quizSchema = z.strictObject({
  startedISO: instant,
  closedISO: instant,
  mode,
  /** Of a quiz by skill. */
  skill: skill.nullable(),
  items: z.array(itemName).min(1).max(MOST_ITEMS),
});
export type KeptQuiz = z.infer<typeof quizSchema>;

const fileSchema = z.object({
  file: z.literal(FILE_WORD),
  v: z.literal(QUIZ_VERSION),
  answers: z.array(z.unknown()).max(MOST_ANSWERS),
  quizzes: z.array(z.unknown()).max(MOST_QUIZZES),
  /** What was begun before is not taken in again by itself: it was erased. Null where nothing was. */
  erasedISO: instant.nullable(),
});

export interface QuizRecord {
  /** In the order of time. */
  readonly answers: readonly GivenAnswer[];
  readonly quizzes: readonly KeptQuiz[];
  readonly erasedISO: string | null;
}
export const NO_RECORD: QuizRecord = { answers: [], quizzes: [], erasedISO: null };

export interface RecordIssue {
  readonly trouble: 'not answers' | 'broken' | 'newer version';
  /** Place in the file, as in `answers.3.confidence`; empty where it is the whole. */
  readonly where: string;
}
export interface RecordRead {
  /** What of it can be read. */
  readonly record: QuizRecord;
  /** One for each thing that cannot; empty when all is well. */
  readonly issues: readonly RecordIssue[];
}

/** @param indent spaces by which a person finds his way in it; none for the device */
export function writeRecord({ answers, quizzes, erasedISO }: QuizRecord, indent = 0): string {
  return JSON.stringify(
    { file: FILE_WORD, v: QUIZ_VERSION, erasedISO, quizzes, answers },
    null,
    indent,
  );
}

/** Reads what `writeRecord` wrote, whatever became of it since. */
export function readRecord(text: string): RecordRead {
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return nothing('not answers');
  }
  const { file, v } = (data ?? {}) as { readonly file?: unknown; readonly v?: unknown };
  if (file !== FILE_WORD) return nothing('not answers');
  if (typeof v === 'number' && v > QUIZ_VERSION) return nothing('newer version', 'v');
  const whole = fileSchema.safeParse(data);
  if (!whole.success) return nothing('broken', placeOf(whole.error));
  const { erasedISO } = whole.data;
  const issues: RecordIssue[] = [];
  const answers = each(answerSchema, whole.data.answers, 'answers', issues);
  const quizzes = each(quizSchema, whole.data.quizzes, 'quizzes', issues);
  return { record: mergeRecords({ answers, quizzes, erasedISO }), issues };
}

/** All of them, each answer and quiz once. The order they come in does not matter. */
export function mergeRecords(...records: readonly QuizRecord[]): QuizRecord {
  const [erasedISO = null] = records
    .flatMap((record) => record.erasedISO ?? [])
    .sort()
    .reverse();
  return {
    answers: mergeAnswers(records.flatMap(({ answers }) => answers)),
    quizzes: mergeQuizzes(records.flatMap(({ quizzes }) => quizzes)),
    erasedISO,
  };
}

/** Of two with one beginning the one that was over first stands. */
function mergeQuizzes(quizzes: readonly KeptQuiz[]): KeptQuiz[] {
  const orderOf = (quiz: KeptQuiz) =>
    `${quiz.startedISO} ${quiz.closedISO} ${JSON.stringify(quiz)}`;
  const ordered = quizzes
    .map((quiz) => ({ quiz, order: orderOf(quiz) }))
    .sort((a, b) => (a.order < b.order ? -1 : 1))
    .map(({ quiz }) => quiz);
  return ordered.filter(({ startedISO }, i) => ordered[i - 1]?.startedISO !== startedISO);
}

function each<T>(
  schema: z.ZodType<T>,
  list: readonly unknown[],
  name: string,
  issues: RecordIssue[],
): T[] {
  return list.flatMap((one, place) => {
    const read = schema.safeParse(one);
    if (read.success) return [read.data];
    issues.push({ trouble: 'broken', where: placeOf(read.error, [name, place]) });
    return [];
  });
}

function nothing(trouble: RecordIssue['trouble'], where = ''): RecordRead {
  return { record: NO_RECORD, issues: [{ trouble, where }] };
}

function placeOf(error: z.ZodError, before: readonly (string | number)[] = []): string {
  const [first] = error.issues;
  // Of what is too much the schema tells the place above it.
  const extra = first?.code === 'unrecognized_keys' ? first.keys.slice(0, 1) : [];
  return [...before, ...(first?.path ?? []), ...extra].map(String).join('.');
}
