import type { DeskEntry } from '../../../machines/job/index.ts';
import type { Session, SessionOpening } from '../session/session-types.ts';
import type { Store } from '../session/store.ts';
import type { BranchOf, OfClass, WorkIssue, WorkName, WorkRecord } from './work-record.ts';

export interface WorkState {
  /** As it was saved last; null before the run of new work has opened. */
  readonly record: WorkRecord | null;
  /** What is on paper, saved as soon as it is put there. */
  readonly desk: readonly DeskEntry[];
  /** What went wrong with saving or reading; the newest. */
  readonly issue: WorkIssue | null;
  /** There was work here when it was opened. */
  readonly resumed: boolean;
  /** Grows with each start anew: the session is then another one. */
  readonly attempt: number;
}

/** One piece of work, from the device to the running session and back. */
export interface Work {
  readonly name: WorkName;
  readonly state: Store<WorkState>;
  /** How its session is to be opened now. */
  opening(): SessionOpening;
  /** Saves what the session does, brings its tools back; ends when the result is called. */
  attach(session: Session): () => void;
  /** The whole desk log as it now is. */
  putDesk(desk: readonly DeskEntry[]): void;
  /** What a class did to it; saved with what is saved next, so that the two are never apart. */
  readonly ofClass: OfClass;
  noteClass(done: OfClass): void;
  /**
   * By a class: log, run and paper are cut at that moment, and saved so together with what the class
   * has done by then. Settled when the run stands there.
   */
  cutTo(tS: number): Promise<void>;
  /** Keeps what is there aside and begins again. */
  startAnew(): void;
  /** Goes on although the exercise has changed since; the plant may then stand otherwise. */
  goOnAnyway(): void;
  /** Writes at once, for when the page is about to go. */
  saveNow(): void;
  /** Throws it away; what is done from then on is not kept. */
  erase(): void;
  /** Another page of this device wrote under this key: if it is this work, this page saves no more. */
  yieldTo(key: string): void;
  dismissIssue(): void;
}

/** Work that the device keeps, for a list. */
export interface WorkEntry extends WorkName {
  readonly startedISO: string;
  readonly savedISO: string;
  readonly headS: number;
  /** It has been closed; there is only the debrief to read again. */
  readonly closed: boolean;
  /** Where it left other work; null where it is no branch. */
  readonly branchOf: BranchOf | null;
}

/** What stands aside: unreadable, or left behind by a start anew. */
export interface KeptAside {
  readonly key: string;
  readonly name: WorkName | null;
  readonly why: WorkIssue['trouble'] | 'started anew' | 'replaced by import';
  readonly detail: string;
  readonly atISO: string;
}

export interface WorkList {
  readonly entries: readonly WorkEntry[];
  readonly aside: readonly KeptAside[];
  /** What was found wrong while this list was made. */
  readonly issues: readonly WorkIssue[];
}
