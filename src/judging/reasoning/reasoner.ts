/** The one place where judging leans on the diagnosis. */
import type { DeskEntry } from '../../../machines/job/index.ts';
import {
  caseOf,
  decisionsOf,
  decodeAtlas,
  planOf,
  type Reasoning,
  reasonAbout,
  withoutCircumstances,
} from '../../diagnosis/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import type { ExerciseCase } from '../work/index.ts';

/** One exercise, made ready once; asked as often as something was done. */
export interface Reasoner {
  reason(log: readonly TimedAction[], desk: readonly DeskEntry[], untilS: number): Reasoning;
}

/** @throws where the text is no atlas */
export function createReasoner(atlasText: string, exercise: ExerciseCase): Reasoner {
  const atlas = decodeAtlas(atlasText);
  if (atlas === null) throw new Error('not an atlas of this version');
  const { sound, setup, own, tools, accepted } = exercise;
  const plan = planOf(sound);
  const theCase = caseOf(atlas, plan, setup, own, tools, accepted);
  const comesAndGoes = setup.faults.some(({ onset }) => onset.kind !== 'start');
  return {
    reason(log, desk, untilS) {
      const decisions = decisionsOf(setup, log, desk, untilS, plan);
      const counting = withoutCircumstances(theCase.atlas, own, decisions, comesAndGoes);
      return reasonAbout(theCase, counting);
    },
  };
}
