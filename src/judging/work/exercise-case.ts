import type { RunSetup } from '../../engine/index.ts';
import {
  answerOfDrill,
  answerOfJob,
  jobSetup,
  type LearnerLibrary,
  type RunChoices,
  setupOf,
} from '../../scenario/index.ts';

/** What of an exercise is needed to reason about it. */
export interface ExerciseCase {
  readonly plant: string;
  /** The same plant in a start with nothing wrong: what its atlas was made of. */
  readonly sound: RunSetup;
  readonly setup: RunSetup;
  /** Faults that are its cause; none: nothing is wrong with the plant. */
  readonly own: readonly string[];
  /** Others that are taken for it, since nobody could tell. */
  readonly accepted: readonly string[];
  /** What may be taken along. */
  readonly tools: readonly string[] | 'all';
}

/** Null where nothing is to be named, or the library has no such exercise. */
export function caseOfExercise(
  library: LearnerLibrary,
  kind: 'job' | 'drill',
  id: string,
  choices: RunChoices = {},
): ExerciseCase | null {
  const found = jobSetup(library, kind, id, choices);
  if (found === null) return null;
  const { arriveAt: _, ...setup } = found;
  const { plant } = setup;
  const isIt = (one: { readonly id: string }) => one.id === id;
  const job = kind === 'job' ? library.jobs.find(isIt) : undefined;
  const drill = kind === 'drill' ? library.drills.find(isIt) : undefined;
  const answer =
    job !== undefined
      ? answerOfJob(job, plant)
      : drill !== undefined
        ? answerOfDrill(drill, plant)
        : null;
  const sound = soundSetup(library, plant.id);
  if (answer === null || sound === null) return null;
  return {
    plant: plant.id,
    sound,
    setup,
    own: answer.causes.map(({ fault }) => fault),
    accepted: answer.accepted.map(({ fault }) => fault),
    tools: (job ?? drill)?.tools ?? 'all',
  };
}

/** A start of the plant with nothing wrong; null where the library has none. */
export function soundSetup(library: LearnerLibrary, plant: string): RunSetup | null {
  const start = library.scenarios.find((one) => one.plant === plant && one.faults.length === 0);
  return start === undefined ? null : setupOf(library, start.id);
}
