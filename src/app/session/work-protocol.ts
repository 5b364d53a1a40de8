/**
 * What page and worker say to each other about an exercise: the plant as hands, eyes and
 * tools find it, and what comes of it at the end.
 */
import { z } from 'zod';
import type {
  ConductFinding,
  Message,
  MinutesUsed,
  Proof,
  SheetRow,
  TestPoint,
  Tool,
  ToolReading,
  ToolUse,
} from '../../bench/index.ts';
import type {
  Bench,
  Heard,
  LookReading,
  LookWhat,
  PlantPart,
  RepairWay,
  Setting,
} from '../../engine/index.ts';
import type { Verdict } from '../../judging/work/index.ts';
import { QUANTITY_KINDS, UNITS } from '../../quantity/index.ts';

export type { ClaimVerdict, NeedlessWork, Verdict } from '../../judging/work/index.ts';

export const WORK_KINDS = ['watch', 'job', 'drill', 'lesson'] as const;
export type WorkKind = (typeof WORK_KINDS)[number];
/** Besides work there is the start that a quiz item is about: looked at, never worked on or kept. */
export const RUN_KINDS = [...WORK_KINDS, 'quiz'] as const;
export type RunKind = (typeof RUN_KINDS)[number];

const word = z.string().max(200);
const timeS = z.number().min(0);

/** Words of the engine. The page does not load the engine to check them; the worker knows them. */
const wayOf = word as unknown as z.ZodType<RepairWay>;
export const lookWhatSchema = word as unknown as z.ZodType<LookWhat>;
const heardWhatSchema = word as unknown as z.ZodType<Heard['what']>;
const unitSchema = z.enum(UNITS);

/** A sentence by its code; the words stand in the catalogue. */
export const messageSchema: z.ZodType<Message> = z.lazy(() =>
  z.object({ code: word, params: z.record(word, messageValueSchema).optional() }),
) as unknown as z.ZodType<Message>;
const messageValueSchema = z.union([
  z.string().max(4000),
  z.number(),
  messageSchema,
  z.array(z.string()),
]);

export const partSchema = z.object({
  part: word,
  ways: z.array(wayOf),
  opens: z.enum(['gas', 'water']).nullable(),
  electrical: z.boolean(),
  minutes: z.record(word, z.number()) as z.ZodType<PlantPart['minutes']>,
  cost: z.number(),
}) satisfies z.ZodType<PlantPart>;

export const settingSchema = z.object({
  part: word,
  setting: word,
  unit: unitSchema,
  min: z.number(),
  max: z.number(),
  value: z.number(),
}) satisfies z.ZodType<Setting>;

export const toolSchema = z.object({
  id: word,
  name: messageSchema,
  measures: messageSchema,
  ranges: z.array(z.object({ id: word, name: messageSchema })),
  other: z.enum(['never', 'may', 'must']),
  minutesToConnect: z.number(),
  caution: messageSchema.nullable(),
}) as unknown as z.ZodType<Tool>;

/** A tool in use: where it is connected and how it is set. */
export const toolUseSchema = z.strictObject({
  tool: word,
  place: word,
  other: word.optional(),
  range: word.optional(),
}) as unknown as z.ZodType<ToolUse>;

const shownNumber = {
  /** SI where `kind` is given, else in `unit`. */
  value: z.number().nullable(),
  kind: z.enum(QUANTITY_KINDS).nullable(),
  unit: word,
  /** The digits as the tool shows them. */
  shown: word,
};
export const toolReadingSchema = z.object({
  ...shownNumber,
  flags: z.array(word),
  steady: z.boolean(),
  warn: messageSchema.optional(),
  note: messageSchema.optional(),
  lines: z.array(z.object({ ...shownNumber, what: messageSchema })).optional(),
  words: z.array(messageSchema).optional(),
}) as unknown as z.ZodType<ToolReading>;

