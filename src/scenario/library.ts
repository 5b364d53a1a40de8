import type { z } from 'zod';
import type { PlantFile, Profile, TimedAction } from '../engine/index.ts';
import { FAULTS } from '../faults/index.ts';
import { checkActions } from './action-checks.ts';
import { actionLogSchema } from './action-schema.ts';
import { MAX_RUN_S } from './bounds.ts';
import { type Drill, drillSchema } from './drill-schema.ts';
import { checkDrill, checkJob, checkLesson } from './exercise-checks.ts';
import type { FaultLimits } from './fault-checks.ts';
import { type FileKind, kindOfFile } from './file-kind.ts';
import type { Checked, Issue } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { type Job, jobSchema } from './job-schema.ts';
import { type Lesson, lessonSchema } from './lesson-schema.ts';
import { nearest } from './nearest.ts';
import { phrase } from './phrase.ts';
import { checkPlant } from './plant-checks.ts';
import { plantSchema } from './plant-schema.ts';
import { profileSchema } from './profile-schema.ts';
import { checkQuiz } from './quiz-checks.ts';
import { type QuizFile, quizSchema } from './quiz-schema.ts';
import { readSource, type Source } from './read-source.ts';
import { bounded, fitSource, type Loaded } from './read-yaml.ts';
import { checkScenario } from './scenario-checks.ts';
import { type Scenario, scenarioSchema } from './scenario-schema.ts';
import type { Surroundings } from './start-checks.ts';

export interface LibraryFile {
  /** As it is to be shown in messages. */
  readonly path: string;
  readonly text: string;
}
/** Plants, profiles and what runs on them, all known to fit together. */
export interface Library {
  readonly plants: readonly PlantFile[];
  readonly profiles: readonly Profile[];
  readonly scenarios: readonly Scenario[];
  readonly jobs: readonly Job[];
  readonly drills: readonly Drill[];
  readonly lessons: readonly Lesson[];
  /** Questions that instructors wrote. */
  readonly quizzes: readonly QuizFile[];
}
export const EMPTY_LIBRARY: Library = {
  plants: [],
  profiles: [],
  scenarios: [],
  jobs: [],
  drills: [],
  lessons: [],
  quizzes: [],
};

export interface LibraryOptions {
  /** What the files may lean on; a file takes the place of one of the same name there. */
  readonly base?: Library;
  readonly faults?: readonly FaultLimits[];
}

/** Everything in the files, checked together; or every issue in them, file by file. */
export function buildLibrary(
  files: readonly LibraryFile[],
  { base = EMPTY_LIBRARY, faults = FAULTS }: LibraryOptions = {},
): Checked<Library> {
  const issues: Issue[] = [];
  const brokenIds: Record<FileKind, string[]> = {
    plant: [],
    profile: [],
    scenario: [],
    job: [],
    drill: [],
    lesson: [],
    quiz: [],
    'action log': [],
  };
  const plants: Loaded<PlantFile>[] = [];
  const profiles: Loaded<Profile>[] = [];
  const scenarios: Loaded<Scenario>[] = [];
  const jobs: Loaded<Job>[] = [];
  const drills: Loaded<Drill>[] = [];
  const lessons: Loaded<Lesson>[] = [];
  const quizzes: Loaded<QuizFile>[] = [];
  const logs: Loaded<TimedAction[]>[] = [];

  for (const file of files) {
    const read = readSource(file.text, file.path);
    if (!read.ok) {
      issues.push(...read.issues);
      continue;
    }
    const source = read.value;
    const take = <T>(kind: FileKind, schema: z.ZodType<T>, into: Loaded<T>[]): void => {
      const fitted = fitSource(source, schema);
      if (fitted.ok) into.push(fitted);
      else {
        issues.push(...fitted.issues);
        brokenIds[kind].push(idIn(source));
      }
    };
    const kind = kindOfFile(file.path, source.data);
    if (kind === 'plant') take(kind, plantSchema, plants);
    else if (kind === 'profile') take(kind, profileSchema, profiles);
    else if (kind === 'scenario') take(kind, scenarioSchema, scenarios);
    else if (kind === 'job') take(kind, jobSchema, jobs);
    else if (kind === 'drill') take(kind, drillSchema, drills);
    else if (kind === 'lesson') take(kind, lessonSchema, lessons);
    else if (kind === 'quiz') take(kind, quizSchema, quizzes);
    else if (kind === 'action log') take(kind, actionLogSchema, logs);
    else issues.push(issueAt(source, [], 'wrong-type', phrase('expected.file-kind')));
  }

  const library: Library = {
    plants: merged(base.plants, plants),
    profiles: merged(base.profiles, profiles),
    scenarios: merged(base.scenarios, scenarios),
    jobs: merged(base.jobs, jobs),
    drills: merged(base.drills, drills),
    lessons: merged(base.lessons, lessons),
    quizzes: merged(base.quizzes, quizzes),
  };
  const around = surroundings(library, brokenIds, faults);
  for (const loaded of [plants, profiles, scenarios, jobs, drills, lessons, quizzes])
    issues.push(...takenIds(loaded));
  for (const plant of plants) {
    issues.push(...checkPlant(plant), ...checkPlantProfile(plant, around.profileIds));
  }
  for (const scenario of scenarios) issues.push(...checkScenario(scenario, around));
  for (const job of jobs) issues.push(...checkJob(job, around));
  for (const drill of drills) issues.push(...checkDrill(drill, around));
  for (const lesson of lessons) issues.push(...checkLesson(lesson, around));
  for (const quiz of quizzes) issues.push(...checkQuiz(quiz, around));
  for (const log of logs) issues.push(...checkLog(log, null, faults));
  return issues.length === 0
    ? { ok: true, value: library }
    : { ok: false, issues: boundedByFile(issues) };
}

