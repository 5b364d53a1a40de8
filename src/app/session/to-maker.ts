/** What the page tells the worker that makes quiz items. */
import { z } from 'zod';

export const toMakerSchema = z.strictObject({
  type: z.literal('make item'),
  ask: z.number().int().min(0),
  id: z.string().max(200),
  /** Address of the folder of the atlases. */
  atlases: z.string().max(2000),
});
export type ToMaker = z.infer<typeof toMakerSchema>;
