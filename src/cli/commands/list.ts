import { FAULTS, type Fault } from '../../faults/index.ts';
import { message, sayMessage } from '../../i18n/index.ts';
import {
  cardOf,
  EMPTY_LIBRARY,
  jobCardOf,
  type Library,
  NOTHING_TO_ADD,
  nearest,
  type Phrase,
  phrase,
} from '../../scenario/index.ts';
import { type CommandSpec, inQuotes, parseArguments, perhaps } from '../arguments.ts';
import { issueLines } from '../issue-lines.ts';
import { readLibrary } from '../library.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { alignColumns } from '../table.ts';

interface Listing {
  readonly rows: (library: Library) => readonly string[][];
  readonly data: (library: Library) => readonly object[];
}

const LISTS: ReadonlyMap<string, Listing> = new Map<string, Listing>([
  [
    'plants',
    {
      rows: ({ plants }) => plants.map(({ id, title }) => [id, title]),
      data: ({ plants }) =>
        plants.map(({ id, title, description, profile, variant }) => ({
          id,
          title,
          description,
          profile,
          variant,
        })),
    },
  ],
  [
    'profiles',
    {
      rows: ({ profiles }) => profiles.map(({ id, title }) => [id, title]),
      data: ({ profiles }) => profiles,
    },
  ],
  [
    'faults',
    {
      rows: (library) =>
        FAULTS.map((fault) => [
          fault.id,
          fault.family,
          severityOf(fault),
          plantsOf(fault, library).join(', '),
        ]),
      data: (library) =>
        FAULTS.map((fault) => {
          const { id, family, component, mechanism, severity, onsets, repair, priorWeight } = fault;
          const plants = plantsOf(fault, library);
          return {
            id,
            family,
            component,
            mechanism,
            severity,
            onsets,
            repair,
            priorWeight,
            plants,
          };
        }),
    },
  ],
  [
    'scenarios',
    {
      rows: ({ scenarios }) => scenarios.map(({ id, plant, title }) => [id, plant, title]),
      data: ({ scenarios }) => scenarios.map(cardOf),
    },
  ],
  [
    'jobs',
    {
      rows: ({ jobs }) =>
        jobs.map(({ id, plant, level, title }) => [
          id,
          plant,
          message('list.level', { level }),
          title,
        ]),
      data: ({ jobs }) => jobs.map(jobCardOf),
    },
  ],
  [
    'drills',
    {
      rows: ({ drills }) => drills.map(({ id, plant, skill, title }) => [id, plant, skill, title]),
      data: ({ drills }) =>
        drills.map(({ id, title, plant, skill, question, limitS }) => ({
          id,
          title,
          plant,
          skill,
          question,
          limitS,
        })),
    },
  ],
  [
    'lessons',
    {
      rows: ({ lessons }) => lessons.map(({ id, plant, title }) => [id, plant, title]),
      data: ({ lessons }) =>
        lessons.map(({ id, title, plant, intro }) => ({ id, title, plant, intro })),
    },
  ],
]);
const KINDS = [...LISTS.keys()];

const SPEC: CommandSpec = {
  command: 'list',
  options: { '--json': {} },
  least: 1,
  most: 1,
  expected: phrase('expected.one-of', { words: KINDS }),
};

export function list(words: readonly string[], root: string): Outcome {
  const parsed = parseArguments(words, SPEC);
  if (!parsed.ok) return refuse(sayMessage(parsed.mistake));
  const kind = parsed.value.positionals[0] ?? '';
  const listing = LISTS.get(kind);
  if (listing === undefined) {
    const found = inQuotes(kind);
    const mend = perhaps(nearest(kind, KINDS));
    const params = { command: SPEC.command, found, expected: SPEC.expected, perhaps: mend };
    return refuse(sayMessage(phrase('usage.unknown-list', params)));
  }
  const read = readLibrary(root);
  // The catalogue is no file: it can be shown, without its plants, where one of the files is broken.
  if (!read.ok && kind !== 'faults') return refuse(issueLines(read.issues));
  const library = read.ok ? read.value : EMPTY_LIBRARY;
  if (parsed.value.options.has('--json')) return succeed(JSON.stringify(listing.data(library)));
  const rows = listing.rows(library);
  return succeed(rows.length === 0 ? sayMessage(phrase('list.empty')) : alignColumns(rows));
}

function plantsOf(fault: Fault, { plants }: Library): string[] {
  return plants.filter((plant) => fault.appliesTo(plant)).map(({ id }) => id);
}

function severityOf({ severity: { low, typical, high, unit, means } }: Fault): string {
  if (low === high) return means;
  return message('list.severity', { low, typical, high, unit: inUnit(unit) });
}

function inUnit(unit: string): Phrase {
  return unit === '1' ? NOTHING_TO_ADD : phrase('expected.in-unit', { unit });
}
