import { z } from 'zod';
import {
  ASK_TOPICS,
  type AskTopic,
  SKILLS,
  type Skill,
  TOOL_IDS,
  type ToolId,
} from '../../machines/job/index.ts';
import { MAX_ACTIONS, scriptedActionSchema } from './action-schema.ts';
import { faultOrderSchema, secondsSchema } from './start-pieces.ts';
import { startShape } from './start-shape.ts';
import { idSchema, lineSchema, titleSchema } from './text-schemas.ts';

const MAX_OPTIONS = 5;

/** What jobs, drills and lessons have in common: a plant, its condition and its own past. */
export const exerciseShape = {
  id: idSchema('the name of the exercise; it must not give the fault away'),
  title: titleSchema('what a list shows; it must not give the fault away'),
  plant: idSchema('the plant it runs on'),
  profile: idSchema("a practice profile other than the plant's own").optional(),
  ...startShape,
  actions: z
    .array(scriptedActionSchema)
    .max(MAX_ACTIONS)
    .default([])
    .meta({ description: 'what people did at the plant before the learner comes' }),
};

export const arriveAtSchema = secondsSchema(
  0,
  'the run is taken to this moment before the learner comes',
);

export const skillSchema: z.ZodType<Skill> = z
  .enum(SKILLS)
  .meta({ description: 'what the exercise trains' });

export const topicSchema: z.ZodType<AskTopic> = z
  .enum(ASK_TOPICS)
  .meta({ description: 'what the learner asks about' });

export const toolsSchema: z.ZodType<readonly ToolId[] | 'all'> = z
  .union([z.literal('all'), z.array(z.enum(TOOL_IDS)).max(TOOL_IDS.length)])
  .meta({ description: 'what the learner may take along' });

export const causesSchema = (description: string) =>
  z.array(faultOrderSchema.shape.fault).min(1).max(20).optional().meta({ description });

/** A question with one right answer; every answer has the reason why it is right or wrong. */
export function choiceShape(least: number, most = MAX_OPTIONS) {
  const texts = (doc: string) =>
    z.array(lineSchema(doc)).min(least).max(most).meta({ description: doc });
  return {
    question: lineSchema('what is asked'),
    options: texts('an answer to choose'),
    right: z
      .int()
      .min(0)
      .max(most - 1)
      .meta({ description: 'which answer is right, counted from 0' }),
    why: texts('why the answer of the same place is right or wrong'),
  };
}
