import type { PlantFile, RunSetup } from '../../engine/index.ts';
import type { Atlas } from '../atlas/atlas.ts';
import type { Plan } from '../atlas/plan.ts';
import type { Sample } from '../atlas/take-sample.ts';
import { withPlant } from '../atlas/with-plant.ts';
import { sampleOfCase } from '../author/sample-of-case.ts';
import type { Question } from '../reasoning/questions.ts';
import { questionsOfStarts } from './questions-of-starts.ts';

/** What a learner's reasoning is held against: what each cause would read, and which of them is true. */
export interface Case {
  /** With the plant of the case among its particles. */
  readonly atlas: Atlas;
  /** As it is shipped: its first particle is a sound plant. */
  readonly sound: Atlas;
  /** Each check in each situation, a whole start being one. */
  readonly questions: readonly Question[];
  readonly plant: PlantFile;
  /** Faults that are there; none: nothing is wrong with the plant. */
  readonly own: readonly string[];
  /** Faults that are not there but are taken for the cause: nobody could tell. */
  readonly accepted: readonly string[];
  readonly tools: readonly string[] | 'all';
  /** What the plant of the case reads; null where that is not known. */
  readonly truth: Sample | null;
  /** The same once some of its faults are mended. */
  readonly truthAfter: ((mended: readonly string[]) => Sample) | null;
}

/**
 * @param setup the case as it is played, faults and all
 * @param own the faults that are its cause
 * @param tools what may be taken along
 * @param accepted other faults that the exercise takes for the cause
 */
export function caseOf(
  atlas: Atlas,
  plan: Plan,
  setup: RunSetup,
  own: readonly string[],
  tools: readonly string[] | 'all',
  accepted: readonly string[] = [],
): Case {
  const truth = sampleOfCase(plan, setup);
  const truthAfter = (mended: readonly string[]) =>
    mended.length === 0 ? truth : sampleOfCase(plan, without(setup, mended));
  return caseWith(atlas, { plant: setup.plant, own, tools, accepted, truth, truthAfter });
}

/** The same from what the plant of the case reads. */
export function caseWith(sound: Atlas, known: Omit<Case, 'atlas' | 'sound' | 'questions'>): Case {
  const { own, truth } = known;
  const atlas = truth === null ? sound : withPlant(sound, own[0] ?? null, truth);
  return { ...known, sound, ...withLaterPlants(atlas, known) };
}

/** Where there are several faults: the plants that are left once all but one are mended. */
function withLaterPlants(
  atlas: Atlas,
  { own, truthAfter }: Pick<Case, 'own' | 'truthAfter'>,
): Pick<Case, 'atlas' | 'questions'> {
  const faults = truthAfter === null || own.length < 2 ? [] : own;
  const all = faults.reduce((sum, fault) => {
    const left = truthAfter?.(own.filter((one) => one !== fault));
    return left === undefined ? sum : withPlant(sum, fault, left);
  }, atlas);
  return { atlas: all, questions: questionsOfStarts(all) };
}

function without(setup: RunSetup, mended: readonly string[]): RunSetup {
  return { ...setup, faults: setup.faults.filter(({ fault }) => !mended.includes(fault)) };
}
