import type { PlantFile, Profile } from '../engine/index.ts';
import type { Drill } from './drill-schema.ts';
import type { Job } from './job-schema.ts';
import type { Lesson } from './lesson-schema.ts';
import type { QuizFile } from './quiz-schema.ts';
import type { Scenario } from './scenario-schema.ts';

/** As a page receives them: what the tests expect is not in them. */
export type LearnerScenario = Omit<Scenario, 'expect'>;
export type LearnerJob = Omit<Job, 'expect'>;
export type LearnerDrill = Omit<Drill, 'expect'>;
/** What a learner may read before and during a run: nothing says which fault it is. */
export type ScenarioCard = Pick<
  Scenario,
  'id' | 'title' | 'plant' | 'summary' | 'until' | 'allow'
> &
  Partial<Pick<Scenario, 'teaches' | 'caution'>>;
/** What a list of jobs may show. */
export type JobCard = Pick<
  Job,
  'id' | 'title' | 'plant' | 'level' | 'skills' | 'site' | 'card' | 'tools' | 'budgetMinutes'
>;

export interface LearnerLibrary {
  readonly plants: readonly PlantFile[];
  readonly profiles: readonly Profile[];
  readonly scenarios: readonly LearnerScenario[];
  readonly jobs: readonly LearnerJob[];
  readonly drills: readonly LearnerDrill[];
  readonly lessons: readonly Lesson[];
  readonly quizzes: readonly QuizFile[];
}

export function learnerPart<T extends { readonly expect?: unknown }>(whole: T): Omit<T, 'expect'> {
  const { expect: _, ...rest } = whole;
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

export function jobCardOf(job: LearnerJob): JobCard {
  const { id, title, plant, level, skills, site, card, tools, budgetMinutes } = job;
  return { id, title, plant, level, skills, site, card, tools, budgetMinutes };
}
