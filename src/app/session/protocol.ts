/**
 * What the worker tells its page; what the page tells the worker stands in to-worker.ts.
 * Both ends check every message; one that does not fit is reported, never half used.
 */
import { z } from 'zod';
import type { TimedAction } from '../../engine/index.ts';
import { QUANTITY_KINDS, UNITS } from '../../quantity/index.ts';
import {
  benchSchema,
  heardSchema,
  lookReadingSchema,
  lookWhatSchema,
  meterSchema,
  minutesSchema,
  partSchema,
  proofSchema,
  settingSchema,
  sheetRowSchema,
  testPointSchema,
  toolSchema,
  verdictSchema,
  workFactsSchema,
} from './work-protocol.ts';

/** Without it the schemas would compile themselves with `eval`, which the page's own rules refuse. */
z.config({ jitless: true });

/** What moves a contact, as far as the plant file tells. */
const CONTACT_OPERATORS = [
  'push button',
  'stop button',
  'hand switch',
  'pressure',
  'temperature',
  'level',
  'position',
  'relay',
  'clock',
] as const;

/** The speeds that a page offers. */
export const SPEEDS = [1, 2, 5, 20] as const;
/** Times real time; a class has speeds of its own. */
export const speedSchema = z.number().min(0.1).max(64);
/** Times real time on the way to the next step. */
export const NEXT_STEP_SPEED = 60;

const timeS = z.number().min(0);
const word = z.string().max(200);

const channelSchema = z.object({
  id: word,
  unit: z.enum(UNITS),
  kind: z.enum(QUANTITY_KINDS),
  part: z.enum(['visible', 'hidden']),
});
const readingSchema = z.object({
  channel: word.nullable(),
  limit: z.number().nullable(),
  kind: z.enum(QUANTITY_KINDS),
  sense: z.enum(['above', 'below', 'at', 'made']),
});
const waitSchema = z.object({ input: word, wanted: z.boolean() });
const stepFactsSchema = z.object({
  step: word,
  purpose: word,
  waits: z.array(waitSchema),
  drives: z.array(word),
  /** Running out of this time ends in one of `failsAs`. */
  failLimitS: z.number().nullable(),
  /** The step lasts this long once its waits are met. */
  lastsS: z.number().nullable(),
  failsAs: z.array(word),
});
const faultFactsSchema = z.object({
  id: word,
  family: word,
  component: word,
  mechanism: z.string(),
  /** What the severity measures. */
  means: z.string(),
  unit: word,
  min: z.number(),
  max: z.number(),
  typical: z.number(),
});
const wiringFactsSchema = z.object({
  sources: z.array(
    z.object({
      live: word,
      neutral: word,
      volts: z.number(),
      kind: z.enum(['alternating', 'direct']),
    }),
  ),
  wires: z.array(word),
  elements: z.array(
    z.object({
      name: word,
      kind: word,
      operator: z.enum(CONTACT_OPERATORS).optional(),
      breaks: z.boolean().optional(),
      called: word.optional(),
    }),
  ),
  rungs: z.array(z.array(word)),
});
const cockFactsSchema = z.object({ id: word, channel: word });

export const factsSchema = z.object({
  scenario: z.object({
    id: word,
    title: z.string(),
    summary: z.string(),
    caution: z.string().nullable(),
    plant: word,
  }),
  plantTitle: z.string(),
  channels: z.array(channelSchema),
  frameS: z.number().positive(),
  readings: z.record(word, readingSchema),
  steps: z.array(stepFactsSchema),
  /** Words behind the packed logic channels, in the order of their numbers and bits. */
  stepNames: z.array(word),
  inputs: z.array(word),
  /** Those of the inputs that this plant has. */
  plantInputs: z.array(word),
  hasLimitReset: z.boolean(),
  commands: z.array(word),
  targets: z.array(word),
  faults: z.array(faultFactsSchema),
  cocks: z.array(cockFactsSchema),
  wiring: wiringFactsSchema,
  /** Set when the scenario limits what may be done; null when everything may be. */
  allow: z.array(word).nullable(),
  work: workFactsSchema,
  /** When the learner comes, s; the plant's own past lies before. */
  arriveS: timeS,
  /** Everything a person may act on, whatever is wrong with it. */
  parts: z.array(partSchema),
  /** The dials as they stood when the run was opened. */
  settings: z.array(settingSchema),
  /** The commissioning sheet, where there is work to do on the plant. */
  sheet: z.array(sheetRowSchema),
  lookPlaces: z.array(lookWhatSchema),
  tools: z.array(toolSchema),
  testPoints: z.array(testPointSchema),
  /** Channels that the plant shows by itself, without a tool. */
  panel: z.array(word),
  /** What the people at the plant can be asked. */
  topics: z.array(word),
});
export type Facts = z.infer<typeof factsSchema>;
export type WiringFacts = z.infer<typeof wiringFactsSchema>;
export type StepFacts = z.infer<typeof stepFactsSchema>;
export type FaultFacts = z.infer<typeof faultFactsSchema>;
export type Reading = z.infer<typeof readingSchema>;

