/**
 * Work that was done while no server answered, and whose page was loaded anew before one did: it is
 * told when the seat is back, though the class may be over by then.
 */
import type { ClassWhat } from '../../../machines/class/index.ts';
import type { WorkRecord as ClassWork } from '../../classroom/index.ts';
import { openQuiz } from '../quiz/device-open.ts';
import { listOpen } from '../quiz/open-quiz.ts';
import { readKept } from '../work/keep-work.ts';
import type { ClassSeat } from './class-context.ts';
import { classWorkOf } from './tell-work.ts';

/** Tells what the device has and the server has not; nothing where the server has as much. */
export function tellKept(seat: ClassSeat, what: ClassWhat): void {
  const { attempt } = seat.book.read();
  if (attempt === 0) return;
  const kept = what.kind === 'quiz' ? keptQuiz(seat, attempt) : keptRun(seat, what, attempt);
  if (kept !== null && isMore(kept, seat.client.store.read().work)) seat.client.tellWork(kept);
}

type Kept = Omit<ClassWork, 'rev'>;

function keptRun({ shelf, book }: ClassSeat, { kind, id }: ClassWhat, attempt: number) {
  if (kind === 'quiz') return null;
  const name = { kind: kind === 'start' ? 'watch' : kind, id } as const;
  const { record } = readKept(shelf, name, new Date().toISOString());
  // Another try than the one that the seat knows of is not its work.
  if (record === null || record.startedISO !== book.read().startedISO) return null;
  return record.setupHash === '' ? null : classWorkOf(record, attempt);
}

function keptQuiz({ client, shelf, book }: ClassSeat, attempt: number): Kept | null {
  const [name] = listOpen(shelf);
  const entries = name === undefined ? [] : (openQuiz(name, shelf)?.entries ?? []);
  const [first] = entries;
  if (first === undefined || first.atISO !== book.read().startedISO) return null;
  return {
    attempt,
    headS: 0,
    hash: null,
    setupHash: '',
    startedMs: Date.parse(first.atISO),
    applied: client.store.read().entries.length,
    acts: [],
    desk: entries.map((entry) => ({ ...entry })),
  };
}

/** Only what goes on from what the server has; where the two part, the server's stands. */
function isMore(kept: Kept, known: ClassWork | null): boolean {
  if (known === null || kept.attempt > known.attempt) return true;
  if (kept.attempt < known.attempt) return false;
  const isLonger = kept.acts.length > known.acts.length || kept.desk.length > known.desk.length;
  const isShorter = kept.acts.length < known.acts.length || kept.desk.length < known.desk.length;
  return !isShorter && (isLonger || kept.headS > known.headS);
}
