/**
 * Every message of a class, both ways. Reliable ones are answered (Socket.IO's own
 * acknowledgement); `state`, `head` and `board` are not and may be lost.
 */
import { z } from 'zod';
import { CLASS_REFUSALS } from '../../../machines/class/index.ts';
import {
  CLASS_PROTOCOL,
  CODE_LENGTH,
  MOST_ENTRIES,
  MOST_OPTIONS,
  MOST_SEATS,
  NICKNAME_CHARACTERS,
  PIN_LENGTH,
} from './bounds.ts';
import { classEntrySchema, seatNumber, spokenSchema, word } from './entry-schema.ts';
import { boardSeatSchema, rosterSeatSchema, seatStateSchema } from './seat-schema.ts';
import { workDeltaSchema, workRecordSchema } from './work-schema.ts';

const id = z.string().min(8).max(64);
const secret = z.string().min(16).max(128);
const n = z.number().int().min(0);
const v = z.literal(CLASS_PROTOCOL);

/** Who comes: given with the connection itself. `since`: number of the last entry that is there already. */
export const helloSchema = z.discriminatedUnion('role', [
  z.strictObject({ role: z.literal('door'), v }),
  z.strictObject({
    role: z.literal('seat'),
    v,
    class: id,
    seat: seatNumber,
    token: secret,
    since: n,
  }),
  z.strictObject({ role: z.literal('instructor'), v, class: id, secret, since: n }),
  z.strictObject({ role: z.literal('projector'), v, class: id, key: secret, since: n }),
]);
export type Hello = z.infer<typeof helloSchema>;

export const CLASS_ERRORS = [
  'message not understood',
  /** The page is older or newer than the server: reload. */
  'other version',
  'no such class',
  'no such seat',
  'wrong pin',
  'wrong secret',
  'too many attempts',
  'too fast',
  'class full',
  'class closed',
  'nickname empty',
  'not for this role',
  'no such poll',
  'poll is over',
  'acts not understood',
  /** Nothing is lost: it is kept by the page and told again. */
  'cannot be saved now',
  'server stops',
] as const;
export type ClassError = (typeof CLASS_ERRORS)[number];

const failed = z.object({
  ok: z.literal(false),
  error: z.enum([...CLASS_ERRORS, ...CLASS_REFUSALS]),
  /** Place in the message, where it was not understood. */
  detail: z.string().max(500).optional(),
});
export type Failed = z.infer<typeof failed>;

export const joinSchema = z.strictObject({
  code: z.string().length(CODE_LENGTH),
  nickname: z.string().trim().min(1).max(NICKNAME_CHARACTERS),
});
export const takeSeatSchema = z.strictObject({
  code: z.string().length(CODE_LENGTH),
  seat: seatNumber,
  pin: z.string().length(PIN_LENGTH),
});
export const seatedSchema = z.union([
  z.object({
    ok: z.literal(true),
    class: id,
    seat: seatNumber,
    token: secret,
    pin: z.string().length(PIN_LENGTH),
    nickname: z.string(),
  }),
  failed,
]);
export type Seated = z.infer<typeof seatedSchema>;

export const saySchema = z.strictObject({ key: id, entry: spokenSchema });
export const saidSchema = z.union([z.object({ ok: z.literal(true), n }), failed]);
export type Said = z.infer<typeof saidSchema>;

export const sinceSchema = z.strictObject({ n });
export const entriesSchema = z.union([
  z.object({ ok: z.literal(true), entries: z.array(classEntrySchema).max(MOST_ENTRIES) }),
  failed,
]);

export const workAnswerSchema = z.union([
  /** Saved: it will be there after a crash of everything. */
  z.object({ ok: z.literal(true), attempt: n, rev: n }),
  /** More is missing than was told: tell from here on. */
  z.object({ ok: z.literal(false), error: z.literal('tell more'), haveActs: n, haveDesk: n }),
  failed,
]);
export type WorkAnswer = z.infer<typeof workAnswerSchema>;

export const pollAnswerSchema = z.strictObject({
  poll: word,
  option: z
    .number()
    .int()
    .min(0)
    .max(MOST_OPTIONS - 1),
});

