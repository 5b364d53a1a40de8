import { z } from 'zod';
import {
  arriveAtSchema,
  causesSchema,
  choiceShape,
  exerciseShape,
  skillSchema,
  toolsSchema,
} from './exercise-schema.ts';
import { expectationSchema, secondsSchema } from './start-pieces.ts';
import { paragraphSchema } from './text-schemas.ts';

const { question, options, right, why } = choiceShape(2);

/** Two minutes at a plant and one question, answered by a choice or by naming the cause. */
export const drillSchema = z
  .strictObject({
    ...exerciseShape,
    skill: skillSchema,
    question,
    options: options.optional(),
    right: right.optional(),
    why: why.optional(),
    claim: causesSchema('in place of options: faults that are taken as the answer'),
    limitS: secondsSchema(10, 'time to answer').default(120),
    tools: toolsSchema.default('all'),
    arriveAt: arriveAtSchema.default(0),
    debrief: paragraphSchema('how one sees it'),
    expect: expectationSchema.optional().meta({ description: 'what the tests hold its start to' }),
  })
  .meta({ title: 'Flamewright drill' });

export type Drill = z.output<typeof drillSchema>;
