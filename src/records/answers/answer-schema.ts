/** One answer as it is kept; what comes in by a file is checked by it too. */
import { z } from 'zod';
import { SKILL_ORDER } from '../../diagnosis/mastery/index.ts';
import { CONFIDENCES, type GivenAnswer, ITEM_KINDS, QUIZ_MODES } from '../../quiz/index.ts';

/** Harder than this nothing is, on the scale of ratings. */
const MOST_DIFFICULTY = 6;
/** More places than any item has. */
const MOST_PLACES = 20;

export const instant = z.iso.datetime();
export const itemName = z.string().min(1).max(200);
export const skill = z.enum(SKILL_ORDER);
export const mode = z.enum(QUIZ_MODES);
export const confidence = z.literal(CONFIDENCES);

const place = z
  .number()
  .int()
  .min(0)
  .max(MOST_PLACES - 1);

export const responseSchema = z.discriminatedUnion('is', [
  z.strictObject({ is: z.literal('choice'), option: place }),
  z.strictObject({ is: z.literal('order'), order: z.array(place).max(MOST_PLACES) }),
  z.strictObject({ is: z.literal('number'), value: z.number() }),
]);

export const answerSchema = z.strictObject({
  item: itemName,
  kind: z.enum(ITEM_KINDS),
  plant: z.string().max(100),
  topic: z.string().min(1).max(200),
  skills: z
    .array(skill)
    .min(1)
    .refine((skills) => new Set(skills).size === skills.length),
  difficulty: z.number().min(-MOST_DIFFICULTY).max(MOST_DIFFICULTY),
  mode,
  quizStartedISO: instant,
  atISO: instant,
  response: responseSchema,
  right: z.boolean(),
  confidence,
}) satisfies z.ZodType<GivenAnswer>;