/** The worker let this action in by its full schema; here it only has to be an action. */
const pastActionSchema = z.custom<TimedAction>(
  (value) => z.looseObject({ t: timeS, type: word }).safeParse(value).success,
);
const eventSchema = z.discriminatedUnion('type', [
  z.object({ t: timeS, type: z.literal('step'), step: word, rule: word.optional() }),
  z.object({ t: timeS, type: z.literal('proved'), what: word }),
  z.object({ t: timeS, type: z.literal('lost'), what: word }),
  z.object({ t: timeS, type: z.literal('command'), device: word, to: word }),
  z.object({ t: timeS, type: z.literal('lockout'), cause: word, step: word }),
  z.object({ t: timeS, type: z.literal('reset'), count: z.number() }),
  z.object({ t: timeS, type: z.literal('action'), action: pastActionSchema }),
  z.object({
    t: timeS,
    type: z.literal('fault'),
    fault: word,
    severity: z.number(),
    on: z.boolean(),
  }),
  z.object({
    t: timeS,
    type: z.literal('end'),
    step: word,
    lockout: word.nullable(),
    hash: word,
  }),
]);
export type HistoryEvent = z.infer<typeof eventSchema>;

export const MODES = ['paused', 'playing', 'to next step'] as const;
const statusSchema = z.object({
  /** How many messages of the page the worker had taken in when it said this. */
  answered: z.number().int().min(0),
  mode: z.enum(MODES),
  speed: speedSchema,
  /** Where the run stands; behind `headS` while it is being run again after a rewind. */
  timeS,
  headS: timeS,
  hash: word,
  note: z.enum(['no step change', 'end of run']).nullable(),
  /** A class has stopped it: nothing can be done or run here. */
  frozen: z.boolean(),
  /** While it follows a run elsewhere: how far it is behind, s, and how often it was found to differ. */
  follows: z.strictObject({ behindS: z.number(), differed: z.number().int() }).nullable(),
});
export type Status = z.infer<typeof statusSchema>;

/** What stood at the plant and on the tools when a batch was sent; a part that did not change is left out. */
const atThePlantSchema = z.object({
  bench: benchSchema.optional(),
  settings: z.array(settingSchema).optional(),
  meters: z.array(meterSchema).optional(),
  minutes: minutesSchema.nullable().optional(),
});
export type AtThePlant = z.infer<typeof atThePlantSchema>;

const answerSchema = z.discriminatedUnion('of', [
  z.object({ of: z.literal('look'), reading: lookReadingSchema.nullable() }),
  z.object({ of: z.literal('listen'), heard: z.array(heardSchema) }),
  z.object({ of: z.literal('smell'), share: z.number() }),
  z.object({ of: z.literal('proof'), proof: proofSchema }),
  z.object({ of: z.literal('judge'), verdict: verdictSchema }),
  z.object({ of: z.literal('nothing'), why: z.string() }),
]);
export type Answer = z.infer<typeof answerSchema>;

const floats = z.custom<Float64Array<ArrayBuffer>>((value) => value instanceof Float64Array);

/** Why nothing came of a button: no mistake of anyone's. */
export const REFUSALS = ['frozen by class', 'follows the class'] as const;
export type Refusal = (typeof REFUSALS)[number];

export const FAILURES = [
  'unknown scenario',
  'scenario does not load',
  'message not understood',
  'action refused',
  'replay differs',
  'simulation stopped',
  /** Saved work of a setup that an update has changed; it is not opened. */
  'exercise changed',
  /** Saved work came back as another run: opened all the same, and said. */
  'work differs',
] as const;
export type Failure = (typeof FAILURES)[number];

export const toPageSchema = z.discriminatedUnion('type', [
  z.object({ type: z.literal('opened'), facts: factsSchema }),
  /** Frames and events from these indices on; whatever was there before is replaced. */
  z.object({
    type: z.literal('batch'),
    firstFrame: z.number().int().min(0),
    frames: floats,
    firstEvent: z.number().int().min(0),
    events: z.array(eventSchema),
    status: statusSchema,
    plant: atThePlantSchema.optional(),
  }),
  /** Everything done so far, whenever that changed, with where the run stands: enough to bring it back. */
  z.object({
    type: z.literal('log'),
    log: z.array(pastActionSchema),
    headS: timeS,
    hash: word,
  }),
  z.object({ type: z.literal('answer'), ask: z.number().int(), answer: answerSchema }),
  /** Something was done after a rewind: what came later is gone. */
  z.object({
    type: z.literal('cut'),
    frames: z.number().int().min(0),
    events: z.number().int().min(0),
  }),
  z.object({ type: z.literal('refused'), why: z.enum(REFUSALS) }),
  z.object({ type: z.literal('expected'), frames: floats }),
  z.object({ type: z.literal('failed'), failure: z.enum(FAILURES), detail: z.string() }),
]);
export type ToPage = z.infer<typeof toPageSchema>;
