import type {
  ClassAct,
  ClassTo,
  ClassWay,
  ClassWhat,
  PollQuestion,
  Projection,
} from './entries.ts';

export const CLASS_PHASES = [
  'not opened',
  /** Learners come in and wait. */
  'gathering',
  'under way',
  /** Nothing more is taken; results stand. */
  'closed',
] as const;
export type ClassPhase = (typeof CLASS_PHASES)[number];

export interface ClassPace {
  readonly frozen: boolean;
  readonly speed: number;
}

export interface ClassPoll {
  readonly id: string;
  readonly question: PollQuestion;
  /** Null until it is shown. */
  readonly shown: {
    readonly right: number | null;
    readonly why: string;
    readonly counts: readonly number[];
  } | null;
}

export interface ClassTrigger {
  readonly id: string;
  readonly to: ClassTo;
  readonly step: string;
  readonly acts: readonly ClassAct[];
}

export interface ClassHint {
  readonly n: number;
  readonly to: ClassTo;
  readonly text: string;
}

/** What the entries so far have made of it. Plain data: as JSON and back it is the same. */
export interface ClassBook {
  readonly what: ClassWhat | null;
  readonly way: ClassWay;
  readonly seed: number;
  readonly openedMs: number;
  /** Of everyone who has no pace of his own. */
  readonly pace: ClassPace;
  readonly paces: readonly ({ readonly seat: number } & ClassPace)[];
  readonly lockedTools: readonly string[];
  readonly triggers: readonly ClassTrigger[];
  readonly hints: readonly ClassHint[];
  readonly poll: ClassPoll | null;
  readonly spotlight: number | null;
  readonly shows: Projection;
  readonly names: boolean;
}

export interface ClassState extends ClassBook {
  readonly phase: ClassPhase;
  /** Number of the last entry taken; 0 before the first. */
  readonly n: number;
}

export const CLASS_REFUSALS = [
  'not opened',
  'opened already',
  'begun already',
  'not begun',
  'only together with a start',
  'not in this way of teaching',
  'nothing to rewind',
  'no such speed',
  'no such trigger',
  'trigger twice',
  'nothing to do',
  'a poll is open',
  'no such poll',
  'too few options',
  'shown already',
  'closed',
] as const;
/** Why an entry was not taken: a code, its sentence standing in the catalogue as `class.refusal.…`. */
export type ClassRefusal = (typeof CLASS_REFUSALS)[number];

export type ClassTaken =
  | { readonly ok: true; readonly state: ClassState }
  | { readonly ok: false; readonly refusal: ClassRefusal };

/** How a seat's run is to go: as for all, unless it was told otherwise since. */
export function paceOfSeat({ pace, paces }: ClassBook, seat: number): ClassPace {
  const own = paces.find((one) => one.seat === seat);
  return own === undefined ? pace : { frozen: own.frozen, speed: own.speed };
}

/** Whether an entry is meant for that seat. */
export function isFor(to: ClassTo, seat: number): boolean {
  return to === 'all' || to.seat === seat;
}
