/** The work of a seat, and what changed in it: enough to bring it back and to judge it. */
import { z } from 'zod';
import { MOST_ACTS, MOST_DESK } from './bounds.ts';
import { timeS, word } from './entry-schema.ts';

const count = z.number().int().min(0);
/** The last moment that can be written down as a date of four-figure years, ms since 1970. */
const LAST_MS = 253_402_300_799_999;

/** Checked by the engine's tables where the engine is. */
const actSchema = z.looseObject({ t: timeS, type: word });
/** Desk entries; in a quiz its own entries. Checked by their schema where they are judged. */
const paperSchema = z.looseObject({ type: word });

export type WorkAct = z.infer<typeof actSchema>;
export type WorkPaper = z.infer<typeof paperSchema>;

const headFields = {
  /** Which try of the seat at it, 1 the first; a new one begins with empty logs. */
  attempt: z.number().int().min(1).max(1000),
  /**
   * Grows with each telling within an attempt; an older one changes nothing. No larger than the
   * database holds: one that it refuses would hold up all that is saved with it.
   */
  rev: z
    .number()
    .int()
    .min(1)
    .max(2 ** 31 - 1),
  headS: timeS,
  /** Of the run at `headS`; null where it is not known yet, and in a quiz. */
  hash: z.string().max(200).nullable(),
  setupHash: z.string().max(200),
  startedMs: z.number().min(0).max(LAST_MS),
  /** Number of the last class entry that was applied to it. */
  applied: count,
};

/** Keeps the first `keep…` of what the server has and puts the rest behind it. */
export const workDeltaSchema = z.strictObject({
  ...headFields,
  keepActs: count,
  acts: z.array(actSchema).max(MOST_ACTS),
  keepDesk: count,
  desk: z.array(paperSchema).max(MOST_DESK),
});
export type WorkDelta = z.infer<typeof workDeltaSchema>;

export const workRecordSchema = z.strictObject({
  ...headFields,
  acts: z.array(actSchema).max(MOST_ACTS),
  desk: z.array(paperSchema).max(MOST_DESK),
});
export type WorkRecord = z.infer<typeof workRecordSchema>;

/**
 * A record with one telling more; or what is there, where the telling leans on more than that.
 * Telling it twice, or an old one late, changes nothing.
 */
export function withDelta(
  record: WorkRecord | null,
  delta: WorkDelta,
):
  | { readonly ok: true; readonly record: WorkRecord; readonly fresh: boolean }
  | { readonly ok: false; readonly haveActs: number; readonly haveDesk: number } {
  if (record !== null && isOlder(delta, record)) return { ok: true, record, fresh: false };
  const same = record !== null && record.attempt === delta.attempt;
  const before = same ? record : { acts: [], desk: [] };
  const { keepActs, keepDesk, acts, desk, ...head } = delta;
  const isBeyond = keepActs > before.acts.length || keepDesk > before.desk.length;
  const isTooLong = keepActs + acts.length > MOST_ACTS || keepDesk + desk.length > MOST_DESK;
  if (isBeyond || isTooLong) {
    return { ok: false, haveActs: before.acts.length, haveDesk: before.desk.length };
  }
  return {
    ok: true,
    fresh: true,
    record: {
      ...head,
      acts: [...before.acts.slice(0, keepActs), ...acts],
      desk: [...before.desk.slice(0, keepDesk), ...desk],
    },
  };
}

function isOlder(delta: WorkDelta, record: WorkRecord): boolean {
  if (delta.attempt !== record.attempt) return delta.attempt < record.attempt;
  return delta.rev <= record.rev;
}
