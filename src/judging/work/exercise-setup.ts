import type { DeskPlan } from '../../../machines/job/index.ts';
import type { ActionType, RunSetup } from '../../engine/index.ts';
import {
  answerOfDrill,
  answerOfJob,
  type ExerciseAnswer,
  type ExerciseKind,
  jobSetup,
  type LearnerDrill,
  type LearnerJob,
  type LearnerLibrary,
  type Lesson,
  type RunChoices,
} from '../../scenario/index.ts';
import { planOfDrill, planOfJob, planOfLesson } from '../desk/index.ts';
import { ACTS_ON_A_VISIT } from './acts-on-a-visit.ts';

/** The recorder keeps one hour; a run that can be rewound ends there rather than forget its own beginning. */
export const MAX_RUN_S = 3600;
/** A visit is longer than its record: what was earlier than an hour ago can no longer be looked at. */
export const MAX_VISIT_S = 8 * 3600;

export type Exercise =
  | { readonly kind: 'job'; readonly of: LearnerJob }
  | { readonly kind: 'drill'; readonly of: LearnerDrill }
  | { readonly kind: 'lesson'; readonly of: Lesson };

/** An exercise as its run begins, with all that its judging needs beside what was done. */
export interface ExerciseSetup {
  readonly exercise: Exercise;
  readonly setup: RunSetup;
  /** When the learner comes to the plant, s. */
  readonly arriveS: number;
  /** The run ends here, s. */
  readonly endS: number;
  /** Acts that may be done by the learner; null: all. */
  readonly allow: readonly ActionType[] | null;
  /** What is right to say of it; null where nothing is to be named. */
  readonly answer: ExerciseAnswer | null;
}

/** What its desk goes by. */
export function planOfExercise(exercise: Exercise): DeskPlan {
  switch (exercise.kind) {
    case 'job':
      return planOfJob(exercise.of);
    case 'drill':
      return planOfDrill(exercise.of);
    case 'lesson':
      return planOfLesson(exercise.of);
  }
}

/** Null where the library has no such exercise, or lacks its plant. */
export function exerciseSetup(
  library: LearnerLibrary,
  kind: ExerciseKind,
  id: string,
  choices: RunChoices = {},
): ExerciseSetup | null {
  const exercise = findExercise(library, kind, id);
  const found = exercise === null ? null : jobSetup(library, kind, id, choices);
  if (exercise === null || found === null) return null;
  const { arriveAt, ...setup } = found;
  const isLesson = kind === 'lesson';
  return {
    exercise,
    setup,
    arriveS: arriveAt,
    endS: isLesson ? MAX_RUN_S : MAX_VISIT_S,
    allow: isLesson ? null : ACTS_ON_A_VISIT,
    answer: answerTo(exercise, setup),
  };
}

function findExercise(library: LearnerLibrary, kind: ExerciseKind, id: string): Exercise | null {
  const isIt = (one: { readonly id: string }) => one.id === id;
  const { jobs, drills, lessons } = library;
  const of = { job: jobs, drill: drills, lesson: lessons }[kind].find(isIt);
  return of === undefined ? null : ({ kind, of } as Exercise);
}

function answerTo(exercise: Exercise, { plant }: RunSetup): ExerciseAnswer | null {
  switch (exercise.kind) {
    case 'job':
      return answerOfJob(exercise.of, plant);
    case 'drill':
      return answerOfDrill(exercise.of, plant);
    case 'lesson':
      return null;
  }
}
