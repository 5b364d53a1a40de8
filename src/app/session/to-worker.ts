/** What the page tells its worker. Kept apart, so that the page itself does not load the engine. */
import { z } from 'zod';
import { actionSchema, timedActionSchema } from './action-schema.ts';
import { SPEEDS } from './protocol.ts';

const timeS = z.number().min(0);

export const toWorkerSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('open'),
    scenario: z.string().max(200),
    /** What was done before, when an earlier run is taken up again. */
    log: z.array(timedActionSchema).optional(),
    untilS: timeS.optional(),
  }),
  z.strictObject({ type: z.literal('play'), speed: z.literal(SPEEDS) }),
  z.strictObject({ type: z.literal('pause') }),
  z.strictObject({ type: z.literal('next step') }),
  z.strictObject({ type: z.literal('act'), action: actionSchema }),
  z.strictObject({ type: z.literal('seek'), tS: timeS }),
  z.strictObject({ type: z.literal('live') }),
  z.strictObject({ type: z.literal('dispose') }),
]);
export type ToWorker = z.infer<typeof toWorkerSchema>;
