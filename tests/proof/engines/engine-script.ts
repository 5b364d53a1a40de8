/**
 * The engine and every shipped scenario in one plain script: no imports, no modules, and of its
 * surroundings it uses `print` alone.
 */
import { join } from 'node:path';
import { build, normalizePath, type Plugin } from 'vite';
import { ROOT } from '../../../src/cli/house/paths.ts';
import { library, shippedSetup } from '../../support/library.ts';

/** Long runs are cut here: by then every part of the plant has moved, and shells are slow. */
const MOST_S = 400;

/**
 * XState takes hold of the console's log when it is loaded, and a bare shell has no console. It
 * must never be used: a word printed would not be a hash, and the comparison would fail.
 */
const CONSOLE =
  'if (typeof console === "undefined") globalThis.console = { log: print, warn: print, error: print };';

export async function writeEngineScript(folder: string): Promise<string> {
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' },
    plugins: [startsPlugin()],
    build: {
      outDir: folder,
      emptyOutDir: true,
      minify: false,
      target: 'es2022',
      modulePreload: { polyfill: false },
      rolldownOptions: {
        input: ENTRY,
        checks: { pluginTimings: false },
        output: { format: 'iife', entryFileNames: 'hashes.js', banner: CONSOLE },
      },
    },
  });
  return join(folder, 'hashes.js');
}

const ENTRY = 'virtual:print-hashes';

function startsPlugin(): Plugin {
  const starts = library.scenarios.map(({ id, until }) => ({
    id,
    untilS: Math.min(until, MOST_S),
    setup: shippedSetup(id),
  }));
  const engine = normalizePath(join(ROOT, 'src/engine/index.ts'));
  return {
    name: 'every-start',
    resolveId: (id) => (id === ENTRY ? `\0${ENTRY}` : undefined),
    load: (id) =>
      id === `\0${ENTRY}`
        ? `import { createRun } from ${JSON.stringify(engine)};
           for (const { id, untilS, setup } of JSON.parse(${JSON.stringify(JSON.stringify(starts))})) {
             const run = createRun(setup, { keep: 'hash only' });
             run.advanceTo(untilS);
             print(id + ': ' + run.hash() + ' after ' + run.timeS() + ' s');
           }`
        : undefined,
  };
}
