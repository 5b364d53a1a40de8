/** The start that a quiz item is about, as the worker lets it in. */
import { z } from 'zod';
import type { FaultOnset, FaultOrder } from '../../engine/index.ts';
import { timedActionSchema } from '../../judging/logs/index.ts';
import type { ItemRun } from '../../quiz/index.ts';

const name = z.string().max(200);
const timeS = z.number().min(0);
/** Longer than any start; the recorder keeps one hour. */
const MOST_S = 3600;
const MOST_SEED = 2 ** 31 - 1;

const onsetSchema = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('start') }),
  z.strictObject({ kind: z.literal('time'), atS: timeS }),
  z.strictObject({ kind: z.literal('step'), step: name }),
  z.strictObject({
    kind: z.literal('intermittent'),
    fromS: timeS,
    periodS: z.number().positive(),
    duty: z.number().min(0).max(1),
  }),
]) as unknown as z.ZodType<FaultOnset>;

export const faultOrderSchema: z.ZodType<FaultOrder> = z.strictObject({
  fault: name,
  severity: z.number(),
  onset: onsetSchema,
});

export const itemRunSchema: z.ZodType<ItemRun> = z.strictObject({
  plant: name,
  tolerances: z.number().int().min(0).max(MOST_SEED),
  faults: z.array(faultOrderSchema).max(20),
  actions: z.array(timedActionSchema).max(200),
  untilS: z.number().min(0).max(MOST_S),
});

export const shownItemSchema = z.strictObject({
  run: itemRunSchema,
  /** After the answer: past the end of the record, to see what followed. */
  runsOn: z.boolean(),
});
export type ShownItem = z.infer<typeof shownItemSchema>;
