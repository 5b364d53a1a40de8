/** Entries of a quiz as they come through a door: kept on the device, or handed in. */
import { z } from 'zod';
import type { QuizEntry } from '../../../machines/quiz/index.ts';
import {
  confidence,
  instant,
  itemName,
  mode,
  responseSchema,
} from '../../records/answers/index.ts';

export const MOST_QUIZ_PLACES = 200;
export const MOST_QUIZ_ENTRIES = 2000;

const atISO = instant;
const place = z.number().int().min(0).max(MOST_QUIZ_PLACES);

export const quizEntrySchema = z.discriminatedUnion('type', [
  z.strictObject({
    type: z.literal('begin'),
    atISO,
    mode,
    seed: z.number().int(),
    items: z.array(itemName).min(1).max(MOST_QUIZ_PLACES),
  }),
  z.strictObject({
    type: z.literal('answer'),
    atISO,
    place,
    response: responseSchema,
    confidence,
  }),
  z.strictObject({ type: z.literal('next'), atISO }),
  z.strictObject({ type: z.literal('pass'), atISO, place }),
  z.strictObject({ type: z.literal('go to'), atISO, place }),
  z.strictObject({ type: z.literal('finish'), atISO }),
]) satisfies z.ZodType<QuizEntry>;