export const handInSchema = z.strictObject({
  attempt: z.number().int().min(1),
  rev: z.number().int().min(1),
  /** What the page made of it; the server makes its own. */
  claimed: z
    .strictObject({ outcome: z.number().min(0).max(1), hash: z.string().max(200) })
    .nullable(),
});
export const doneSchema = z.union([z.object({ ok: z.literal(true) }), failed]);
export type Done = z.infer<typeof doneSchema>;

/** Where the one plant has come to. `rev`: of the work that it rests on. */
export const headSchema = z.strictObject({
  attempt: z.number().int().min(1),
  rev: n,
  acts: n,
  headS: z.number().min(0),
  hash: z.string().max(200).nullable(),
  mode: z.enum(['paused', 'playing', 'to next step']),
  speed: z.number().min(0).max(64),
});
export type Head = z.infer<typeof headSchema>;

/** Whose work is to be told as it goes on; null: nobody's. Instructors; projectors only the spotlit one. */
export const watchSchema = z.strictObject({ seat: seatNumber.nullable() });
export const watchedSchema = z.union([
  z.object({ ok: z.literal(true), work: workRecordSchema.nullable() }),
  failed,
]);
export type Watched = z.infer<typeof watchedSchema>;

/** First thing after the connection, and again after each one. */
export const welcomeSchema = z.object({
  v,
  role: z.enum(['seat', 'instructor', 'projector']),
  class: id,
  code: z.string().length(CODE_LENGTH),
  /** Addresses at which the page is found on this network; empty where it is not known. */
  addresses: z.array(z.string()).max(20),
  serverMs: z.number(),
  entries: z.array(classEntrySchema).max(MOST_ENTRIES),
  n,
  /** A seat's own; null for the others. */
  seat: seatNumber.nullable(),
  nickname: z.string().nullable(),
  /** A seat's own work, or that of the one plant for everyone who is in a class together. */
  work: workRecordSchema.nullable(),
  head: headSchema.nullable(),
  /** What this seat answered to the open poll. */
  polled: z.number().int().nullable(),
});
export type Welcome = z.infer<typeof welcomeSchema>;

export const boardSchema = z.object({ seats: z.array(boardSeatSchema).max(MOST_SEATS) });
export const rosterSchema = z.object({ seats: z.array(rosterSeatSchema).max(MOST_SEATS) });
export const pollCountsSchema = z.object({
  poll: word,
  counts: z.array(n).max(MOST_OPTIONS),
  answered: n,
});
export type PollCounts = z.infer<typeof pollCountsSchema>;
/** Work as it goes on: of the one plant (`seat` null) or of a seat that is watched. */
export const workedSchema = z.object({ seat: seatNumber.nullable(), delta: workDeltaSchema });

export const GONE = [
  'seat taken elsewhere',
  'class deleted',
  'server stops',
  ...CLASS_ERRORS,
] as const;
export const goneSchema = z.object({ why: z.enum(GONE) });

/** What a client sends, by event name; the value is the schema of what it carries. */
export const TO_SERVER = {
  join: joinSchema,
  'take seat': takeSeatSchema,
  say: saySchema,
  since: sinceSchema,
  work: workDeltaSchema,
  state: seatStateSchema,
  'poll answer': pollAnswerSchema,
  'hand in': handInSchema,
  head: headSchema,
  watch: watchSchema,
} as const;
export type ToServer = { [K in keyof typeof TO_SERVER]: z.infer<(typeof TO_SERVER)[K]> };

/** What it is answered. */
export const ANSWERS = {
  join: seatedSchema,
  'take seat': seatedSchema,
  say: saidSchema,
  since: entriesSchema,
  work: workAnswerSchema,
  'poll answer': doneSchema,
  'hand in': doneSchema,
  watch: watchedSchema,
} as const;
export type Answers = { [K in keyof typeof ANSWERS]: z.infer<(typeof ANSWERS)[K]> };

/** What the server sends by itself. */
export const TO_CLIENT = {
  welcome: welcomeSchema,
  entry: classEntrySchema,
  head: headSchema,
  worked: workedSchema,
  board: boardSchema,
  roster: rosterSchema,
  'poll counts': pollCountsSchema,
  gone: goneSchema,
} as const;
export type ToClient = { [K in keyof typeof TO_CLIENT]: z.infer<(typeof TO_CLIENT)[K]> };