/** A connected tool with what it shows; `reading` is null where it cannot be connected. */
export const meterSchema = z.object({
  use: toolUseSchema,
  reading: toolReadingSchema.nullable(),
  /** Why nothing is read there, and the mend; null where something is, or while tools are not there yet. */
  issue: z.object({ found: messageSchema, mend: messageSchema }).nullable(),
});
export type Meter = z.infer<typeof meterSchema>;

export const testPointSchema = z.object({
  id: word,
  tools: z.array(word),
  label: messageSchema,
  where: z.union([
    z.strictObject({ item: word }),
    z.strictObject({ wire: word }),
    z.strictObject({ terminal: word, wire: word }),
  ]),
}) as unknown as z.ZodType<TestPoint>;

export const sheetRowSchema = z.object({
  what: messageSchema,
  value: z.number(),
  unit: unitSchema,
  kind: z.enum(QUANTITY_KINDS).nullable(),
}) satisfies z.ZodType<SheetRow>;

export const workFactsSchema = z.object({
  kind: z.enum(RUN_KINDS),
  /** False: the plant cannot be taken back; looking back only shows the record. */
  rewinds: z.boolean(),
  /** Actions that may be done here; null when all may. */
  allow: z.array(word).nullable(),
  seed: z.number(),
  /** Of the setup as it is now; saved work of another one no longer fits. */
  setupHash: word,
});

export const benchSchema = z.object({
  locks: z.array(word),
  jumpers: z.array(z.object({ from: word, to: word })),
  strokes: z.array(z.object({ servo: word, deg: z.number() })),
  opened: z.array(z.object({ part: word, t: timeS })),
  supplyOn: z.boolean(),
  cocks: z.array(z.object({ id: word, opening: z.number() })),
}) satisfies z.ZodType<Bench>;
export type BenchState = z.infer<typeof benchSchema>;

export const lookReadingSchema = z.object({
  what: lookWhatSchema,
  values: z.record(word, z.number()),
  words: z.array(word),
  needsOpening: z.boolean(),
}) as unknown as z.ZodType<LookReading>;
export const heardSchema = z.object({
  what: heardWhatSchema,
  loudness: z.number(),
}) satisfies z.ZodType<Heard>;

export const minutesSchema = z.object({
  total: z.number(),
  lines: z.array(
    z.object({ t: timeS, what: messageSchema, minutes: z.number(), cost: z.number() }),
  ),
}) as unknown as z.ZodType<MinutesUsed>;

const findingSchema = z.object({
  rule: word,
  t: timeS,
  what: messageSchema,
  /** The state of the plant that makes it so. */
  state: messageSchema,
  severity: z.enum(['unsafe', 'careless']),
}) as unknown as z.ZodType<ConductFinding>;

export const proofSchema = z.object({
  items: z.array(z.object({ id: word, met: z.boolean(), t: timeS.nullable(), why: messageSchema })),
  proved: z.boolean(),
}) as unknown as z.ZodType<Proof>;

const truthSchema = z.object({
  faults: z.array(
    z.object({
      id: word,
      mechanism: z.string(),
      component: word,
      repair: z.string(),
      severity: z.number(),
    }),
  ),
});

const claimVerdictSchema = z.object({
  part: word,
  right: z.boolean(),
  supported: z.boolean(),
  another: z.boolean(),
  fault: word.nullable(),
});

const needlessWorkSchema = z.object({
  t: timeS,
  part: word,
  way: wayOf,
  minutes: z.number(),
  cost: z.number(),
});

/** What comes of the work. */
export const verdictSchema: z.ZodType<Verdict> = z.object({
  conduct: z.array(findingSchema),
  minutes: minutesSchema,
  proof: proofSchema,
  truth: truthSchema,
  standing: z.array(word),
  held: z.object({
    held: z.boolean(),
    forS: timeS,
    lockout: word.nullable(),
    ran: z.boolean(),
  }),
  claims: z.array(claimVerdictSchema),
  missed: z.array(word),
  needless: z.array(needlessWorkSchema),
});
