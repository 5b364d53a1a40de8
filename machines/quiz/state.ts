import type { QuizEntry, QuizKind, QuizResponse, Sureness } from './entries.ts';

export const QUIZ_PHASES = [
  'not begun',
  /** A question stands, without its answer. */
  'asked',
  /** It is answered; its reasons are shown. */
  'answered',
  /** An exam: every question may be gone to and answered anew, and nothing is told. */
  'sitting',
  'over',
] as const;
export type QuizPhase = (typeof QUIZ_PHASES)[number];

export interface QuizAnswer {
  readonly response: QuizResponse;
  readonly confidence: Sureness;
  readonly atISO: string;
}

/** What the entries so far have made of it. Plain data: as JSON and back it is the same. */
export interface QuizPaper {
  /** These four stand from the begin on. */
  readonly mode: QuizKind | null;
  readonly seed: number;
  readonly items: readonly string[];
  readonly startedISO: string | null;
  /** The question that is shown, 0 the first. */
  readonly place: number;
  /** By place; null where there is none. */
  readonly answers: readonly (QuizAnswer | null)[];
  readonly endedISO: string | null;
}
export interface QuizState extends QuizPaper {
  readonly phase: QuizPhase;
  /** Those that were taken. */
  readonly entries: readonly QuizEntry[];
}

export const QUIZ_REFUSALS = [
  'not begun',
  'begun already',
  'no questions',
  'question twice',
  'no such question',
  'not this question',
  'nothing answered',
  'say how sure you are',
  'already answered',
  'answer first',
  'no going back',
  'last question',
  'no need to pass',
  'over',
] as const;
/** Why an entry was not taken: a code, its sentence standing in the catalogue as `quiz.refusal.…`. */
export type QuizRefusal = (typeof QUIZ_REFUSALS)[number];

export type QuizTaken =
  | { readonly ok: true; readonly state: QuizState }
  | { readonly ok: false; readonly refusal: QuizRefusal };
