import { Worker } from 'node:worker_threads';
import type { AtlasData, AtlasTask, TakenSample } from './worker.ts';

export interface Pool {
  /** One task after the other on each core; resolves when it is done. */
  run(task: AtlasTask): Promise<readonly TakenSample[]>;
  close(): Promise<void>;
}

interface Waiting {
  readonly task: AtlasTask;
  readonly resolve: (samples: readonly TakenSample[]) => void;
  readonly reject: (error: Error) => void;
}

/** @param file the worker, bundled: through a loader it runs at half the speed */
export function createPool(file: string, cores: number, data: AtlasData): Pool {
  const queue: Waiting[] = [];
  const workers = Array.from({ length: cores }, () => {
    const worker = new Worker(file, { workerData: data });
    let at: Waiting | null = null;
    const next = () => {
      at = queue.shift() ?? null;
      if (at !== null) worker.postMessage(at.task);
    };
    worker.on('message', (samples: readonly TakenSample[]) => {
      at?.resolve(samples);
      next();
    });
    worker.on('error', (error) => {
      at?.reject(error instanceof Error ? error : new Error(String(error)));
      at = null;
    });
    const isFree = () => at === null;
    return { worker, next, isFree };
  });
  return {
    run: (task) =>
      new Promise((resolve, reject) => {
        queue.push({ task, resolve, reject });
        workers.find(({ isFree }) => isFree())?.next();
      }),
    close: async () => {
      await Promise.all(workers.map(({ worker }) => worker.terminate()));
    },
  };
}
