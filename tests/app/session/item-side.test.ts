/** The page's end of making items: in which order they are asked for, and what is kept. */
import { beforeEach, describe, expect, it } from 'vitest';
import { createItemSide, type ItemSide } from '../../../src/app/session/item-side.ts';
import type { WorkerLike } from '../../../src/app/session/session-types.ts';
import type { ToMaker } from '../../../src/app/session/to-maker.ts';

let side: ItemSide;
let started: (WorkerLike<ToMaker> & { ended: boolean })[];
let sent: ToMaker[];

const TROUBLE = { ok: false, trouble: 'atlas not loaded', detail: 'offline' } as const;
const REJECTED = { ok: false, trouble: 'not proved any more', detail: 'lint' } as const;

function answerLast(answer: object): void {
  const ask = sent.at(-1)?.ask;
  started.at(-1)?.onmessage?.({ data: { type: 'made item', ask, ...answer } } as MessageEvent);
}
const asked = () => sent.map(({ id }) => id);

beforeEach(() => {
  started = [];
  sent = [];
  side = createItemSide({
    atlases: 'https://page.example/atlas/',
    startWorker: () => {
      const worker = {
        ended: false,
        onmessage: null,
        onerror: null,
        postMessage: (message: ToMaker) => sent.push(message),
        terminate: () => {
          worker.ended = true;
        },
      } as WorkerLike<ToMaker> & { ended: boolean };
      started.push(worker);
      return worker;
    },
  });
});

describe('asking for items', () => {
  it('starts no worker before the first question, and one for all of them', async () => {
    expect(started).toHaveLength(0);
    const first = side.ask('a');
    answerLast(REJECTED);
    expect(await first).toEqual(REJECTED);
    void side.ask('b');
    expect(started).toHaveLength(1);
  });

  it('asks one at a time, and what someone waits for before what is made ahead', () => {
    void side.ask('a');
    side.prepare('b');
    side.prepare('c');
    void side.ask('d');
    expect(asked()).toEqual(['a']);
    answerLast(REJECTED);
    expect(asked()).toEqual(['a', 'd']);
    answerLast(REJECTED);
    answerLast(REJECTED);
    expect(asked()).toEqual(['a', 'd', 'b', 'c']);
  });

  it('makes an item once, however often it is asked for, ahead or not', async () => {
    side.prepare('a');
    const early = side.ask('a');
    const again = side.ask('a');
    answerLast(REJECTED);
    expect(await early).toEqual(REJECTED);
    expect(await again).toEqual(REJECTED);
    expect(await side.ask('a')).toEqual(REJECTED);
    side.prepare('a');
    expect(asked()).toEqual(['a']);
    expect(side.known('a')).toEqual(REJECTED);
  });

  it('asks again after trouble that may have passed', async () => {
    const first = side.ask('a');
    answerLast(TROUBLE);
    expect(await first).toEqual(TROUBLE);
    expect(side.known('a')).toBeNull();
    void side.ask('a');
    expect(asked()).toEqual(['a', 'a']);
  });

  it('says that making broke off where the worker dies, and starts another one', async () => {
    const first = side.ask('a');
    started[0]?.onerror?.({ message: 'out of memory' } as ErrorEvent);
    expect(await first).toEqual({
      ok: false,
      trouble: 'making broke off',
      detail: 'out of memory',
    });
    expect(started[0]?.ended).toBe(true);
    void side.ask('b');
    expect(started).toHaveLength(2);
  });

  it('takes an answer that does not fit for a breaking off, and leaves nobody waiting', async () => {
    const first = side.ask('a');
    answerLast({ ok: true, made: { item: { id: 'a' } } });
    expect(await first).toMatchObject({ ok: false, trouble: 'making broke off' });
  });

  it('rests: those who wait are told, and what is made stays', async () => {
    const first = side.ask('a');
    answerLast(REJECTED);
    await first;
    const second = side.ask('b');
    side.rest();
    expect(await second).toMatchObject({ ok: false, trouble: 'making broke off' });
    expect(started[0]?.ended).toBe(true);
    expect(await side.ask('a')).toEqual(REJECTED);
  });
});
