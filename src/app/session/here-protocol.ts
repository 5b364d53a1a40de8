/** What is asked of a run where it stands: the page's question and the worker's answer. */
import { z } from 'zod';
import { timedActionSchema } from '../../judging/logs/index.ts';
import { NOT_ASKED } from '../../quiz/index.ts';
import { itemSchema } from './item-schema.ts';
import { madeItemSchema } from './making-protocol.ts';
import { WORK_KINDS } from './work-protocol.ts';

const count = z.number().int().min(0);
const timeS = z.number().min(0);

export const toHereSchema = z.strictObject({
  type: z.literal('ask here'),
  ask: count,
  kind: z.enum(WORK_KINDS),
  id: z.string().max(200),
  /** An instructor's own exercise, as the session was opened with it. */
  given: z.unknown().optional(),
  /** Of the run; left out: the exercise's own. */
  seed: count.optional(),
  log: z.array(timedActionSchema),
  atS: timeS,
  /** Where the right answer is to stand. */
  place: count,
});
export type ToHere = z.infer<typeof toHereSchema>;

export const HERE_TROUBLES = [...NOT_ASKED, 'unknown scenario', 'asking broke off'] as const;
export type HereTrouble = (typeof HERE_TROUBLES)[number];

export const fromHereSchema = z.discriminatedUnion('ok', [
  z.object({
    type: z.literal('asked here'),
    ask: count,
    ok: z.literal(true),
    item: itemSchema,
    names: madeItemSchema.shape.names,
    /** False where nothing at that moment shows what follows. */
    shows: z.boolean(),
    followsS: timeS,
  }),
  z.object({
    type: z.literal('asked here'),
    ask: count,
    ok: z.literal(false),
    why: z.enum(HERE_TROUBLES),
    detail: z.string(),
  }),
]);
export type FromHere = z.infer<typeof fromHereSchema>;
