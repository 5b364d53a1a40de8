import type {
  ClaimEntry,
  DeskEntry,
  Guidance,
  HandoverEntry,
  HintRung,
  PinEntry,
} from './entries.ts';

export const DESK_KINDS = ['job', 'drill', 'lesson'] as const;
export type DeskKind = (typeof DESK_KINDS)[number];

export const JOB_PHASES = [
  'card',
  'at the plant',
  'working',
  'claim',
  'proof',
  'handover',
  'debrief',
] as const;
export const DRILL_PHASES = ['card', 'working', 'claim', 'debrief'] as const;
export const LESSON_PHASES = [
  'intro',
  'run',
  'explain',
  'answered',
  'broken',
  'outro',
  'debrief',
] as const;
export type JobPhase = (typeof JOB_PHASES)[number];
export type DeskPhase = JobPhase | (typeof DRILL_PHASES)[number] | (typeof LESSON_PHASES)[number];

/** What the desk must know of an exercise. It holds nothing of causes or right answers. */
export interface DeskPlan {
  /** The tools that may be taken along; all of them where it is left out. */
  readonly tools?: readonly string[] | 'all';
  /** A drill: the time from begin to its answer, s. No limit where it is left out. */
  readonly limitS?: number;
  /** A drill: how many answers there are to choose from; none where a part is to be named. */
  readonly options?: number;
  /** A lesson: where it stops, in order. */
  readonly steps?: readonly LessonStop[];
}
export interface LessonStop {
  readonly step: string;
  /** How many answers the question of this step offers. */
  readonly options: number;
  /** Whether something may be broken here. */
  readonly mayBreak?: boolean;
}

export type Pin = { readonly t: number } & Omit<PinEntry, 'type'>;
export type Handover = { readonly t: number } & Omit<HandoverEntry, 'type'>;
export type Claim = { readonly t: number } & Omit<ClaimEntry, 'type'> & {
    /** No pin speaks for it. */
    readonly unsupported: boolean;
  };
export interface Note {
  readonly t: number;
  readonly text: string;
}
export interface Hint {
  readonly t: number;
  readonly rung: HintRung;
}
export interface Answer {
  readonly t: number;
  readonly step: string;
  readonly option: number;
}

/** What the entries so far have put on paper. Plain data: as JSON and back it is the same. */
export interface DeskPaper {
  readonly plan: DeskPlan;
  readonly pins: readonly Pin[];
  readonly notes: readonly Note[];
  /** In the order made; one withdrawn is gone. */
  readonly claims: readonly Claim[];
  readonly suspects: readonly string[];
  /** Topics asked of the operator, each once. */
  readonly asked: readonly string[];
  readonly sheetRead: boolean;
  readonly tools: readonly string[];
  /** Set on arriving, once for the whole visit. */
  readonly guidance: Guidance;
  /** Rungs of the ladder that were taken, in the order taken. */
  readonly hints: readonly Hint[];
  /** When feedback was asked for, s. */
  readonly feedbacks: readonly number[];
  readonly handover: Handover | null;
  readonly answers: readonly Answer[];
  /** When the work was first begun. */
  readonly begunAt: number | null;
  /** A lesson: stops reached so far; the one being explained is the last of them. */
  readonly stops: number;
  /** A lesson: what has been broken and not yet put back. */
  readonly broken: string | null;
}
export interface DeskState extends DeskPaper {
  readonly kind: DeskKind;
  readonly phase: DeskPhase;
  /** Those that were taken. */
  readonly entries: readonly DeskEntry[];
}

export const REFUSALS = [
  'not now',
  'time is not a number',
  'earlier than the last entry',
  'not there yet',
  'closed',
  'tool not permitted',
  'begin first',
  'no such pin',
  'hints are for guided work',
  'no feedback in an assessment',
  'claimed already',
  'suspected twice',
  'nothing claimed',
  'nothing named',
  'prove first',
  'hand over first',
  'handed over',
  'time is up',
  'already answered',
  'no such option',
  'not the next step',
  'not this step',
  'answer first',
  'nothing to break here',
  'put it back first',
  'nothing is broken',
  'steps to come',
] as const;
/** Why an entry was not taken: a code, its sentence standing in the catalogue as `refusal.…`. */
export type Refusal = (typeof REFUSALS)[number];

export type Taken =
  | { readonly ok: true; readonly state: DeskState }
  | { readonly ok: false; readonly refusal: Refusal };
