import { z } from 'zod';
import { choiceShape, exerciseShape } from './exercise-schema.ts';
import { faultOrderSchema, secondsSchema, stepSchema } from './start-pieces.ts';
import { paragraphSchema } from './text-schemas.ts';

const MAX_STEPS = 40;
/** A learner chooses among three. */
const ANSWERS = 3;

const tryBreaking = z.strictObject({
  fault: faultOrderSchema.shape.fault,
  severity: faultOrderSchema.shape.severity,
  watch: paragraphSchema('what to keep an eye on; not what will be seen'),
});

const lessonStep = z.strictObject({
  step: stepSchema,
  say: paragraphSchema("what is worth saying beyond the machine's own words").optional(),
  ask: z.strictObject(choiceShape(ANSWERS, ANSWERS)).optional(),
  tryBreaking: tryBreaking.optional().meta({ description: 'a thing to break and put back here' }),
});

/** A guided start: it stops on entering each of its steps. */
export const lessonSchema = z
  .strictObject({
    ...exerciseShape,
    intro: paragraphSchema('what the learner is about to see'),
    steps: z.array(lessonStep).min(1).max(MAX_STEPS),
    outro: paragraphSchema('what to take away'),
    until: secondsSchema(1, 'the run ends here'),
  })
  .meta({ title: 'Flamewright lesson' });

export type Lesson = z.output<typeof lessonSchema>;
export type LessonStep = Lesson['steps'][number];
