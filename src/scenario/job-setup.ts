import type { RunSetup } from '../engine/index.ts';
import type { LearnerLibrary } from './learner-part.ts';
import { type RunChoices, setupOfStart } from './setup-of.ts';

export const EXERCISE_KINDS = ['job', 'drill', 'lesson'] as const;
export type ExerciseKind = (typeof EXERCISE_KINDS)[number];
/** A run that is taken to `arriveAt`, in s, before the learner sees the plant. */
export type ExerciseSetup = RunSetup & { readonly arriveAt: number };

/** Everything that makes the run of a job, drill or lesson; null when the library has no such one. */
export function jobSetup(
  library: LearnerLibrary,
  kind: ExerciseKind,
  id: string,
  choices: RunChoices = {},
): ExerciseSetup | null {
  const exercise = findExercise(library, kind, id);
  const setup = exercise === undefined ? null : setupOfStart(library, exercise, choices);
  if (exercise === undefined || setup === null) return null;
  return { ...setup, arriveAt: 'arriveAt' in exercise ? exercise.arriveAt : 0 };
}

function findExercise(library: LearnerLibrary, kind: ExerciseKind, id: string) {
  const all = { job: library.jobs, drill: library.drills, lesson: library.lessons }[kind];
  return all.find((one) => one.id === id);
}
