/** What the page tells its worker. Kept apart, so that the page itself does not load the engine. */
import { z } from 'zod';
import { LOOK_WHATS } from '../../engine/index.ts';
import { actionSchema, deskSchema, timedActionSchema } from '../../judging/logs/index.ts';
import { shownItemSchema } from './item-run-schema.ts';
import { MODES, speedSchema } from './protocol.ts';
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

/** Where a run elsewhere has come to. The log is told as what changed of the one told before. */
const toldSchema = z.strictObject({
  keep: z.number().int().min(0),
  add: z.array(timedActionSchema),
  headS: timeS,
  /** Of the run at `headS`, where it is known. */
  hash: z.string().max(200).nullable(),
  mode: z.enum(MODES),
  speed: speedSchema,
});
export type ToldChange = z.infer<typeof toldSchema>;

export const toWorkerSchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('open'),
    kind: z.enum(RUN_KINDS),
    id: z.string().max(200),
    /** With the kind `quiz`, where it takes the place of a file of the library. */
    item: shownItemSchema.optional(),
    /** A small library laid over the shipped one; checked by its own schemas where it is opened. */
    given: z.unknown().optional(),
    /** In place of the exercise's own. */
    seed: z.number().int().min(0).optional(),
    /** It follows a run elsewhere from the beginning. */
    follow: toldSchema.optional(),
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
  z.strictObject({ type: z.literal('play'), speed: speedSchema }),
  z.strictObject({ type: z.literal('pause') }),
  z.strictObject({ type: z.literal('next step'), ordered: z.literal(true).optional() }),
  z.strictObject({
    type: z.literal('act'),
    action: actionSchema,
    /** By the class: done whatever the exercise lets a learner do, and at the head of the run. */
    ordered: z.literal(true).optional(),
  }),
  /** By the class: nothing can be done or run until it is off again. */
  z.strictObject({ type: z.literal('freeze'), on: z.boolean() }),
  /** What was done from then on is gone, and there is the head of the run. */
  z.strictObject({ type: z.literal('cut to'), tS: timeS }),
  z.strictObject({ type: z.literal('follow'), told: toldSchema }),
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
