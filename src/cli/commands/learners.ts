import {
  caseOf,
  type Fared,
  type FaredOnTheWhole,
  howFared,
  LEARNERS,
  onTheWhole,
} from '../../diagnosis/index.ts';
import { message, sayMessage } from '../../i18n/index.ts';
import { phrase } from '../../scenario/index.ts';
import { type CommandSpec, inQuotes, numberWithin } from '../arguments.ts';
import { atlasFolder } from '../atlas/files.ts';
import { begin } from '../begin.ts';
import { exerciseCases, runnableJob } from '../exercise-case.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { alignColumns } from '../table.ts';

const MOST_SEEDS = 1000;
const DEFAULT_SEEDS = 5;
const SPEC: CommandSpec = {
  command: 'learners',
  options: {
    '--seeds': { value: phrase('usage.expect.seeds', { max: MOST_SEEDS }) },
    '--atlas': { value: phrase('usage.expect.folder') },
    '--json': {},
  },
  least: 0,
  most: 0,
  expected: phrase('usage.expect.nothing'),
};

/** Simulated learners do every job; the table shows whether scores are ordered as they should be. */
export async function learners(
  words: readonly string[],
  root: string,
  tell: (line: string) => void,
): Promise<Outcome> {
  const begun = begin(words, SPEC, root);
  if (!begun.ok) return begun.outcome;
  const { options, library } = begun;
  const { command } = SPEC;
  const given = options.get('--seeds');
  const seeds = given === undefined ? DEFAULT_SEEDS : numberWithin(given, 1, MOST_SEEDS);
  if (seeds === null || !Number.isInteger(seeds)) {
    const expected = phrase('usage.expect.seeds', { max: MOST_SEEDS });
    const params = { command, option: '--seeds', found: inQuotes(given ?? ''), expected };
    return refuse(sayMessage(phrase('usage.bad-value', params)));
  }
  const { jobs } = library;
  const caseFor = exerciseCases(library, options.get('--atlas') ?? atlasFolder(root), command);
  const fared = new Map<string, Fared[]>(LEARNERS.map(({ name }) => [name, []]));
  for (const [i, job] of jobs.entries()) {
    const one = caseFor(runnableJob(library, job));
    if (!one.ok) return refuse(sayMessage(one.mistake));
    const { atlas, plan, setup, own, tools } = one.value;
    const theCase = caseOf(atlas, plan, setup, own, tools, job.accept);
    for (const learner of LEARNERS) {
      const tries = learner.byChance ? seeds : 1;
      for (let seed = 1; seed <= tries; seed++) {
        fared.get(learner.name)?.push(howFared(theCase, learner, seed));
      }
    }
    tell(message('learners.progress', { done: i + 1, of: jobs.length, id: job.id }));
  }
  const table = [...fared].map(([name, all]) => ({ name, ...onTheWhole(all) }));
  return succeed(options.has('--json') ? JSON.stringify(table) : inWords(table));
}

function inWords(table: readonly (FaredOnTheWhole & { readonly name: string })[]): string {
  const percent = (share: number) =>
    message('learners.percent', { percent: Math.round(100 * share) });
  const rows = table.map((one) => [
    one.name,
    String(one.count),
    percent(one.found['by readings']),
    percent(one.found['by trying parts']),
    percent(one.found['not found']),
    one.path.toFixed(2),
    one.minutes.toFixed(0),
    one.redundant.toFixed(1),
    one.premature.toFixed(1),
    one.outcome.toFixed(2),
  ]);
  return alignColumns([HEADINGS.map((heading) => message(`learners.${heading}`)), ...rows]);
}
const HEADINGS = [
  'learner',
  'jobs',
  'by-readings',
  'by-trying',
  'not-found',
  'path',
  'minutes',
  'redundant',
  'premature',
  'outcome',
];
