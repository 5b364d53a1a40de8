/** The shipped jobs as diagnosis takes them, each made once. */
import { fileURLToPath } from 'node:url';
import { atlasFolder } from '../../src/cli/atlas/files.ts';
import { type ExerciseCase, exerciseCases, runnableJob } from '../../src/cli/exercise-case.ts';
import { type Case, caseOf } from '../../src/diagnosis/index.ts';
import { library } from '../support/library.ts';

const folder = atlasFolder(fileURLToPath(new URL('../..', import.meta.url)));
const caseFor = exerciseCases(library, folder, 'test');
const exercises = new Map<string, ExerciseCase>();

export const jobs = library.jobs;

export function exerciseOf(id: string): ExerciseCase {
  const known = exercises.get(id);
  if (known !== undefined) return known;
  const job = jobs.find((one) => one.id === id);
  if (job === undefined) throw new Error(`no job ${id}`);
  const found = caseFor(runnableJob(library, job));
  if (!found.ok) throw new Error(found.mistake.code);
  exercises.set(id, found.value);
  return found.value;
}

export function caseOfJob(id: string): Case {
  const { atlas, plan, setup, own, tools } = exerciseOf(id);
  return caseOf(atlas, plan, setup, own, tools, jobs.find((one) => one.id === id)?.accept);
}
