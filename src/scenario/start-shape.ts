import { z } from 'zod';
import { MAX_SEED } from './bounds.ts';
import {
  faultOrderSchema,
  initialSchema,
  loadPointSchema,
  MAX_FAULTS,
  MAX_LOAD_POINTS,
} from './start-pieces.ts';
import { paragraphSchema } from './text-schemas.ts';

/** How a run begins, be it watched or worked at. */
export const startShape = {
  caution: paragraphSchema('what could hurt someone if this were a real plant').optional(),
  seed: z.int().min(0).max(MAX_SEED).default(1).meta({ description: 'seed of all chance' }),
  initial: initialSchema,
  load: z.array(loadPointSchema).max(MAX_LOAD_POINTS).default([]),
  faults: z.array(faultOrderSchema).max(MAX_FAULTS).default([]),
};
