/** What is kept of classes, and how it is asked for. */
import type { ClassEntry, ClassEvent, ClassWay, ClassWhat } from '../../../machines/class/index.ts';
import type { WorkRecord } from '../../classroom/index.ts';

export interface Statement {
  readonly sql: string;
  readonly params?: readonly unknown[];
}
export type Row = Readonly<Record<string, unknown>>;

/** One SQL for both: PostgreSQL, and the embedded one, which is PostgreSQL too. */
export interface Database {
  readonly kind: 'embedded' | 'postgresql';
  /** Times and counts come as numbers, JSON as data. Rejects with a `StoreFailure`. */
  query<R extends Row = Row>(sql: string, params?: readonly unknown[]): Promise<readonly R[]>;
  /** All of them or none. What is behind waits; `bulk` lets what is urgent go ahead. */
  transaction(
    statements: readonly Statement[],
    urgency?: 'now' | 'bulk',
  ): Promise<readonly (readonly Row[])[]>;
  /** Begins to open it, and resolves when it is open; whoever asks something opens it as well. */
  warm(): Promise<void>;
  /** Waits for what is under way. Nothing can be asked afterwards. */
  close(): Promise<void>;
}

export const STORE_TROUBLES = [
  /** Another process has the folder. */
  'folder taken',
  'no room on the disk',
  'database not reached',
  /** A newer program has used it. */
  'database of a newer version',
  'database refused',
] as const;
export type StoreTrouble = (typeof STORE_TROUBLES)[number];

/** What a store rejects with: `cause` is the database's own error. */
export interface StoreFailure extends Error {
  readonly trouble: StoreTrouble;
}

export interface KeptClass {
  readonly id: string;
  readonly code: string;
  readonly secretHash: string;
  readonly projectorHash: string;
  readonly what: ClassWhat;
  readonly way: ClassWay;
  readonly seed: number;
  readonly openedMs: number;
  readonly closedMs: number | null;
  readonly retentionDays: number;
  /** Number of its last entry. */
  readonly n: number;
}

export interface KeptSeat {
  readonly seat: number;
  readonly nickname: string;
  readonly tokenHash: string;
  readonly pinHash: string;
  readonly joinedMs: number;
  readonly handedInMs: number | null;
}

export interface PollAnswer {
  readonly poll: string;
  readonly seat: number;
  readonly option: number;
}

export interface KeptResult {
  readonly seat: number;
  readonly attempt: number;
  readonly judgedMs: number;
  /** As src/judging makes it. */
  readonly result: unknown;
  /** Why the page's own figure was not taken; null where it was the same or none was told. */
  readonly refused: unknown;
}

/** Seat 0 is the one plant of a class together. */
export interface ClassStore {
  readonly database: Database;
  /** @throws StoreFailure everywhere below */
  openClass(kept: Omit<KeptClass, 'n' | 'closedMs'>): Promise<void>;
  classById(id: string): Promise<KeptClass | null>;
  /** Of the classes that are not closed. */
  classByCode(code: string): Promise<KeptClass | null>;
  classes(): Promise<readonly (KeptClass & { readonly seats: number })[]>;
  setRetention(id: string, days: number): Promise<void>;
  /** With all that hangs on it. */
  deleteClass(id: string): Promise<void>;
  /** Those whose time is over; their ids. */
  deleteExpired(nowMs: number): Promise<readonly string[]>;

  /** The next number in the class; the same key again gives what it gave before, `fresh` false. */
  append(
    id: string,
    key: string,
    event: ClassEvent,
    atMs: number,
    /** Number that the class must stand at, so that what was decided still holds; else null comes back. */
    after: number,
  ): Promise<{ readonly entry: ClassEntry; readonly fresh: boolean } | null>;
  entriesSince(id: string, n: number): Promise<readonly ClassEntry[]>;
  /** Numbers of the last entries, for who may have missed one. */
  lastNumbers(ids: readonly string[]): Promise<ReadonlyMap<string, number>>;

  /** Takes the next free seat. */
  addSeat(id: string, seat: Omit<KeptSeat, 'seat' | 'handedInMs'>): Promise<number>;
  seats(id: string): Promise<readonly KeptSeat[]>;
  seat(id: string, seat: number): Promise<KeptSeat | null>;
  setToken(id: string, seat: number, tokenHash: string): Promise<void>;
  noteHandedIn(id: string, seat: number, atMs: number): Promise<void>;

  /** Several at once, each only if it is newer than what is there. */
  saveWorks(
    works: readonly { readonly id: string; readonly seat: number; readonly work: WorkRecord }[],
  ): Promise<void>;
  /** The newest attempt, or one of them. */
  work(id: string, seat: number, attempt?: number): Promise<WorkRecord | null>;
  works(id: string): Promise<readonly { readonly seat: number; readonly work: WorkRecord }[]>;
  /** The newest attempt of each seat, without what was done in it. */
  attempts(id: string): Promise<
    readonly {
      readonly seat: number;
      readonly attempt: number;
      readonly rev: number;
      readonly startedMs: number;
    }[]
  >;

  /** The first answer stands. */
  answerPoll(id: string, answer: PollAnswer): Promise<void>;
  pollAnswers(id: string, poll: string): Promise<readonly PollAnswer[]>;

  saveResult(id: string, result: KeptResult): Promise<void>;
  results(id: string): Promise<readonly KeptResult[]>;
}
