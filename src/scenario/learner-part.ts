import type { PlantFile, Profile } from '../engine/index.ts';
import type { Scenario } from './scenario-schema.ts';

/** A scenario as a page receives it: the answers are not in it. */
export type LearnerScenario = Omit<Scenario, 'expect'>;
/** What a learner may read before and during a run: nothing says which fault it is. */
export type ScenarioCard = Pick<
  Scenario,
  'id' | 'title' | 'plant' | 'summary' | 'until' | 'allow'
> &
  Partial<Pick<Scenario, 'teaches' | 'caution'>>;

export interface LearnerLibrary {
  readonly plants: readonly PlantFile[];
  readonly profiles: readonly Profile[];
  readonly scenarios: readonly LearnerScenario[];
}

export function learnerPart(scenario: Scenario): LearnerScenario {
  const { expect: _, ...rest } = scenario;
  return rest;
}

export function cardOf(scenario: LearnerScenario): ScenarioCard {
  const { id, title, plant, summary, until, allow, teaches, caution } = scenario;
  const texts = {
    ...(teaches === undefined ? {} : { teaches }),
    ...(caution === undefined ? {} : { caution }),
  };
  return { id, title, plant, summary, ...texts, until, allow };
}
