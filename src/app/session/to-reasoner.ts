/** What the page tells the worker that reasons. Kept apart, so that the page itself does not load the engine. */
import { z } from 'zod';
import { deskSchema, timedActionSchema } from '../../judging/logs/index.ts';

export const REASONED_KINDS = ['job', 'drill'] as const;

export const toReasonerSchema = z.strictObject({
  type: z.literal('reason'),
  ask: z.number().int(),
  kind: z.enum(REASONED_KINDS),
  id: z.string().max(200),
  /** As the run was opened with. */
  given: z.unknown().optional(),
  seed: z.number().int().min(0).optional(),
  log: z.array(timedActionSchema),
  desk: deskSchema,
  untilS: z.number().min(0),
  /** Address of the folder of the atlases. */
  atlases: z.string().max(2000),
});
export type ToReasoner = z.infer<typeof toReasonerSchema>;
