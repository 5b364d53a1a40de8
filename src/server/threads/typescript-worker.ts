import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';

/** Asked for by name it would give its half for `require`, which such a thread cannot use. */
const API = new URL(
  './esm/api/index.mjs',
  pathToFileURL(createRequire(import.meta.url).resolve('tsx')),
).href;

/**
 * A thread that runs a file of TypeScript, whatever this process was started with. The loader must
 * be registered in the thread itself: what is given to it with `--import` is passed over there.
 */
export function startTypescriptWorker(file: URL, workerData: unknown): Worker {
  const [api, entry] = [JSON.stringify(API), JSON.stringify(file.href)];
  const code = `import(${api}).then(({ register }) => { register(); return import(${entry}); })`;
  return new Worker(code, { eval: true, workerData, execArgv: [] });
}
