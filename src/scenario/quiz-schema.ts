import { z } from 'zod';
import { choiceShape, skillSchema } from './exercise-schema.ts';
import { faultOrderSchema } from './start-pieces.ts';
import { idSchema, lineSchema, paragraphSchema, titleSchema } from './text-schemas.ts';

/** What a written item may be about; the other kinds are made from runs alone. */
export const WRITTEN_KINDS = [
  'cause',
  'next check',
  'ruled out',
  'what follows',
  'conduct',
] as const;

const MOST_ITEMS = 100;
const MOST_READINGS = 6;
const { question, options, right, why } = choiceShape(2);

const readingSchema = z
  .strictObject({
    check: lineSchema('what is done: a tool, `look`, `listen`, `smell`, `volts`, `history` …'),
    place: z.string().max(80).default('').meta({ description: 'where: a test point, a wire …' }),
    other: z.string().max(80).default('').meta({ description: 'the second place of two leads' }),
    when: lineSchema('a step of the start, or `at rest`, `lockout`, `standing`, `isolated`'),
  })
  .meta({ description: 'one thing that was read' });

const evidenceSchema = z
  .strictObject({
    fault: faultOrderSchema.shape.fault,
    severity: faultOrderSchema.shape.severity,
    causes: z
      .array(faultOrderSchema.shape.fault)
      .min(2)
      .max(5)
      .meta({ description: 'the fault that each option names, in their order' }),
    readings: z.array(readingSchema).max(MOST_READINGS).default([]),
  })
  .meta({
    description:
      'what is wrong at the plant and what is read of it: then the item is proved by running it',
  });

const itemSchema = z
  .strictObject({
    id: idSchema('the name of the item within its file'),
    kind: z.enum(WRITTEN_KINDS).meta({ description: 'what is asked for' }),
    topic: lineSchema('what it is about, for coming back to it').optional(),
    skills: z.array(skillSchema).min(1).max(3),
    level: z.int().min(1).max(5).default(3).meta({ description: '1 easy to 5 hard' }),
    plant: idSchema('the plant it is about').optional(),
    caution: paragraphSchema('where the real act can hurt someone').optional(),
    tells: paragraphSchema('the situation').optional(),
    question,
    options,
    right,
    why,
    evidence: evidenceSchema.optional(),
  })
  .meta({ description: 'one question with its answer and the reasons' });

/** Questions that an instructor wrote. */
export const quizSchema = z
  .strictObject({
    id: idSchema('the name of the file in ids of its items'),
    title: titleSchema('what a list shows'),
    items: z.array(itemSchema).min(1).max(MOST_ITEMS),
  })
  .meta({ title: 'Flamewright quiz items' });

export type QuizFile = z.output<typeof quizSchema>;
export type WrittenItem = QuizFile['items'][number];
