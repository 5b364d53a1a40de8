import { type ClassEntry, isFor } from '../../../machines/class/index.ts';
import { type Action, INSTRUCTOR_ACTS } from '../../engine/index.ts';
import { type ClassPlace, classResultOf, NOT_JUDGED } from '../../judging/class/index.ts';
import { type LearnerLibrary, readGiven } from '../../scenario/index.ts';
import { createJudge, type Judge, type JudgeTask } from '../judge/index.ts';
import type { ClassJudge, SeatTask } from './class-judge.ts';

/**
 * Judges by running the work again on a thread of its own.
 *
 * @param library shipped scenarios, read when the first work is judged
 * @param atlasFolder where the atlases lie
 */
export function createClassJudge(library: () => LearnerLibrary, atlasFolder: string): ClassJudge {
  let judge: Judge | null = null;
  return {
    async judge(given) {
      const place = placeOf(given);
      const task = taskOf(given);
      if (task === null) return { result: classResultOf(place, NOT_JUDGED), refused: null };
      judge ??= createJudge({ library: library(), atlasFolder });
      const { hash: _, ...parts } = await judge.judge(task);
      const result = classResultOf(place, parts);
      return { result, refused: parts.refused ? parts.remarks : null };
    },
    close: async () => judge?.close(),
  };
}

function placeOf({ what, seat, work }: SeatTask): ClassPlace {
  const { kind, id, title, plant } = what;
  return {
    seat: seat.seat,
    nickname: seat.nickname,
    what: { kind, id, title, plant },
    attempt: work.attempt,
    startedISO: new Date(work.startedMs).toISOString(),
    handedInISO: seat.handedInMs === null ? null : new Date(seat.handedInMs).toISOString(),
  };
}

/** Null for a start: it is watched, not scored. */
function taskOf({ what, seed, entries, seat, work, claimed }: SeatTask): JudgeTask | null {
  const { kind, id, items = [], mode = '' } = what;
  if (kind === 'start') return null;
  if (kind === 'quiz') return { of: 'quiz', items, mode, entries: work.desk, claimed };
  const read = what.given === undefined ? null : readGiven(what.given);
  return {
    of: 'exercise',
    kind,
    id,
    seed,
    given: read?.ok === true ? read.given : undefined,
    log: work.acts,
    desk: work.desk,
    untilS: work.headS,
    setupHash: work.setupHash,
    ordered: orderedFor(entries, seat.seat),
    claimed,
  };
}

/** What the instructor did, or let wait, for that seat: it may stand in the seat's log. */
function orderedFor(entries: readonly ClassEntry[], seat: number): Action[] {
  return entries
    .flatMap((entry) =>
      (entry.type === 'do' || entry.type === 'when') && isFor(entry.to, seat) ? entry.acts : [],
    )
    .filter(({ type }) => INSTRUCTOR_ACTS.some((one) => one === type)) as unknown as Action[];
}
