/** What the worker that reasons tells the page. What the page tells it stands in to-reasoner.ts. */
import { z } from 'zod';
import type { FoundWay, Reasoning } from '../../diagnosis/index.ts';

const word = z.string().max(200);
const timeS = z.number().min(0);
const count = z.number().int().min(0);
const share = z.number();
const minutes = z.number();

/** Written out: the page does not load the diagnosis to check its words. */
const FOUND = ['by readings', 'by trying parts', 'not found'] as const satisfies FoundWay[];
const KINDS = [
  'arrive',
  'check',
  'watch',
  'ask',
  'work',
  'suspect',
  'claim',
  'withdraw',
] as const satisfies Reasoning['decisions'][number]['kind'][];

const partShareSchema = z.object({ part: word, share });
const toldSchema = z.object({
  check: word,
  moment: word,
  aspect: word,
  value: z.union([z.number(), word]),
  word,
});
const adviceSchema = z.object({
  check: word,
  moment: word,
  bits: z.number(),
  minutes,
  splits: z.array(z.object({ part: word, aspect: word, word })),
});
const decisionSchema = z.object({
  t: timeS,
  kind: z.enum(KINDS),
  what: word,
  way: word,
  moments: z.array(word),
  bits: z.number().nullable(),
  minutes,
  regretMinutes: minutes,
  redundant: z.boolean(),
  premature: z.boolean(),
  share: share.nullable(),
  refutedBy: z.array(toldSchema),
  told: z.array(toldSchema),
  before: z.array(partShareSchema),
  after: z.array(partShareSchema),
  best: adviceSchema.nullable(),
});
const claimSchema = z.object({
  part: word,
  t: timeS,
  share,
  supported: z.boolean(),
  pins: z.object({ speakingFor: count, against: count, neutral: count }),
});

export const reasoningSchema: z.ZodType<Reasoning> = z.object({
  decisions: z.array(decisionSchema),
  found: z.enum(FOUND),
  path: z.object({
    score: z.number(),
    bestMinutes: minutes,
    regretMinutes: minutes,
    redundant: count,
    premature: count,
  }),
  claims: z.array(claimSchema),
  calibration: z.object({ rankings: count, firstShare: share, distance: z.number() }).nullable(),
  board: z.array(
    partShareSchema.extend({
      speaksFor: z.array(toldSchema),
      speaksAgainst: z.array(toldSchema),
      ruledOut: z.boolean().optional(),
    }),
  ),
  next: z.array(adviceSchema),
  moments: z.array(count),
  ideal: z.array(
    z.object({
      check: word,
      moment: word,
      minutes,
      bits: z.number(),
      share,
      told: z.array(z.object({ aspect: word, word })),
    }),
  ),
  alike: z.array(word),
});

export const REASON_TROUBLES = [
  /** Neither kept on the device nor to be had: no network. */
  'atlas not loaded',
  'reasoning broke off',
] as const;
export type ReasonTrouble = (typeof REASON_TROUBLES)[number];

export const fromReasonerSchema = z.object({
  type: z.literal('reasoned'),
  ask: count,
  /** Null where there is trouble, and for a plant without an atlas. */
  reasoning: reasoningSchema.nullable(),
  trouble: z.enum(REASON_TROUBLES).nullable(),
  detail: z.string(),
  /** How many acts and entries it was made of. */
  upTo: z.object({ log: count, desk: count }),
});
export type FromReasoner = z.infer<typeof fromReasonerSchema>;
export type Reasoned = Omit<FromReasoner, 'type' | 'ask'>;
