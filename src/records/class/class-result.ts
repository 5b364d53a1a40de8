/** What came of one attempt of one seat, as the server keeps it. The server made it itself, from what was handed in. */
import { z } from 'zod';
import type { FoundWay } from '../../diagnosis/index.ts';
import type { GivenAnswer } from '../../quiz/index.ts';
import { answerSchema } from '../answers/index.ts';

export const RESULT_KINDS_OF_CLASS = ['start', 'job', 'drill', 'lesson', 'quiz'] as const;
/** Written out: reading results needs nothing of the diagnosis. */
export const FOUND_BY = [
  'by readings',
  'by trying parts',
  'not found',
] as const satisfies readonly FoundWay[];

/** What was handed in is not what can have been done, or cannot be read: nothing is made of it. */
export const FORGERIES = [
  'no such exercise',
  'not understood',
  'too long',
  'other setup',
  'out of order',
  'between steps',
  'before arriving',
  'after the end',
  'own acts changed',
  'not ordered',
  'desk refuses',
  'does not run',
  'other questions',
  'quiz refuses',
] as const;
/** What the learner's page claimed of it is not so; what the server found stands. */
export const FALSE_CLAIMS = ['outcome differs', 'hash differs'] as const;
/** Worth knowing, and no fault of anybody. */
export const NOTES = ['not finished', 'instructor acted', 'questions gone', 'not judged'] as const;
export const RESULT_REMARKS = [...FORGERIES, ...FALSE_CLAIMS, ...NOTES] as const;
export type ResultRemarkCode = (typeof RESULT_REMARKS)[number];

const share = z.number().min(0).max(1);
const count = z.number().int().min(0);
const word = z.string().max(200);
const text = z.string().max(4000);
const instant = z.iso.datetime();

/** A sentence by its code, as the bench says what was done and what made it wrong. */
export interface SaidOfConduct {
  readonly code: string;
  readonly params?: Readonly<Record<string, unknown>> | undefined;
}
const saidSchema = z.looseObject({
  code: word,
  params: z.record(word, z.unknown()).optional(),
}) as z.ZodType<SaidOfConduct>;

const remarkSchema = z.strictObject({
  code: z.enum(RESULT_REMARKS),
  /** Place in what was handed in, as in `log.12`; empty where it is the whole. */
  where: word,
  /** What was found there; or how many, for notes that count. */
  detail: text,
  /** What the page claimed, and what the server found; null where it is not about a claim. */
  claimed: z.union([z.number(), word]).nullable(),
  found: z.union([z.number(), word]).nullable(),
});
export type ResultRemark = z.infer<typeof remarkSchema>;

const conductSchema = z.strictObject({
  rule: word,
  severity: z.enum(['unsafe', 'careless']),
  /** Simulated time, s. */
  t: z.number().min(0),
  what: saidSchema,
  state: saidSchema,
});
export type ConductOfClass = z.infer<typeof conductSchema>;

/** What was made of the work itself. */
export const judgedPartsSchema = z.strictObject({
  /** 0 to 1; null where nothing could be made of it, or nothing is scored. */
  outcome: share.nullable(),
  /** Whether it was taken to its end. */
  finished: z.boolean(),
  /** What the outcome was made of; null where it is not known. Minutes by tariff. */
  parts: z.strictObject({
    found: z.enum(FOUND_BY).nullable(),
    pathScore: share.nullable(),
    minutes: z.number().min(0).nullable(),
    redundant: count.nullable(),
    premature: count.nullable(),
  }),
  conduct: z.array(conductSchema),
  claims: z.array(z.strictObject({ part: word, right: z.boolean(), supported: z.boolean() })),
  /** Parts of causes that no claim named. */
  missed: z.array(word),
  quiz: z
    .strictObject({
      right: count,
      /** Questions that could be asked. */
      asked: count,
      answers: z.array(answerSchema as z.ZodType<GivenAnswer>),
    })
    .nullable(),
  remarks: z.array(remarkSchema),
  /** What was handed in or claimed is not believed. */
  refused: z.boolean(),
});
export type JudgedParts = z.infer<typeof judgedPartsSchema>;

export const classResultSchema = judgedPartsSchema.extend({
  seat: z.number().int().min(1),
  nickname: word,
  what: z.strictObject({
    kind: z.enum(RESULT_KINDS_OF_CLASS),
    id: word,
    title: text,
    /** Empty for a quiz over several plants. */
    plant: word,
  }),
  /** Which try of the seat, 1 the first. */
  attempt: z.number().int().min(1),
  startedISO: instant,
  /** Null where it was never handed in and was judged as it stood. */
  handedInISO: instant.nullable(),
});
export type ClassResult = z.infer<typeof classResultSchema>;

/** Before anything is made of it. */
export const NOTHING_JUDGED: JudgedParts = {
  outcome: null,
  finished: false,
  parts: { found: null, pathScore: null, minutes: null, redundant: null, premature: null },
  conduct: [],
  claims: [],
  missed: [],
  quiz: null,
  remarks: [],
  refused: false,
};

/** Whether a remark says that something was not believed. */
export function isRefusal(code: ResultRemarkCode): boolean {
  const refusals: readonly string[] = [...FORGERIES, ...FALSE_CLAIMS];
  return refusals.includes(code);
}
