/** An exercise made ready once, to judge the work of as many as did it. */
import type { DeskState } from '../../machines/job/index.ts';
import type { Reasoning } from '../diagnosis/index.ts';
import { createRun } from '../engine/index.ts';
import type { ExerciseKind, LearnerLibrary } from '../scenario/index.ts';
import { checkWork, type HandedIn, type Refused, refused } from './check-work.ts';
import { createReasoner, type Reasoner } from './reasoning/index.ts';
import {
  type ExerciseResult,
  resultOfDrill,
  resultOfJob,
  resultOfLesson,
  rightOfDrill,
} from './results/index.ts';
import {
  caseOfExercise,
  type Exercise,
  exerciseSetup,
  type GivenLibrary,
  judgeWorkAndRun,
  setupHash,
  type Verdict,
  withGiven,
  workBench,
} from './work/index.ts';

export interface ExerciseName {
  readonly kind: ExerciseKind;
  readonly id: string;
  /** In place of the exercise's own. */
  readonly seed?: number | undefined;
  /** What the library has not got. */
  readonly given?: GivenLibrary | undefined;
}

export interface JudgedWork {
  readonly ok: true;
  readonly verdict: Verdict;
  /** Of a job; null where the plant has no atlas. */
  readonly reasoning: Reasoning | null;
  /** Null for a lesson that asks nothing. */
  readonly result: ExerciseResult | null;
  /** Whether it was taken to its end. */
  readonly finished: boolean;
  /** Of the run where the work ended. */
  readonly hash: string;
  /** How many of the ordered acts were done to it. */
  readonly orderedDone: number;
}

export interface ReadyExercise {
  judge(work: HandedIn): JudgedWork | Refused;
}

/**
 * Null where the library has no such exercise, or lacks its plant.
 *
 * @param atlasText of the plant; null where it has none: then the verdict alone tells how it went
 * @throws where the text is no atlas
 */
export function readyExercise(
  shipped: LearnerLibrary,
  { kind, id, seed, given }: ExerciseName,
  atlasText: string | null,
): ReadyExercise | null {
  const library = given === undefined ? shipped : withGiven(shipped, given);
  const choices = seed === undefined ? {} : { seed };
  const ready = exerciseSetup(library, kind, id, choices);
  if (ready === null) return null;
  const ownHash = setupHash(ready.setup);
  let reasoner: Reasoner | null | undefined;
  const reasonerOnce = () => {
    reasoner ??= reasonerOf(library, kind, id, choices, atlasText);
    return reasoner;
  };
  return {
    judge(work) {
      if (work.setupHash !== undefined && work.setupHash !== ownHash) {
        return refused('other setup', '', work.setupHash);
      }
      const checked = checkWork(ready, work);
      if (!checked.ok) return checked;
      const { log, desk, orderedDone } = checked;
      const { untilS } = work;
      const { setup, answer, exercise } = ready;
      // Outside: an atlas that cannot be read is nothing that a learner has done.
      const reasons = reasonerOnce();
      try {
        const done = { setup, log, desk: desk.entries, untilS };
        const { verdict, hash } = judgeWorkAndRun(workBench, (run) => createRun(run), done, answer);
        const reasoning = reasons?.reason(log, desk.entries, untilS) ?? null;
        const result = resultOf(exercise, desk, verdict, reasoning);
        return {
          ok: true,
          verdict,
          reasoning,
          result,
          finished: isFinished(desk),
          hash,
          orderedDone,
        };
      } catch (error) {
        return refused('does not run', '', error instanceof Error ? error.message : String(error));
      }
    },
  };
}

/** A drill that is answered has nothing more to it. */
function isFinished({ kind, phase }: DeskState): boolean {
  return phase === 'debrief' || (kind === 'drill' && phase === 'claim');
}

/** The same for one piece of work alone. */
export function judgeExercise(
  library: LearnerLibrary,
  name: ExerciseName,
  atlasText: string | null,
  work: HandedIn,
): JudgedWork | Refused {
  const ready = readyExercise(library, name, atlasText);
  return ready === null ? refused('no such exercise', '', name.id) : ready.judge(work);
}

function reasonerOf(
  library: LearnerLibrary,
  kind: ExerciseKind,
  id: string,
  choices: { readonly seed?: number },
  atlasText: string | null,
): Reasoner | null {
  if (kind !== 'job' || atlasText === null) return null;
  const found = caseOfExercise(library, kind, id, choices);
  return found === null ? null : createReasoner(atlasText, found);
}

function resultOf(
  exercise: Exercise,
  desk: DeskState,
  verdict: Verdict,
  reasoning: Reasoning | null,
): ExerciseResult | null {
  switch (exercise.kind) {
    case 'job':
      return resultOfJob(exercise.of, desk, verdict, reasoning);
    case 'drill': {
      const answered = desk.answers.at(-1)?.option ?? null;
      return resultOfDrill(exercise.of, rightOfDrill(exercise.of, answered, verdict) === true);
    }
    case 'lesson':
      return resultOfLesson(exercise.of, desk.answers);
  }
}
