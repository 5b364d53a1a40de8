/** Entries of a class as they come through a door. */
import { z } from 'zod';
import {
  CLASS_KINDS,
  CLASS_SPEEDS,
  CLASS_WAYS,
  type ClassAct,
  type ClassEntry,
  type ClassEvent,
  PROJECTIONS,
} from '../../../machines/class/index.ts';
import { MOST_OPTIONS, MOST_SEATS, TEXT_CHARACTERS } from './bounds.ts';

export const word = z.string().min(1).max(200);
export const text = z.string().max(TEXT_CHARACTERS);
export const timeS = z.number().min(0).max(1e6);
export const seatNumber = z.number().int().min(1).max(MOST_SEATS);

const to = z.union([z.literal('all'), z.strictObject({ seat: seatNumber })]);

/** By the engine's tables it is checked where the engine is: on the server and in the worker. */
const act = z.looseObject({ type: word }) as unknown as z.ZodType<ClassAct>;
const acts = z.array(act).max(50);

export const classWhatSchema = z.strictObject({
  kind: z.enum(CLASS_KINDS),
  id: word,
  title: text,
  plant: z.string().max(200),
  items: z.array(word).max(200).exactOptional(),
  mode: word.exactOptional(),
  given: z.unknown().optional(),
});

const questionSchema = z.strictObject({
  text,
  stem: z.array(text).max(40),
  options: z.array(text).min(2).max(MOST_OPTIONS),
  item: word.nullable(),
});

const open = z.strictObject({
  type: z.literal('open'),
  what: classWhatSchema,
  way: z.enum(CLASS_WAYS),
  seed: z.number().int().min(0),
});

/** What an instructor may say; `open` is said by the server, once. */
const spoken = [
  z.strictObject({ type: z.literal('begin') }),
  z.strictObject({ type: z.literal('freeze'), to }),
  z.strictObject({ type: z.literal('run'), to, speed: z.literal(CLASS_SPEEDS) }),
  z.strictObject({ type: z.literal('next step'), to }),
  z.strictObject({ type: z.literal('rewind'), to, toS: timeS }),
  z.strictObject({ type: z.literal('rewind by'), to, byS: timeS }),
  z.strictObject({ type: z.literal('do'), to, acts }),
  z.strictObject({ type: z.literal('when'), id: word, to, step: word, acts }),
  z.strictObject({ type: z.literal('forget when'), id: word }),
  z.strictObject({ type: z.literal('lock tools'), tools: z.array(word).max(100) }),
  z.strictObject({ type: z.literal('hint'), to, text: text.min(1) }),
  z.strictObject({ type: z.literal('poll'), id: word, question: questionSchema }),
  z.strictObject({
    type: z.literal('show poll'),
    id: word,
    right: z
      .number()
      .int()
      .min(0)
      .max(MOST_OPTIONS - 1)
      .nullable(),
    why: text,
    /** What a client says is replaced by what the server counted. */
    counts: z.array(z.number().int().min(0)).max(MOST_OPTIONS),
  }),
  z.strictObject({ type: z.literal('end poll'), id: word }),
  z.strictObject({ type: z.literal('spotlight'), seat: seatNumber.nullable() }),
  z.strictObject({
    type: z.literal('project'),
    shows: z.enum(PROJECTIONS),
    names: z.boolean(),
  }),
  z.strictObject({ type: z.literal('close') }),
] as const;

export const spokenSchema = z.discriminatedUnion('type', [...spoken]);
export type Spoken = z.infer<typeof spokenSchema>;

const numbering = { n: z.number().int().min(1), atMs: z.number().min(0) };

/** An entry as the server gives it out. */
export const classEntrySchema = z.intersection(
  z.looseObject(numbering),
  z.looseObject({ type: word }),
) as unknown as z.ZodType<ClassEntry>;

/** An event with everything checked, for what was kept and comes back. */
export const classEventSchema = z.discriminatedUnion('type', [
  open,
  ...spoken,
]) as unknown as z.ZodType<ClassEvent>;
