import { existsSync, readdirSync } from 'node:fs';
import { join, relative } from 'node:path';
import {
  buildLibrary,
  type Checked,
  type Issue,
  type LearnerLibrary,
  type Library,
  type LibraryFile,
  learnerPart,
} from '../scenario/index.ts';
import { issueLines } from './issue-lines.ts';
import { readTextFile } from './read-text-file.ts';

const FOLDERS = ['plants', 'profiles', 'starts', 'jobs', 'drills', 'lessons', 'quiz'];

/** Everything that is shipped, checked together; a folder may be missing or empty. */
export function readLibrary(root: string): Checked<Library> {
  const files: LibraryFile[] = [];
  const issues: Issue[] = [];
  for (const folder of FOLDERS) {
    for (const path of yamlFiles(join(root, 'scenarios', folder))) {
      const read = readTextFile(path);
      if (read.ok) files.push({ path: shown(path), text: read.value.text });
      else issues.push(...read.issues.map((issue) => ({ ...issue, file: shown(path) })));
    }
  }
  const built = buildLibrary(files);
  if (issues.length === 0) return built;
  return { ok: false, issues: [...issues, ...(built.ok ? [] : built.issues)] };
}

/**
 * The shipped library as a page may have it: without what the scenarios expect.
 * Throws when a shipped file is not in order, since nothing can be built on that.
 */
export function loadLibrary(root: string): LearnerLibrary {
  const library = readLibrary(root);
  if (!library.ok) throw new Error(issueLines(library.issues));
  const { plants, profiles, scenarios, jobs, drills, lessons, quizzes } = library.value;
  return {
    plants,
    profiles,
    scenarios: scenarios.map(learnerPart),
    jobs: jobs.map(learnerPart),
    drills: drills.map(learnerPart),
    lessons,
    quizzes,
  };
}

function yamlFiles(folder: string): string[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .filter((name) => /\.ya?ml$/.test(name))
    .sort()
    .map((name) => join(folder, name));
}

/** As a person standing where the command was given would write it. */
function shown(path: string): string {
  const short = relative(process.cwd(), path);
  return short.startsWith('..') ? path : short;
}