/** Reads what a person did, against the scenario it is to be done in. */
export function readActionLog(
  file: LibraryFile,
  library: Library,
  scenario: Pick<Scenario, 'plant' | 'allow'>,
  faults: readonly FaultLimits[] = FAULTS,
): Checked<readonly TimedAction[]> {
  const read = readSource(file.text, file.path);
  if (!read.ok) return read;
  const fitted = fitSource(read.value, actionLogSchema);
  if (!fitted.ok) return fitted;
  const issues = checkLog(fitted, { library, scenario }, faults);
  return issues.length === 0
    ? { ok: true, value: fitted.value }
    : { ok: false, issues: bounded(issues) };
}

function checkLog(
  { value, source }: Loaded<TimedAction[]>,
  context: {
    readonly library: Library;
    readonly scenario: Pick<Scenario, 'plant' | 'allow'>;
  } | null,
  faults: readonly FaultLimits[],
): Issue[] {
  const plant = context?.library.plants.find(({ id }) => id === context.scenario.plant) ?? null;
  const allow = context?.scenario.allow ?? value.map(({ type }) => type);
  const around = { plant, faults, allow, untilS: MAX_RUN_S };
  return checkActions(value, source, (i, key) => [i, key], around);
}

function surroundings(
  library: Library,
  brokenIds: Readonly<Record<FileKind, readonly string[]>>,
  faults: readonly FaultLimits[],
): Surroundings {
  return {
    plant: (id) => library.plants.find((plant) => plant.id === id) ?? null,
    plantIds: [...library.plants.map(({ id }) => id), ...brokenIds.plant],
    profileIds: [...library.profiles.map(({ id }) => id), ...brokenIds.profile],
    faults,
  };
}

function checkPlantProfile({ value, source }: Loaded<PlantFile>, ids: readonly string[]): Issue[] {
  if (ids.includes(value.profile)) return [];
  const expected =
    ids.length === 0 ? phrase('expected.no-profile') : phrase('expected.profile', { known: ids });
  return [issueAt(source, ['profile'], 'unknown-name', expected, nearest(value.profile, ids))];
}

function takenIds(loaded: readonly Loaded<{ readonly id: string }>[]): Issue[] {
  return loaded.flatMap(({ value, source }, i) => {
    const first = loaded.findIndex((other) => other.value.id === value.id);
    const file = loaded[first]?.source.file ?? '';
    return first === i
      ? []
      : [issueAt(source, ['id'], 'duplicate-id', phrase('expected.another-id', { file }))];
  });
}

function merged<T extends { readonly id: string }>(
  base: readonly T[],
  loaded: readonly Loaded<T>[],
): T[] {
  const ids = new Set(loaded.map(({ value }) => value.id));
  return [...base.filter(({ id }) => !ids.has(id)), ...loaded.map(({ value }) => value)];
}

function boundedByFile(issues: readonly Issue[]): Issue[] {
  const files = [...new Set(issues.map(({ file }) => file))];
  return files.flatMap((file) => bounded(issues.filter((issue) => issue.file === file)));
}

/** A broken file still says which name it would have had, so its users are not blamed. */
function idIn({ data }: Source): string {
  const id = (data as { readonly id?: unknown } | null)?.id;
  return typeof id === 'string' ? id : '';
}
