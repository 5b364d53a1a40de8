/** Work that the server has of this seat and the device has not: after the seat was taken on another one. */
import type { ClassWhat } from '../../../machines/class/index.ts';
import type { WorkRecord as ClassWork } from '../../classroom/index.ts';
import { orderedIn } from '../class-run/index.ts';
import { keepOpenQuiz } from '../quiz/device-open.ts';
import { readOpenQuiz } from '../quiz/open-quiz.ts';
import { writeKept } from '../work/keep-work.ts';
import { readWorkData, WORK_VERSION } from '../work/work-record.ts';
import type { ClassSeat } from './class-context.ts';

/** Puts it on the seat's shelf, unless what is there is as new: the device knows of it first. */
export function bringWork({ client, place, shelf, book }: ClassSeat, what: ClassWhat): void {
  const { work } = client.store.read();
  if (work === null || work.attempt <= book.read().attempt) return;
  const startedISO = new Date(work.startedMs).toISOString();
  const isThere = what.kind === 'quiz' ? bringQuiz(work) : bringRun(work);
  if (!isThere) return;
  book.write({ attempt: work.attempt, startedISO, handedIn: false, outcome: null });

  function bringQuiz({ desk }: ClassWork): boolean {
    const open = readOpenQuiz({ skill: null, entries: desk, drafts: [] });
    if (open === null) return false;
    keepOpenQuiz(open, shelf);
    return true;
  }

  function bringRun({ acts, desk, headS, hash, setupHash, applied }: ClassWork): boolean {
    const read = readWorkData({
      v: WORK_VERSION,
      kind: what.kind === 'start' ? 'watch' : what.kind,
      id: what.id,
      seed: client.store.read().book.seed,
      startedISO,
      savedISO: startedISO,
      log: acts,
      pending: [],
      desk,
      headS,
      hash,
      setupHash,
      uses: [],
      // Without it what waited for a step would be done once more.
      ofClass: {
        applied,
        ordered: orderedIn(acts, client.store.read().entries, place.seat, applied),
      },
    });
    if (!read.ok) return false;
    writeKept(shelf, read.record);
    return true;
  }
}
