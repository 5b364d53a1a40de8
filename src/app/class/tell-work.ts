import type { WorkRecord as ClassWork } from '../../classroom/index.ts';
import type { WorkRecord } from '../work/work-record.ts';
import type { Work } from '../work/work-types.ts';
import type { ClassSeat } from './class-context.ts';
import { bookOfTry } from './seat-book.ts';

/** While nothing but time goes on it is told no more often than this, ms. */
const TIME_EVERY_MS = 2000;

/** Tells the class what the device saves of a run, from now on. */
export function tellWork({ client, book }: ClassSeat, work: Work): () => void {
  let told: WorkRecord | null = null;
  let toldMs = 0;
  let timer: ReturnType<typeof setTimeout> | null = null;

  function tell(record: WorkRecord): void {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    told = record;
    toldMs = Date.now();
    client.tellWork(classWorkOf(record, book.read().attempt));
  }

  function note(): void {
    const { record } = work.state.read();
    // Looking at an exercise is no work yet, and before the run has opened it has no setup.
    if (record === null || record.setupHash === '' || record === told) return;
    const tried = bookOfTry(book.read(), record.startedISO);
    if (tried !== book.read()) book.write(tried);
    const acted =
      told === null ||
      record.log !== told.log ||
      record.desk !== told.desk ||
      record.startedISO !== told.startedISO;
    const waitMs = acted ? 0 : toldMs + TIME_EVERY_MS - Date.now();
    if (waitMs <= 0) tell(record);
    else timer ??= setTimeout(() => tell(work.state.read().record ?? record), waitMs);
  }

  const stop = work.state.subscribe(note);
  note();
  return () => {
    stop();
    if (timer === null) return;
    clearTimeout(timer);
    // What the page saved as it went is told as well.
    const { record } = work.state.read();
    if (record !== null) tell(record);
  };
}

/** What the device has of a work, as the class is told it. */
export function classWorkOf(record: WorkRecord, attempt: number): Omit<ClassWork, 'rev'> {
  const { log, headS, hash, setupHash, startedISO, ofClass } = record;
  return {
    attempt,
    applied: ofClass?.applied ?? 0,
    headS,
    hash,
    setupHash,
    startedMs: Date.parse(startedISO),
    acts: [...log],
    desk: record.desk.map((entry) => ({ ...entry })),
  };
}
