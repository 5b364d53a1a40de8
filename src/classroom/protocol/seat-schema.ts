/** How a seat stands, for the board. It may be lost on the way: the next one follows. */
import { z } from 'zod';
import { seatNumber, text, timeS, word } from './entry-schema.ts';

const count = z.number().int().min(0);
const share = z.number().min(0).max(1);

export const seatStateSchema = z.strictObject({
  /** Waiting for the begin, at it, or done. */
  phase: z.enum(['waiting', 'working', 'done']),
  /** Of the burner; empty where there is no run. */
  step: z.string().max(200),
  stepS: timeS,
  runS: timeS,
  running: z.boolean(),
  lockout: word.nullable(),
  /** What was done last, as a code with its words' parameters, and how long ago, s of the wall clock. */
  last: z.strictObject({ type: word, what: text, agoS: z.number().min(0).max(1e6) }).nullable(),
  /** The first three, the likeliest first. */
  suspects: z.array(word).max(3),
  /** Unsafe or careless things that are known so far. */
  flags: count,
  readings: count,
  resets: count,
  lockouts: count,
  /** Of the exercise, 0 to 1. */
  progress: share,
  /** Of a quiz: answered, and right where it is told. */
  answered: count,
  right: count,
  asksHelp: z.boolean(),
  applied: count,
});
export type SeatState = z.infer<typeof seatStateSchema>;

export const boardSeatSchema = z.strictObject({
  seat: seatNumber,
  here: z.boolean(),
  /** Null until the seat has told. */
  state: seatStateSchema.nullable(),
});
export type BoardSeat = z.infer<typeof boardSeatSchema>;

/** With the name: for instructors only. */
export const rosterSeatSchema = z.strictObject({
  seat: seatNumber,
  nickname: z.string(),
  joinedMs: z.number(),
  handedInMs: z.number().nullable(),
});
export type RosterSeat = z.infer<typeof rosterSeatSchema>;
