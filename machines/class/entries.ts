/** What is said in the course of a class: by the instructor, and once, at the opening, by the server. */

/** What everyone works on. */
export const CLASS_KINDS = ['start', 'job', 'drill', 'lesson', 'quiz'] as const;
export type ClassKind = (typeof CLASS_KINDS)[number];

/** One plant that the instructor drives, or everyone at an own copy. */
export const CLASS_WAYS = ['together', 'own copies'] as const;
export type ClassWay = (typeof CLASS_WAYS)[number];

export interface ClassWhat {
  readonly kind: ClassKind;
  readonly id: string;
  readonly title: string;
  /** Empty for a quiz over several plants. */
  readonly plant: string;
  /** Of a quiz: the items in the order asked, and its mode. */
  readonly items?: readonly string[];
  readonly mode?: string;
  /** An instructor's own exercise: its checked data, as a page's library holds it. */
  readonly given?: unknown;
}

/** The fastest that a class is run. */
export const CLASS_SPEEDS = [1, 2, 4, 8, 16, 64] as const;

/** Everyone, or one seat. */
export type ClassTo = 'all' | { readonly seat: number };

/** An act of the engine's tables. The chart does not look into it; both ends check it by those tables. */
export type ClassAct = { readonly type: string } & Readonly<Record<string, unknown>>;

export interface PollQuestion {
  readonly text: string;
  /** Lines that stand above it: what was read, where the plant stands. */
  readonly stem: readonly string[];
  readonly options: readonly string[];
  /** The quiz item it is, where it is one; else null. */
  readonly item: string | null;
}

/** What the projector shows. */
export const PROJECTIONS = ['way in', 'board', 'plant', 'spotlight', 'poll'] as const;
export type Projection = (typeof PROJECTIONS)[number];

export type ClassEvent =
  | {
      readonly type: 'open';
      readonly what: ClassWhat;
      readonly way: ClassWay;
      readonly seed: number;
    }
  /** The work begins: until then those who are in wait. */
  | { readonly type: 'begin' }
  | { readonly type: 'freeze'; readonly to: ClassTo }
  | { readonly type: 'run'; readonly to: ClassTo; readonly speed: number }
  | { readonly type: 'next step'; readonly to: ClassTo }
  /** Back to a moment of the run, or by so many simulated seconds. */
  | { readonly type: 'rewind'; readonly to: ClassTo; readonly toS: number }
  | { readonly type: 'rewind by'; readonly to: ClassTo; readonly byS: number }
  | { readonly type: 'do'; readonly to: ClassTo; readonly acts: readonly ClassAct[] }
  /** The acts are done when a run enters the step. */
  | {
      readonly type: 'when';
      readonly id: string;
      readonly to: ClassTo;
      readonly step: string;
      readonly acts: readonly ClassAct[];
    }
  | { readonly type: 'forget when'; readonly id: string }
  /** Replaces the list before; empty: everything may be used. */
  | { readonly type: 'lock tools'; readonly tools: readonly string[] }
  | { readonly type: 'hint'; readonly to: ClassTo; readonly text: string }
  | {
      readonly type: 'poll';
      readonly id: string;
      readonly question: PollQuestion;
    }
  /** Everyone sees what was answered. The server counts; `right` is null where nothing is right. */
  | {
      readonly type: 'show poll';
      readonly id: string;
      readonly right: number | null;
      readonly why: string;
      readonly counts: readonly number[];
    }
  | { readonly type: 'end poll'; readonly id: string }
  /** One learner's run to the projector; null: none. */
  | { readonly type: 'spotlight'; readonly seat: number | null }
  | { readonly type: 'project'; readonly shows: Projection; readonly names: boolean }
  | { readonly type: 'close' };

/** With its number, 1 the first, and the time of the server. */
export type ClassEntry = { readonly n: number; readonly atMs: number } & ClassEvent;
