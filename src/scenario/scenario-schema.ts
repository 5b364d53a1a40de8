import { z } from 'zod';
import { ACTION_TYPES, MAX_ACTIONS, scriptedActionSchema } from './action-schema.ts';
import { expectationSchema, secondsSchema } from './start-pieces.ts';
import { startShape } from './start-shape.ts';
import { idSchema, paragraphSchema, titleSchema } from './text-schemas.ts';

export const scenarioSchema = z
  .strictObject({
    id: idSchema('the name of the scenario'),
    title: titleSchema('what a list shows'),
    plant: idSchema('the plant it runs on'),
    profile: idSchema("a practice profile other than the plant's own").optional(),
    summary: paragraphSchema('what is going on'),
    teaches: paragraphSchema('what someone understands afterwards').optional(),
    ...startShape,
    allow: z
      .array(z.enum(ACTION_TYPES))
      .max(ACTION_TYPES.length)
      .default([...ACTION_TYPES])
      .meta({ description: 'what a learner may do' }),
    actions: z.array(scriptedActionSchema).max(MAX_ACTIONS).default([]),
    until: secondsSchema(1, 'the run ends here'),
    expect: expectationSchema.meta({ description: 'what the tests hold this scenario to' }),
  })
  .meta({ title: 'Flamewright scenario' });

export type Scenario = z.output<typeof scenarioSchema>;
