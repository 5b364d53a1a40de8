/** What came of an exercise, as the map by skill takes it. When it was done stands with whoever keeps it. */
import { z } from 'zod';
import type { Guidance } from '../../../machines/job/index.ts';
import type { FoundWay } from '../../diagnosis/index.ts';
import { CONDUCT_WORDS, RESULT_KINDS, SKILL_ORDER } from '../../diagnosis/mastery/index.ts';

/** Written out: a page that keeps results has no use for the charts and the atlas that they come with. */
const GUIDANCE = ['guided', 'practice', 'assessment'] as const satisfies readonly Guidance[];
const FOUND = [
  'by readings',
  'by trying parts',
  'not found',
] as const satisfies readonly FoundWay[];

/** Harder than this nothing is, on the scale of ratings. */
const MOST_DIFFICULTY = 6;

const share = z.number().min(0).max(1);

export const exerciseResultSchema = z.strictObject({
  kind: z.enum(RESULT_KINDS),
  id: z.string().min(1).max(200),
  skills: z
    .array(z.enum(SKILL_ORDER))
    .min(1)
    .refine((skills) => new Set(skills).size === skills.length),
  difficulty: z.number().min(-MOST_DIFFICULTY).max(MOST_DIFFICULTY),
  guidance: z.enum(GUIDANCE).nullable(),
  hints: z.number().int().min(0).max(1000),
  outcome: share,
  conduct: z.enum(CONDUCT_WORDS).nullable(),
  /** What the outcome was made of; null where it is not known. */
  parts: z.strictObject({ found: z.enum(FOUND).nullable(), pathScore: share.nullable() }),
});
export type ExerciseResult = z.infer<typeof exerciseResultSchema>;
