/** What every client of a class knows: the class itself, and the work it is told of. */
import type { ClassEntry, ClassState } from '../../../machines/class/index.ts';
import type { Head, Welcome, WorkDelta, WorkRecord } from '../protocol/index.ts';
import { withDelta } from '../protocol/index.ts';
import { type ClassFold, createFold, takeEntries } from './class-fold.ts';
import type { Gone, Link, LinkPhase } from './link.ts';
import type { Held } from './readable.ts';

export interface ClassNow {
  readonly link: LinkPhase;
  /** Why it is gone, or why it went away the last time. */
  readonly gone: Gone | null;
  readonly book: ClassState;
  readonly entries: readonly ClassEntry[];
  readonly code: string;
  readonly addresses: readonly string[];
  /** Clock of the server minus the own one, ms. */
  readonly offsetMs: number;
  /** Of a seat: as it was saved when the connection began. Together: of the one plant, as it goes on. */
  readonly work: WorkRecord | null;
  /** Where the one plant has come to; only ever one that rests on the work that is there. */
  readonly head: Head | null;
}

const EMPTY = createFold();
export const CLASS_AT_FIRST: ClassNow = {
  link: 'connecting',
  gone: null,
  book: EMPTY.book,
  entries: [],
  code: '',
  addresses: [],
  offsetMs: 0,
  work: null,
  head: null,
};

const ALIVE_WITHIN_MS = 2000;
const AGAIN_MS = 500;

export interface Following {
  since(): number;
  welcome(welcome: Welcome, nowMs: number): void;
  entry(entry: ClassEntry): void;
  head(head: Head): void;
  /** Of the one plant. */
  worked(delta: WorkDelta): void;
  woken(): void;
  close(): void;
}

/**
 * Keeps `store` at what the link tells.
 *
 * @param known what the device remembers of the class, from an earlier page
 */
export function followClass(
  store: Held<ClassNow>,
  link: () => Link,
  known: readonly ClassEntry[] = [],
): Following {
  let fold: ClassFold = takeEntries(EMPTY, known) ?? EMPTY;
  store.write({ book: fold.book, entries: fold.entries });
  let early: Head | null = null;
  let asking = false;
  let isClosed = false;

  function take(entries: readonly ClassEntry[]): void {
    const taken = takeEntries(fold, entries);
    if (taken === null) {
      // Said by a server that knows more than this page.
      link().giveUp('other version');
      return;
    }
    fold = taken;
    if (fold.entries !== store.read().entries) {
      store.write({ book: fold.book, entries: fold.entries });
    }
  }

  /** Asks for what is missing until nothing is. */
  function catchUp(knownN = 0): void {
    if (asking || isClosed || (fold.early.length === 0 && fold.entries.length >= knownN)) return;
    asking = true;
    link()
      .ask('since', { n: fold.entries.length })
      .then(
        (answer) => {
          asking = false;
          if (answer.ok) take(answer.entries);
          setTimeout(() => catchUp(knownN), AGAIN_MS);
        },
        () => {
          // Away: the welcome tells what is missing.
          asking = false;
        },
      );
  }

  function rest(work: WorkRecord | null, head: Head | null): void {
    const stands =
      head !== null && work !== null && head.attempt === work.attempt && head.rev <= work.rev;
    early = stands ? null : head;
    store.write(stands ? { work, head } : { work });
  }

  return {
    since: () => fold.entries.length,
    welcome(welcome, nowMs) {
      const { code, addresses, serverMs, entries, n, work, head } = welcome;
      store.write({ code, addresses, offsetMs: serverMs - nowMs, gone: null });
      // What is remembered of a class that the server has lost is worth nothing.
      if (n < fold.entries.length) fold = EMPTY;
      take(entries);
      rest(work, head);
      setTimeout(() => catchUp(n), 0);
    },
    entry(entry) {
      take([entry]);
      catchUp();
    },
    head(head) {
      rest(store.read().work, head);
    },
    worked(delta) {
      const merged = withDelta(store.read().work, delta);
      // The line keeps the order, so that something is lost: the next welcome tells it whole.
      if (!merged.ok) link().renew();
      else if (merged.fresh) rest(merged.record, early ?? store.read().head);
    },
    woken() {
      link()
        .ask('since', { n: fold.entries.length }, ALIVE_WITHIN_MS)
        .then(
          (answer) => {
            if (answer.ok) take(answer.entries);
          },
          () => undefined,
        );
    },
    close() {
      isClosed = true;
    },
  };
}
