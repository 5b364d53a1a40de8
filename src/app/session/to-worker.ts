/** What the page tells its worker. Kept apart, so that the page itself does not load the engine. */
import { z } from 'zod';
import { LOOK_WHATS } from '../../engine/index.ts';
import { deskSchema } from '../work/desk-schema.ts';
import { actionSchema, timedActionSchema } from './action-schema.ts';
import { shownItemSchema } from './item-run-schema.ts';
import { SPEEDS } from './protocol.ts';
import { RUN_KINDS, toolUseSchema } from './work-protocol.ts';

const timeS = z.number().min(0);
/** More meters than a plant has places for. */
const MAX_METERS = 40;

const questionSchema = z.discriminatedUnion('of', [
  z.strictObject({ of: z.literal('look'), what: z.enum(LOOK_WHATS) }),
  z.strictObject({ of: z.literal('listen') }),
  z.strictObject({ of: z.literal('smell') }),
  z.strictObject({ of: z.literal('proof'), desk: deskSchema }),
  z.strictObject({ of: z.literal('judge'), desk: deskSchema }),
]);
export type Question = z.infer<typeof questionSchema>;

export const STOPS = ['each step'] as const;

export const toWorkerSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('open'),
    kind: z.enum(RUN_KINDS),
    id: z.string().max(200),
    /** With the kind `quiz`, where it takes the place of a file of the library. */
    item: shownItemSchema.optional(),
    /** What was done before, when an earlier run is taken up again. */
    log: z.array(timedActionSchema).optional(),
    /** How far it had come; left out: to where the learner comes. */
    untilS: timeS.optional(),
    /** Done, but not yet in the log when the page was closed: done now. */
    pending: z.array(actionSchema).optional(),
    /** Of the setup that the log belongs to, and of the run at `untilS`; checked where given. */
    setupHash: z.string().max(200).optional(),
    hash: z.string().max(200).optional(),
  }),
  z.strictObject({ type: z.literal('play'), speed: z.literal(SPEEDS) }),
  z.strictObject({ type: z.literal('pause') }),
  z.strictObject({ type: z.literal('next step') }),
  z.strictObject({ type: z.literal('act'), action: actionSchema }),
  z.strictObject({ type: z.literal('seek'), tS: timeS }),
  z.strictObject({ type: z.literal('live') }),
  z.strictObject({ type: z.literal('stop at'), what: z.enum(STOPS).nullable() }),
  /** Back to just before the last fault that was put in by hand. */
  z.strictObject({ type: z.literal('put back') }),
  z.strictObject({ type: z.literal('meters'), uses: z.array(toolUseSchema).max(MAX_METERS) }),
  /** What is on paper so far, for the minutes that it took. */
  z.strictObject({ type: z.literal('desk'), entries: deskSchema }),
  z.strictObject({ type: z.literal('ask'), ask: z.number().int(), question: questionSchema }),
  z.strictObject({ type: z.literal('dispose') }),
]);
export type ToWorker = z.infer<typeof toWorkerSchema>;
export type Opening = Omit<Extract<ToWorker, { type: 'open' }>, 'type'>;
