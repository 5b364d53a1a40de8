import type { LearnerLibrary } from '../../scenario/index.ts';
import { createPool, type Pool, startTypescriptWorker } from '../threads/index.ts';
import type { Judged, JudgeTask } from './judge-task.ts';
import type { JudgeData } from './judge-worker.ts';

export interface JudgeOptions {
  readonly library: LearnerLibrary;
  /** Where the atlases are, each `<plant>.atlas`. */
  readonly atlasFolder: string;
  /** Threads at most: the rest of the machine belongs to the sockets. */
  readonly workers?: number;
  readonly idleMs?: number;
  readonly limitMs?: number;
}

/** Runs work again on threads of its own and judges it; see `judge-in-thread.ts`. */
export interface Judge {
  /** @throws Error where a thread broke off: then it is to be judged again later */
  judge(task: JudgeTask): Promise<Judged>;
  close(): Promise<void>;
}

const WORKER = new URL('./judge-worker.ts', import.meta.url);
/** Ready exercises and items are forgotten with the thread. */
const IDLE_MS = 5 * 60_000;
/** The longest visit is run in a tenth of it. */
const LIMIT_MS = 5 * 60_000;

/** Nothing is started before the first task. */
export function createJudge(options: JudgeOptions): Judge {
  const { library, atlasFolder, workers = 1, idleMs = IDLE_MS, limitMs = LIMIT_MS } = options;
  const data: JudgeData = { library, atlasFolder };
  const pool: Pool<JudgeTask, Judged> = createPool({
    startWorker: () => startTypescriptWorker(WORKER, data),
    workers,
    idleMs,
    limitMs,
  });
  return { judge: (task) => pool.run(task), close: () => pool.close() };
}
