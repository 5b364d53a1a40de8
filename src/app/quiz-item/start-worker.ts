export const startWorker = (): Worker =>
  new Worker(new URL('../session/worker.ts', import.meta.url), { type: 'module' });
