import { startTypescriptWorker } from '../../threads/index.ts';
import { storeFailure } from '../failure.ts';
import type { Row, Statement } from '../types.ts';
import type { FromThread, ThreadError, ThreadStart, ToThread } from './thread-messages.ts';

/** The thread with the engine in it, opened. */
export interface Thread {
  /** In the order asked. @throws StoreFailure */
  run(statements: readonly Statement[]): Promise<readonly (readonly Row[])[]>;
  close(): Promise<void>;
}

interface Job {
  readonly number: number;
  readonly statements: readonly Statement[];
  readonly resolve: (rows: readonly (readonly Row[])[]) => void;
  readonly reject: (error: Error) => void;
}

const CLOSE_WITHIN_MS = 5000;

/**
 * Starts the thread and waits until the database in it is open.
 *
 * @param limitMs after so long the first of those that wait is given up, and the thread with it
 * @param onEnd once, when the thread is there no more, whatever ended it
 * @throws StoreFailure where the database cannot be opened
 */
export async function startThread(
  start: ThreadStart,
  limitMs: number,
  onEnd: () => void,
): Promise<Thread> {
  const worker = startTypescriptWorker(new URL('./database-worker.ts', import.meta.url), start);
  const jobs: Job[] = [];
  let jobNumber = 0;
  let timer: NodeJS.Timeout | undefined;
  let isEnded = false;
  let settleOpening: { resolve: () => void; reject: (error: Error) => void } | null = null;
  let onClosed: (() => void) | null = null;

  /** Time runs for the first one: the others wait for it. */
  function watchFirst(): void {
    clearTimeout(timer);
    const [first] = jobs;
    if (first === undefined) {
      // Nobody is kept waiting by a thread that has nothing to do.
      worker.unref();
      return;
    }
    worker.ref();
    timer = setTimeout(() => end(new Error(`no answer within ${limitMs} ms`)), limitMs);
  }

  /** What was not answered may have been done or not: whoever asked asks again. */
  function end(error: Error): void {
    if (isEnded) return;
    isEnded = true;
    clearTimeout(timer);
    void worker.terminate();
    onEnd();
    const failure = storeFailure('database not reached', error);
    settleOpening?.reject(failure);
    for (const job of jobs.splice(0)) job.reject(failure);
    onClosed?.();
  }

  function settled(number: number): Job | undefined {
    const at = jobs.findIndex((job) => job.number === number);
    const [job] = at < 0 ? [] : jobs.splice(at, 1);
    watchFirst();
    return job;
  }

  worker.on('error', (error) => end(asError(error)));
  worker.on('exit', (code) => end(new Error(`the thread of the database ended (${code})`)));
  worker.on('message', (message: FromThread) => {
    switch (message.type) {
      case 'open':
        settleOpening?.resolve();
        settleOpening = null;
        break;
      case 'not opened':
        settleOpening?.reject(failureOf(message.error));
        settleOpening = null;
        end(new Error('not opened'));
        break;
      case 'done':
        settled(message.job)?.resolve(message.rows);
        break;
      case 'failed':
        settled(message.job)?.reject(failureOf(message.error));
        if (message.broken) end(new Error(message.error.message));
        break;
      case 'closed':
        end(new Error('closed'));
        break;
    }
  });

  await new Promise<void>((resolve, reject) => {
    settleOpening = { resolve, reject };
  });
  watchFirst();
  return {
    run: (statements) =>
      new Promise((resolve, reject) => {
        if (isEnded) {
          reject(storeFailure('database not reached', new Error('the thread has ended')));
          return;
        }
        const job = { number: ++jobNumber, statements, resolve, reject };
        jobs.push(job);
        if (jobs.length === 1) watchFirst();
        const message: ToThread = { type: 'do', job: job.number, statements };
        try {
          worker.postMessage(message);
        } catch (error) {
          settled(job.number)?.reject(storeFailure('database refused', error));
        }
      }),
    close: () =>
      new Promise((resolve) => {
        if (isEnded) {
          resolve();
          return;
        }
        onClosed = resolve;
        worker.ref();
        clearTimeout(timer);
        timer = setTimeout(() => end(new Error('not closed in time')), CLOSE_WITHIN_MS);
        worker.postMessage({ type: 'close' } satisfies ToThread);
      }),
  };
}

function failureOf({ trouble, code, message }: ThreadError) {
  return storeFailure(trouble, Object.assign(new Error(message), { code }));
}

function asError(error: unknown): Error {
  return error instanceof Error ? error : new Error(String(error));
}
