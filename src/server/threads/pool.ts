/** Work given out to threads, so that the thread that asks does not wait for it. */
import type { Worker } from 'node:worker_threads';

export interface Pool<Task, Result> {
  /**
   * One task after the other in each thread.
   *
   * @throws Error where the thread broke off, the task took too long, or the pool is closed
   */
  run(task: Task): Promise<Result>;
  /** Tasks that are not done are given up. */
  close(): Promise<void>;
}

export interface PoolOptions {
  /** A thread that answers each message with one message. */
  readonly startWorker: () => Worker;
  /** Threads at most; one is started when a task finds the others at work. */
  readonly workers: number;
  /** A thread without work for so long is ended; left out: never. */
  readonly idleMs?: number;
  /** A task that takes longer is given up, with its thread; left out: none is. */
  readonly limitMs?: number;
}

interface Waiting<Task, Result> {
  readonly task: Task;
  readonly resolve: (result: Result) => void;
  readonly reject: (error: Error) => void;
}

interface Thread<Task, Result> {
  readonly worker: Worker;
  at: Waiting<Task, Result> | null;
  timer: ReturnType<typeof setTimeout> | undefined;
}

export function createPool<Task, Result>(options: PoolOptions): Pool<Task, Result> {
  const { startWorker, workers, idleMs, limitMs } = options;
  const queue: Waiting<Task, Result>[] = [];
  const threads = new Set<Thread<Task, Result>>();
  let isClosed = false;

  function giveOut(): void {
    while (queue.length > 0) {
      const free = [...threads].find(({ at }) => at === null) ?? startOne();
      if (free === null) return;
      const next = queue.shift();
      if (next !== undefined) begin(free, next);
    }
  }

  function startOne(): Thread<Task, Result> | null {
    if (threads.size >= workers) return null;
    const thread: Thread<Task, Result> = { worker: startWorker(), at: null, timer: undefined };
    const { worker } = thread;
    threads.add(thread);
    worker.on('message', (result: Result) => {
      const done = thread.at;
      rest(thread);
      done?.resolve(result);
      giveOut();
    });
    worker.on('error', (error) => end(thread, asError(error)));
    worker.on('exit', (code) => end(thread, new Error(`the thread ended by itself (${code})`)));
    return thread;
  }

  function begin(thread: Thread<Task, Result>, next: Waiting<Task, Result>): void {
    clearTimeout(thread.timer);
    thread.at = next;
    thread.worker.ref();
    if (limitMs !== undefined) {
      const late = () => end(thread, new Error(`not done after ${limitMs} ms`));
      thread.timer = setTimeout(late, limitMs);
    }
    try {
      thread.worker.postMessage(next.task);
    } catch (error) {
      // Only plain data crosses to a thread.
      rest(thread);
      next.reject(asError(error));
    }
  }

  /** A thread without work does not keep the process alive. */
  function rest(thread: Thread<Task, Result>): void {
    clearTimeout(thread.timer);
    thread.at = null;
    thread.worker.unref();
    if (idleMs === undefined) return;
    thread.timer = setTimeout(() => end(thread, null), idleMs);
    thread.timer.unref();
  }

  /** What it was at is lost; the next task gets a new one. */
  function end(thread: Thread<Task, Result>, error: Error | null): void {
    if (!threads.delete(thread)) return;
    clearTimeout(thread.timer);
    void thread.worker.terminate();
    if (error !== null) thread.at?.reject(error);
    giveOut();
  }

  return {
    run: (task) =>
      new Promise((resolve, reject) => {
        if (isClosed) {
          reject(new Error('the pool is closed'));
          return;
        }
        queue.push({ task, resolve, reject });
        giveOut();
      }),
    async close() {
      isClosed = true;
      const closed = new Error('the pool is closed');
      for (const { reject } of queue.splice(0)) reject(closed);
      const all = [...threads];
      threads.clear();
      for (const { at, timer } of all) {
        clearTimeout(timer);
        at?.reject(closed);
      }
      await Promise.all(all.map(({ worker }) => worker.terminate()));
    },
  };
}

function asError(error: unknown): Error {
  return error instanceof Error ? error : new Error(String(error));
}
