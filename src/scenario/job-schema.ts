import { z } from 'zod';
import { ASK_TOPICS, SKILLS } from '../../machines/job/index.ts';
import { scriptedActionSchema } from './action-schema.ts';
import {
  arriveAtSchema,
  causesSchema,
  exerciseShape,
  skillSchema,
  toolsSchema,
  topicSchema,
} from './exercise-schema.ts';
import { expectationSchema } from './start-pieces.ts';
import { lineSchema, paragraphSchema, titleSchema } from './text-schemas.ts';

const MAX_ANSWERS = 2 * ASK_TOPICS.length;
const MAX_ROWS = 20;
const MAX_MENDS = 20;
const TRUTHS = ['true', 'partial', 'mistaken'] as const;

const site = z.strictObject({
  name: titleSchema('the site, invented'),
  where: lineSchema('where the boiler stands, and how one gets there'),
});

const card = z.strictObject({
  complaint: paragraphSchema('why they called, in their own plain words'),
  saw: paragraphSchema('what they saw on the panel or at the plant'),
  by: titleSchema('who called: a name and what they do there'),
  when: titleSchema('when they called'),
});

const answer = z.strictObject({
  topic: topicSchema,
  says: paragraphSchema('the answer, in plain words; no fault is named'),
  who: titleSchema('who answers, where it is not the one who called').optional(),
  truth: z.enum(TRUTHS).meta({ description: 'whether it is so; shown in the debrief only' }),
});

const sheetRow = z.strictObject({
  what: titleSchema('what was measured'),
  value: titleSchema('the value as it was written down, in quotes'),
  unit: titleSchema('its unit').optional(),
});

const sheet = z.strictObject({
  date: titleSchema('when the last visit was'),
  by: titleSchema('who came'),
  rows: z.array(sheetRow).min(1).max(MAX_ROWS),
  remarks: paragraphSchema('what they wrote below').optional(),
});

const userError = z.strictObject({
  what: lineSchema('what someone did, or left undone'),
  mend: z
    .array(scriptedActionSchema)
    .min(1)
    .max(MAX_MENDS)
    .meta({ description: 'acts after arriveAt that put it right' }),
});

/** A call-out: a hidden scenario and a card, from the first word of the caller to the debrief. */
export const jobSchema = z
  .strictObject({
    ...exerciseShape,
    level: z.int().min(1).max(5).meta({ description: '1 easy to 5 hard' }),
    skills: z.array(skillSchema).min(1).max(SKILLS.length),
    site,
    card,
    people: z.array(answer).max(MAX_ANSWERS).default([]),
    sheet: sheet.optional().meta({ description: "the last visit's values" }),
    tools: toolsSchema.default('all'),
    budgetMinutes: z.number().min(5).max(600).meta({ description: 'time a good visit takes, min' }),
    arriveAt: arriveAtSchema,
    cause: causesSchema('faults that are taken as the cause; all of the job if left out'),
    accept: causesSchema('other faults that are also taken as the cause'),
    userError: userError.optional().meta({ description: 'in place of faults' }),
    debrief: paragraphSchema('what a good technician would have done, and from what'),
    expect: expectationSchema.meta({ description: 'what the tests hold its first start to' }),
  })
  .meta({ title: 'Flamewright job' });

export type Job = z.output<typeof jobSchema>;
