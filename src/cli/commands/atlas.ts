import { mkdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Atlas } from '../../diagnosis/index.ts';
import { message, sayMessage } from '../../i18n/index.ts';
import { nearest, phrase } from '../../scenario/index.ts';
import { createPool } from '../../server/threads/index.ts';
import { type CommandSpec, inQuotes, perhaps } from '../arguments.ts';
import { buildAtlas } from '../atlas/build-atlas.ts';
import { atlasFile, atlasFolder, readAtlas, writeAtlas } from '../atlas/files.ts';
import { openKeep } from '../atlas/keep.ts';
import type { AtlasData, AtlasTask, TakenSample } from '../atlas/worker.ts';
import { begin } from '../begin.ts';
import { type Outcome, refuse, succeed } from '../outcome.ts';
import { soundSetup } from '../sound-setup.ts';

const SPEC: CommandSpec = {
  command: 'atlas',
  options: {
    '--plant': { value: phrase('usage.expect.plant') },
    '--to': { value: phrase('usage.expect.folder') },
    '--fresh': {},
  },
  least: 0,
  most: 0,
  expected: phrase('usage.expect.nothing'),
};
/** Faults between two words of progress. */
const STRIDE = 10;

/** Simulates every fault of every plant and writes what each check would read. */
export async function atlas(
  words: readonly string[],
  root: string,
  tell: (line: string) => void,
): Promise<Outcome> {
  const begun = begin(words, SPEC, root);
  if (!begun.ok) return begun.outcome;
  const { options, library } = begun;
  const plants = library.plants.map(({ id }) => id);
  const only = options.get('--plant');
  if (only !== undefined && !plants.includes(only)) {
    const expected = phrase('expected.one-of', { words: plants });
    const params = { command: SPEC.command, found: inQuotes(only), expected };
    const mend = perhaps(nearest(only, plants));
    return refuse(sayMessage(phrase('usage.unknown-plant', { ...params, perhaps: mend })));
  }
  const setups = new Map(
    plants.flatMap((plant) => {
      const setup = only === undefined || only === plant ? soundSetup(library, plant) : null;
      return setup === null ? [] : [[plant, setup] as const];
    }),
  );
  const folder = options.get('--to') ?? atlasFolder(root);
  mkdirSync(folder, { recursive: true });
  // Here and not above: the bundler is large, and no other command needs it.
  const { bundledFile } = await import('../bench/bundle.ts');
  const worker = await bundledFile('src/cli/atlas/worker.ts', 'atlas-worker');
  const data: AtlasData = { setups: Object.fromEntries(setups) };
  const pool = createPool<AtlasTask, readonly TakenSample[]>({
    startWorker: () => new Worker(worker, { workerData: data }),
    workers: availableParallelism(),
  });
  const fresh = options.has('--fresh');
  const lines: string[] = [];
  try {
    for (const [plant, setup] of setups) {
      const file = atlasFile(folder, plant);
      const standing = fresh ? null : (readAtlas(file)?.fingerprint ?? null);
      const built = await buildAtlas({
        plant,
        setup,
        pool,
        keep: openKeep(join(root, 'reports', 'atlas', plant), fresh),
        standing,
        onProgress: (done, of) => {
          if (done % STRIDE === 0 || done === of)
            tell(message('atlas.progress', { plant, done, of }));
        },
      });
      lines.push(built === null ? message('atlas.in-order', { file }) : written(file, built));
    }
  } finally {
    await pool.close();
  }
  return succeed(lines.join('\n'));
}

function written(file: string, built: Atlas): string {
  return message('atlas.written', {
    file,
    causes: built.causes.length,
    keys: built.keys.length,
    kilobytes: Math.round(writeAtlas(file, built) / 1024),
  });
}
