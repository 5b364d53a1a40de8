import { FAULTS } from '../../faults/index.ts';
import { message, sayMessage } from '../../i18n/index.ts';
import {
  cardOf,
  EMPTY_LIBRARY,
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
      rows: () =>
        FAULTS.map(({ id, family, severity: { low, typical, high, unit, means } }) => [
          id,
          family,
          low === high
            ? means
            : message('list.severity', { low, typical, high, unit: inUnit(unit) }),
        ]),
      data: () =>
        FAULTS.map(({ id, family, component, mechanism, severity, onsets, repair }) => ({
          id,
          family,
          component,
          mechanism,
          severity,
          onsets,
          repair,
        })),
    },
  ],
  [
    'scenarios',
    {
      rows: ({ scenarios }) => scenarios.map(({ id, plant, title }) => [id, plant, title]),
      data: ({ scenarios }) => scenarios.map(cardOf),
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
  // The catalogue is no file: it can be shown even where one of the files is broken.
  const library =
    kind === 'faults' ? { ok: true as const, value: EMPTY_LIBRARY } : readLibrary(root);
  if (!library.ok) return refuse(issueLines(library.issues));
  if (parsed.value.options.has('--json'))
    return succeed(JSON.stringify(listing.data(library.value)));
  const rows = listing.rows(library.value);
  return succeed(rows.length === 0 ? sayMessage(phrase('list.empty')) : alignColumns(rows));
}

function inUnit(unit: string): Phrase {
  return unit === '1' ? NOTHING_TO_ADD : phrase('expected.in-unit', { unit });
}
