import { z } from 'zod';
import { actionLogSchema } from './action-schema.ts';
import { drillSchema } from './drill-schema.ts';
import { jobSchema } from './job-schema.ts';
import { jsonText } from './json-text.ts';
import { lessonSchema } from './lesson-schema.ts';
import { plantSchema } from './plant-schema.ts';
import { profileSchema } from './profile-schema.ts';
import { quizSchema } from './quiz-schema.ts';
import { scenarioSchema } from './scenario-schema.ts';

const SCHEMAS: Readonly<Record<string, z.ZodType>> = {
  'plant.json': plantSchema,
  'profile.json': profileSchema,
  'scenario.json': scenarioSchema,
  'job.json': jobSchema,
  'drill.json': drillSchema,
  'lesson.json': lessonSchema,
  'quiz.json': quizSchema,
  'action-log.json': actionLogSchema,
};

/** The JSON Schemas for editors, by file name, as text ready to be written. */
export function jsonSchemas(): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(SCHEMAS).map(([name, schema]) => {
      // Draft 7 is what the usual YAML plug-ins of editors understand.
      const json = z.toJSONSchema(schema, { io: 'input', target: 'draft-7', reused: 'inline' });
      return [name, jsonText(json)];
    }),
  );
}
