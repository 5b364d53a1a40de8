import { mkdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { dirname } from 'node:path';
import { Worker } from 'node:worker_threads';
import { message, sayMessage } from '../../i18n/index.ts';
import { type BankLine, type Gathered, ITEM_KINDS, type ItemKind } from '../../quiz/index.ts';
import { nearest, phrase } from '../../scenario/index.ts';
import { createPool } from '../../server/threads/index.ts';
import { type CommandSpec, inQuotes, perhaps } from '../arguments.ts';
import { atlasFile, atlasFolder } from '../atlas/files.ts';
import { begin } from '../begin.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { bankFile, readBank, writeBank } from '../quiz/bank-file.ts';
import { WANTED } from '../quiz/wanted.ts';
import type { ItemsData, ItemsTask } from '../quiz/worker.ts';
import { soundSetup } from '../sound-setup.ts';
import { alignColumns } from '../table.ts';

const SPEC: CommandSpec = {
  command: 'items',
  options: {
    '--kind': { value: phrase('usage.expect.item-kind') },
    '--to': { value: phrase('usage.expect.file') },
    '--json': {},
  },
  least: 0,
  most: 0,
  expected: phrase('usage.expect.nothing'),
};

/** Makes quiz items from seeded runs of every plant, and says why the others were turned down. */
export async function items(
  words: readonly string[],
  root: string,
  tell: (line: string) => void,
): Promise<Outcome> {
  const begun = begin(words, SPEC, root);
  if (!begun.ok) return begun.outcome;
  const { options, library } = begun;
  const only = options.get('--kind');
  const kinds = ITEM_KINDS.filter((kind) => (only ?? kind) === kind);
  if (kinds.length === 0) return refuse(unknownKind(only ?? ''));
  const plants = library.plants.map(({ id }) => id);
  const data: ItemsData = {
    setups: Object.fromEntries(
      plants.flatMap((id) => {
        const setup = soundSetup(library, id);
        return setup === null ? [] : [[id, setup] as const];
      }),
    ),
    atlases: Object.fromEntries(plants.map((id) => [id, atlasFile(atlasFolder(root), id)])),
  };
  // Here and not above: the bundler is large, and no other command needs it.
  const { bundledFile } = await import('../bench/bundle.ts');
  const worker = await bundledFile('src/cli/quiz/worker.ts', 'quiz-worker');
  const pool = createPool<ItemsTask, Gathered>({
    startWorker: () => new Worker(worker, { workerData: data }),
    workers: availableParallelism(),
  });
  try {
    const tasks = kinds.flatMap((kind) =>
      Object.keys(data.setups).map((plant) => ({ kind, plant, wanted: WANTED[kind] })),
    );
    const gathered = await Promise.all(
      tasks.map(async (task) => {
        const found = await pool.run(task);
        tell(lineWords(found.line));
        return found;
      }),
    );
    const file = options.get('--to') ?? bankFile(root);
    const standing = readBank(file) ?? { items: [], report: [], moved: {} };
    const report = gathered.map(({ line }) => line);
    const cards = ITEM_KINDS.flatMap((kind) =>
      kinds.includes(kind)
        ? gathered.filter(({ line }) => line.kind === kind).flatMap(({ cards: own }) => own)
        : standing.items.filter((card) => card.kind === kind),
    );
    const others = standing.report.filter(({ kind }) => !kinds.includes(kind));
    mkdirSync(dirname(file), { recursive: true });
    const { moved = {} } = standing;
    writeBank(file, { items: cards, report: inOrder([...others, ...report]), moved });
    tell(message('items.written', { file, count: cards.length }));
    return succeed(options.has('--json') ? JSON.stringify(report) : reportTable(report));
  } finally {
    await pool.close();
  }
}

function inOrder(report: readonly BankLine[]): readonly BankLine[] {
  return ITEM_KINDS.flatMap((kind) => report.filter((line) => line.kind === kind));
}

function unknownKind(kind: string): string {
  const expected = phrase('expected.one-of', { words: ITEM_KINDS });
  const mend = perhaps(nearest(kind, ITEM_KINDS));
  const params = { command: SPEC.command, option: '--kind', found: inQuotes(kind), expected };
  return sayMessage(phrase('usage.unknown-choice', { ...params, perhaps: mend }));
}

function lineWords({ kind, plant, tried, kept }: BankLine): string {
  return message('items.line', { kind, plant, tried, kept });
}

/** A line a kind, all plants together. */
function reportTable(report: readonly BankLine[]): string {
  const kinds: readonly ItemKind[] = [...new Set(report.map(({ kind }) => kind))];
  const rows = kinds.map((kind) => {
    const own = report.filter((line) => line.kind === kind);
    const sum = (of: (line: BankLine) => number) => own.reduce((all, line) => all + of(line), 0);
    const reasons = new Set(own.flatMap(({ rejected }) => Object.keys(rejected)));
    const why = [...reasons]
      .map((reason) => ({
        reason,
        count: sum(({ rejected }) => rejected[reason as keyof typeof rejected] ?? 0),
      }))
      .sort((a, b) => b.count - a.count)
      .map(({ reason, count }) => message('items.reason', { reason, count }));
    return [
      kind,
      message('items.kept', { kept: sum(({ kept }) => kept), tried: sum(({ tried }) => tried) }),
      why.join(', '),
    ];
  });
  return alignColumns(rows);
}
