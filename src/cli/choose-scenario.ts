import { existsSync } from 'node:fs';
import { ACTION_TABLES, type ActionType, type RunSetup } from '../engine/index.ts';
import { sayMessage } from '../i18n/index.ts';
import {
  buildLibrary,
  type Drill,
  firstStartOf,
  type Job,
  jobSetup,
  type Lesson,
  type Library,
  nearest,
  phrase,
  type RunChoices,
  type Scenario,
  setupOf,
} from '../scenario/index.ts';
import { inQuotes, perhaps } from './arguments.ts';
import { issueLines } from './issue-lines.ts';
import { readLibrary } from './library.ts';
import { readTextFile } from './read-text-file.ts';

const ACTION_TYPES = Object.keys(ACTION_TABLES) as ActionType[];

/** A scenario, or what is run of a job, a drill or a lesson. */
export interface Runnable extends Pick<Scenario, 'id' | 'title' | 'plant' | 'allow'> {
  readonly caution?: string | undefined;
  readonly untilS: number;
  /** @param byItself without what a person did on top, so that heat may have to be called for */
  setup(choices: RunChoices, byItself: boolean): RunSetup | null;
}

export type Choice =
  | { readonly ok: true; readonly library: Library; readonly chosen: Runnable }
  | { readonly ok: false; readonly mistake: string };

/** Something shipped by its name, or someone's own by its file, on shipped plants and profiles. */
export function chooseScenario(nameOrFile: string, root: string, command: string): Choice {
  const shipped = readLibrary(root);
  if (!shipped.ok) return { ok: false, mistake: issueLines(shipped.issues) };
  const library = shipped.value;
  const byName = runnablesOf(library, library).find(({ id }) => id === nameOrFile);
  if (byName !== undefined) return { ok: true, library, chosen: byName };
  if (!/[\\/]|\.(ya?ml|json)$/i.test(nameOrFile) && !existsSync(nameOrFile)) {
    const known = runnablesOf(library, library).map(({ id }) => id);
    const params = {
      command,
      found: inQuotes(nameOrFile),
      expected: phrase('expected.exercise'),
      perhaps: perhaps(nearest(nameOrFile, known)),
    };
    return { ok: false, mistake: sayMessage(phrase('usage.unknown-scenario', params)) };
  }
  const file = readTextFile(nameOrFile);
  if (!file.ok) return { ok: false, mistake: issueLines(file.issues) };
  const built = buildLibrary([file.value], { base: library });
  if (!built.ok) return { ok: false, mistake: issueLines(built.issues) };
  const own = runnablesOf(onlyIn(built.value, library), built.value)[0];
  if (own === undefined) {
    const params = { command, found: inQuotes(nameOrFile) };
    return { ok: false, mistake: sayMessage(phrase('usage.not-a-scenario', params)) };
  }
  return { ok: true, library: built.value, chosen: own };
}

type Shelf = Pick<Library, 'scenarios' | 'jobs' | 'drills' | 'lessons'>;

/** @param library whose plants and profiles they run on */
function runnablesOf(shelf: Shelf, library: Library): Runnable[] {
  const exercise = (kind: 'job' | 'drill') => (one: Job | Drill) => {
    const first = firstStartOf(one);
    return runnable(one, first.untilS, (choices, byItself) =>
      jobSetup(library, kind, one.id, byItself ? { ...choices, actions: first.actions } : choices),
    );
  };
  return [
    ...shelf.scenarios.map((one) => ({
      ...runnable(one, one.until, (choices) => setupOf(library, one.id, choices)),
      allow: one.allow,
    })),
    ...shelf.jobs.map(exercise('job')),
    ...shelf.drills.map(exercise('drill')),
    ...shelf.lessons.map((one) =>
      runnable(one, one.until, (choices) => jobSetup(library, 'lesson', one.id, choices)),
    ),
  ];
}

function runnable(
  { id, title, plant, caution }: Job | Drill | Lesson | Scenario,
  untilS: number,
  setup: Runnable['setup'],
): Runnable {
  return { id, title, plant, caution, allow: [...ACTION_TYPES], untilS, setup };
}

function onlyIn(whole: Library, base: Library): Shelf {
  const fresh = <T>(all: readonly T[], old: readonly T[]) =>
    all.filter((one) => !old.includes(one));
  return {
    scenarios: fresh(whole.scenarios, base.scenarios),
    jobs: fresh(whole.jobs, base.jobs),
    drills: fresh(whole.drills, base.drills),
    lessons: fresh(whole.lessons, base.lessons),
  };
}
