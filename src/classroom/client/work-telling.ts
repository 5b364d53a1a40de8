/** Tells the server the newest state of a piece of work until it is saved there. */
import type { Failed, WorkAnswer, WorkRecord } from '../protocol/index.ts';
import { type Link, PASSING } from './link.ts';
import { deltaOf } from './work-delta.ts';

/** 'kept here': on the device alone, until there is a server again. */
export type Saved = 'saved' | 'telling' | 'kept here';
export type WorkToTell = Omit<WorkRecord, 'rev'>;

export interface SavedNow {
  readonly saved: Saved;
  /** Why the server will not have it, where that does not pass by itself. */
  readonly workRefused: Failed['error'] | null;
}

export interface WorkTelling {
  /** The newest takes the place of what was told before. */
  tell(work: WorkToTell): void;
  /** Of the work told last; 0 before. */
  rev(): number;
  /** What the server holds, at the begin of a connection. */
  welcome(held: WorkRecord | null): void;
  /** The connection has come or gone. */
  turn(): void;
  /** Resolves with the number of the newest telling of that attempt, once that is saved. */
  whenSaved(attempt: number): Promise<number>;
  close(): void;
}

/** Between two tellings, ms. */
const GAP_MS = 250;
const AGAIN_MS = 1000;
const REFUSED_MS = 5000;
/** More tellings without an answer than this nobody can keep apart: then all is told. */
const MOST_UNANSWERED = 8;

export function createWorkTelling(
  link: Pick<Link, 'ask' | 'phase'>,
  onSaved: (now: SavedNow) => void,
): WorkTelling {
  let newest: WorkRecord | null = null;
  let lastRev = 0;
  let isSaved = true;
  let refused: Failed['error'] | null = null;
  /** What the server may hold by now; null: not known. */
  let mayHave: readonly (WorkRecord | null)[] | null = [];
  let asking = false;
  let isClosed = false;
  let timer: ReturnType<typeof setTimeout> | null = null;
  let waiting: { readonly attempt: number; readonly done: (rev: number) => void }[] = [];

  function number(work: WorkToTell): WorkRecord {
    lastRev += 1;
    return { ...work, rev: lastRev };
  }

  function publish(): void {
    const saved =
      isSaved || newest === null
        ? 'saved'
        : link.phase() === 'live' && refused === null
          ? 'telling'
          : 'kept here';
    onSaved({ saved, workRefused: refused });
  }

  function later(ms: number): void {
    if (timer !== null || isClosed) return;
    timer = setTimeout(() => {
      timer = null;
      pump();
    }, ms);
  }

  function pump(): void {
    const record = newest;
    if (record === null || isSaved || asking || timer !== null || isClosed) return;
    if (link.phase() !== 'live' || refused === 'class closed') return;
    const delta = deltaOf(record, mayHave);
    const whole = delta.keepActs === 0 && delta.keepDesk === 0;
    const unanswered = [...(mayHave ?? []), record];
    mayHave = mayHave === null || unanswered.length > MOST_UNANSWERED ? null : unanswered;
    asking = true;
    link
      .ask('work', delta)
      .then(
        (answer) => answered(record, answer, whole),
        () => AGAIN_MS,
      )
      .then((waitMs) => {
        asking = false;
        publish();
        later(refused === null ? waitMs : REFUSED_MS);
      });
  }

  /** @returns how long to wait before the next telling, ms */
  function answered(record: WorkRecord, answer: WorkAnswer, whole: boolean): number {
    if (answer.ok) {
      refused = null;
      if (answer.attempt === record.attempt && answer.rev === record.rev) {
        mayHave = [record];
        if (newest === record) save(record);
        return GAP_MS;
      }
      // The server has something newer from elsewhere; what is done here now goes on top of it.
      mayHave = null;
      if (answer.attempt > record.attempt) refused = 'message not understood';
      else raiseTo(answer.rev);
      return GAP_MS;
    }
    if (answer.error === 'tell more') {
      mayHave = null;
      if (whole) refused = 'message not understood';
      return whole ? AGAIN_MS : 0;
    }
    if (!PASSING.includes(answer.error)) refused = answer.error;
    return AGAIN_MS;
  }

  function save(record: WorkRecord): void {
    isSaved = true;
    const { attempt, rev } = record;
    const ready = waiting.filter((each) => each.attempt <= attempt);
    waiting = waiting.filter((each) => each.attempt > attempt);
    for (const { done } of ready) done(rev);
  }

  function raiseTo(rev: number): void {
    if (newest === null) {
      lastRev = Math.max(lastRev, rev);
      return;
    }
    if (rev < newest.rev) return;
    lastRev = Math.max(lastRev, rev);
    newest = number(newest);
    isSaved = false;
  }

  return {
    tell(work) {
      newest = number(work);
      isSaved = false;
      if (refused !== 'class closed') refused = null;
      publish();
      pump();
    },
    rev: () => newest?.rev ?? lastRev,
    welcome(held) {
      const sent = newest;
      const holds = sent !== null && held?.attempt === sent.attempt && held.rev === sent.rev;
      // What is on its way still counts: an old server may yet write it.
      const told = mayHave;
      if (told !== null) mayHave = told.length < MOST_UNANSWERED ? [held, ...told] : null;
      if (sent !== null && holds && told !== null && wasTold(told, sent)) {
        mayHave = [held];
        save(sent);
      } else {
        isSaved = sent === null;
        if (held !== null && (sent === null || held.attempt === sent.attempt)) raiseTo(held.rev);
      }
      if (timer !== null) clearTimeout(timer);
      timer = null;
      publish();
      later(0);
    },
    turn: publish,
    whenSaved(attempt) {
      if (isSaved && newest !== null && newest.attempt >= attempt) {
        return Promise.resolve(newest.rev);
      }
      return new Promise((done) => {
        waiting.push({ attempt, done });
      });
    },
    close() {
      isClosed = true;
      if (timer !== null) clearTimeout(timer);
    },
  };
}

function wasTold(told: readonly (WorkRecord | null)[], record: WorkRecord): boolean {
  return told.some((one) => one === record);
}
