import { Worker } from 'node:worker_threads';
import { afterEach, describe, expect, it } from 'vitest';
import { createPool, type Pool, type PoolOptions } from '../../../src/server/threads/index.ts';

/** Answers with the task and its own number; some tasks it does not survive. */
const THREAD = `
  const { parentPort, threadId } = require('node:worker_threads');
  parentPort.on('message', (task) => {
    if (task === 'throw') throw new Error('broken off');
    if (task === 'leave') process.exit(3);
    if (task === 'hang') return;
    parentPort.postMessage({ task, threadId });
  });
`;
interface Answer {
  readonly task: unknown;
  readonly threadId: number;
}
let pool: Pool<unknown, Answer> | null = null;
let started = 0;

function open(options: Partial<PoolOptions> = {}) {
  started = 0;
  const startWorker = () => {
    started += 1;
    return new Worker(THREAD, { eval: true });
  };
  pool = createPool<unknown, Answer>({ startWorker, workers: 2, ...options });
  return pool;
}
afterEach(() => pool?.close());

describe('a pool of threads', () => {
  it('starts none before it has a task, and no more than it may', async () => {
    const own = open();
    expect(started).toBe(0);
    const tasks = Array.from({ length: 20 }, (_, i) => i);
    const answers = await Promise.all(tasks.map((task) => own.run(task)));
    expect(answers.map(({ task }) => task)).toEqual(tasks);
    expect(started).toBe(2);
    expect(new Set(answers.map(({ threadId }) => threadId)).size).toBe(2);
  });

  it.each([
    ['throw', 'broken off'],
    ['leave', 'ended by itself (3)'],
  ])(
    'tells whose task it was that a thread did not survive (%s), and goes on with a new one',
    async (task, why) => {
      const own = open({ workers: 1 });
      const lost = own.run(task);
      const next = own.run('next');
      await expect(lost).rejects.toThrow(why);
      expect(await next).toMatchObject({ task: 'next' });
      expect(started).toBe(2);
    },
  );

  it('gives up a task that takes too long, and no other', async () => {
    const own = open({ workers: 1, limitMs: 200 });
    const lost = own.run('hang');
    const next = own.run('next');
    await expect(lost).rejects.toThrow('not done after 200 ms');
    expect(await next).toMatchObject({ task: 'next' });
  });

  it('refuses what does not cross to a thread, and keeps the thread', async () => {
    const own = open({ workers: 1 });
    await expect(own.run(() => 0)).rejects.toThrow('could not be cloned');
    expect(await own.run('next')).toMatchObject({ task: 'next' });
    expect(started).toBe(1);
  });

  it('ends a thread without work, and starts another for the next task', async () => {
    const own = open({ workers: 1, idleMs: 1 });
    const first = await own.run('one');
    let second = await own.run('two');
    // A thread may be given its next task before its millisecond is over.
    for (let i = 0; i < 200 && second.threadId === first.threadId; i += 1) {
      await new Promise((resolve) => setTimeout(resolve, 10));
      second = await own.run('two');
    }
    expect(second.threadId).not.toBe(first.threadId);
  });

  it('gives up what is not done when it is closed, and takes nothing more', async () => {
    const own = open({ workers: 1 });
    const lost = [own.run('hang'), own.run('waiting')];
    const told = Promise.allSettled(lost);
    await own.close();
    expect((await told).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
    await expect(own.run('late')).rejects.toThrow('closed');
  });
});
