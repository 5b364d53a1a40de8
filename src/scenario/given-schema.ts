/** Data of a library as they come through a door that is no file: from a server, from an editor. */
import { z } from 'zod';
import { drillSchema } from './drill-schema.ts';
import { jobSchema } from './job-schema.ts';
import type { LearnerLibrary } from './learner-part.ts';
import { lessonSchema } from './lesson-schema.ts';
import { plantSchema } from './plant-schema.ts';
import { profileSchema } from './profile-schema.ts';
import { quizSchema } from './quiz-schema.ts';
import { scenarioSchema } from './scenario-schema.ts';

/** More of one kind than a class has use for. */
const MOST = 200;

/** What the tests expect may have been left in; a page has no use for it. */
function listOf(schema: z.ZodType) {
  return z.array(z.preprocess(withoutExpectation, schema)).max(MOST).exactOptional();
}

const givenSchema = z.strictObject({
  plants: listOf(plantSchema),
  profiles: listOf(profileSchema),
  scenarios: listOf(scenarioSchema.omit({ expect: true })),
  jobs: listOf(jobSchema.omit({ expect: true })),
  drills: listOf(drillSchema.omit({ expect: true })),
  lessons: listOf(lessonSchema),
  quizzes: listOf(quizSchema),
}) as unknown as z.ZodType<Partial<LearnerLibrary>>;

export type GivenRead =
  | { readonly ok: true; readonly given: Partial<LearnerLibrary> }
  | { readonly ok: false; readonly place: string; readonly message: string };

/**
 * Checks each thing by the schema of its kind. Whether names lead somewhere is for the checks of
 * files, which know the place of a mistake; a run of what does not fit says so when it is made.
 */
export function readGiven(data: unknown): GivenRead {
  const parsed = givenSchema.safeParse(data);
  if (parsed.success) return { ok: true, given: parsed.data };
  const [first] = parsed.error.issues;
  return { ok: false, place: first?.path.join('.') ?? '', message: first?.message ?? '' };
}

function withoutExpectation(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || !('expect' in value)) return value;
  const { expect: _, ...rest } = value;
  return rest;
}
