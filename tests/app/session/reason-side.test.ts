/** When a session asks its second worker to reason, and what it makes of the answers. */
import { describe, expect, it } from 'vitest';
import type { DeskEntry } from '../../../machines/job/index.ts';
import type { FromReasoner } from '../../../src/app/session/reasoning-protocol.ts';
import { createReasonSide } from '../../../src/app/session/session-reason.ts';
import type { SavedRun, WorkerLike } from '../../../src/app/session/session-types.ts';
import type { ToReasoner } from '../../../src/app/session/to-reasoner.ts';

const DESK: DeskEntry[] = [{ t: 15, type: 'begin' }];
const SAVED: SavedRun = { log: [], pending: [], headS: 20, hash: 'x' };

/** A worker that answers when it is told to. */
function openSide(kind: 'job' | 'lesson' = 'job') {
  const saved = { now: SAVED };
  const workers: (WorkerLike<ToReasoner> & { asked: ToReasoner[]; ended: boolean })[] = [];
  const startWorker = () => {
    const asked: ToReasoner[] = [];
    const worker = {
      asked,
      ended: false,
      postMessage: (message: ToReasoner) => asked.push(message),
      terminate: () => {
        worker.ended = true;
      },
      onmessage: null,
      onerror: null,
    } as (typeof workers)[number];
    workers.push(worker);
    return worker;
  };
  const side = createReasonSide(
    { startWorker, atlases: 'folder' },
    { kind, id: 'toy' },
    () => saved.now,
  );
  const answer = (change: Partial<FromReasoner> = {}) => {
    const worker = workers.at(-1);
    const last = worker?.asked.at(-1);
    const data = {
      type: 'reasoned',
      ask: last?.ask,
      reasoning: null,
      trouble: null,
      detail: '',
      upTo: { log: last?.log.length, desk: last?.desk.length },
      ...change,
    };
    worker?.onmessage?.({ data } as MessageEvent);
  };
  return { side, saved, workers, answer };
}

describe('asking to reason', () => {
  it('starts a worker at the first question, and one only', async () => {
    const { side, workers, answer } = openSide();
    expect(workers).toHaveLength(0);
    for (const desk of [DESK, [...DESK]]) {
      const reasoned = side.reason(desk);
      answer();
      expect((await reasoned).upTo).toEqual({ log: 0, desk: 1 });
    }
    expect(workers).toHaveLength(1);
    expect(workers[0]?.asked[0]).toMatchObject({ kind: 'job', id: 'toy', untilS: 20 });
  });

  it('has one question out; those that come meanwhile are answered together by the newest', async () => {
    const { side, workers, answer } = openSide();
    const all = [1, 2, 3].map((entries) => side.reason(Array(entries).fill(DESK[0])));
    expect(workers[0]?.asked).toHaveLength(1);
    answer();
    answer();
    expect((await Promise.all(all)).map(({ upTo }) => upTo.desk)).toEqual([1, 3, 3]);
    expect(workers[0]?.asked).toHaveLength(2);
  });

  it('does not ask again where nothing has changed, and does where the plant went on or there was trouble', async () => {
    const { side, saved, workers, answer } = openSide();
    const ask = async (change: Partial<FromReasoner> = {}) => {
      const before = workers[0]?.asked.length ?? 0;
      const reasoned = side.reason(DESK);
      const asked = (workers[0]?.asked.length ?? 0) > before;
      if (asked) answer(change);
      await reasoned;
      return asked;
    };
    expect(await ask({ trouble: 'atlas not loaded' })).toBe(true);
    expect(await ask()).toBe(true);
    expect(await ask()).toBe(false);
    saved.now = { ...SAVED, headS: 21 };
    expect(await ask()).toBe(true);
  });

  it('says when the worker broke or was not understood, and starts another one', async () => {
    const { side, workers, answer } = openSide();
    const broken = side.reason(DESK);
    workers[0]?.onerror?.({ message: 'no such file' } as ErrorEvent);
    expect(await broken).toMatchObject({
      reasoning: null,
      trouble: 'reasoning broke off',
      detail: 'no such file',
    });
    expect(workers[0]?.ended).toBe(true);
    const strange = side.reason(DESK);
    expect(workers).toHaveLength(2);
    answer({ upTo: 'all of it' } as unknown as FromReasoner);
    expect(await strange).toMatchObject({ trouble: 'reasoning broke off' });
  });

  it('lets nobody wait when the session is closed, and lets its worker go', async () => {
    const { side, workers } = openSide();
    const all = [side.reason(DESK), side.reason([...DESK])];
    side.close();
    for (const reasoned of await Promise.all(all)) expect(reasoned.reasoning).toBeNull();
    expect(workers[0]?.ended).toBe(true);
  });

  it('has nothing to say of a lesson, and starts no worker for it', async () => {
    const { side, workers } = openSide('lesson');
    expect(await side.reason(DESK)).toMatchObject({ reasoning: null, trouble: null });
    expect(workers).toHaveLength(0);
  });
});
