import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  connectInstructor,
  connectProjector,
  type SmallShelf,
} from '../../../src/classroom/client/index.ts';
import type { Said } from '../../../src/classroom/index.ts';
import { createFakeServer, type FakeServer } from './fake-server.ts';

const PLACE = { class: 'class-of-eight', secret: 'the secret of this class' };

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function createShelf(): SmallShelf {
  const texts = new Map<string, string>();
  return {
    get: (key) => texts.get(key) ?? null,
    set: (key, text) => void texts.set(key, text),
    remove: (key) => void texts.delete(key),
  };
}

/** Keys must differ, also over reloads: numbers that never come again. */
function rolling(): () => number {
  let state = 1;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

function connect(server: FakeServer, shelf: SmallShelf, random: () => number) {
  return connectInstructor(PLACE, { openWire: server.openWire, shelf, random, now: Date.now });
}

const hint = (text: string) => ({ type: 'hint', to: 'all', text }) as const;

describe('what an instructor says', () => {
  it('is taken once and in order, however often the line or the page goes', async () => {
    const step = fc.constantFrom('say', 'say', 'drop', 'deaf', 'heard', 'wait', 'reload');
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 30 }), async (steps) => {
        const server = createFakeServer();
        const shelf = createShelf();
        const random = rolling();
        let client = connect(server, shelf, random);
        const said: string[] = [];
        for (const one of steps) {
          if (one === 'say') {
            said.push(`hint ${said.length}`);
            void client.say(hint(said.at(-1) ?? ''));
          } else if (one === 'drop') server.drop();
          else if (one === 'deaf' || one === 'heard') server.losesAnswers = one === 'deaf';
          else if (one === 'wait') await vi.advanceTimersByTimeAsync(700);
          else {
            client.close();
            client = connect(server, shelf, random);
          }
        }
        server.losesAnswers = false;
        await vi.advanceTimersByTimeAsync(60_000);
        const now = client.store.read();
        expect(now.book.hints.map(({ text }) => text)).toEqual(said);
        expect(now.unsaid).toEqual([]);
        client.close();
      }),
      { seed: 31, numRuns: 200 },
    );
  });

  it('is listed as unsaid while there is no server, and answered when there is one', async () => {
    const server = createFakeServer();
    server.isDown = true;
    const client = connect(server, createShelf(), rolling());
    let answer: Said | null = null;
    void client.say(hint('look at the damper')).then((said) => {
      answer = said;
    });
    await vi.advanceTimersByTimeAsync(10_000);
    expect(client.store.read().unsaid.map(({ entry }) => entry)).toEqual([
      hint('look at the damper'),
    ]);
    expect(answer).toBeNull();
    server.isDown = false;
    await vi.advanceTimersByTimeAsync(10_000);
    expect(answer).toEqual({ ok: true, n: 2 });
    client.close();
  });
});

describe('what an instructor sees', () => {
  const state = {
    phase: 'working',
    step: 'pre-purge',
    stepS: 3,
    runS: 9,
    running: true,
    lockout: null,
    last: null,
    suspects: [],
    flags: 0,
    readings: 0,
    resets: 0,
    lockouts: 0,
    progress: 0.5,
    answered: 0,
    right: 0,
    asksHelp: false,
    applied: 0,
  } as const;

  it('keeps the tiles that are not told again', async () => {
    const server = createFakeServer();
    const client = connect(server, createShelf(), rolling());
    await vi.advanceTimersByTimeAsync(50);
    server.send('board', { seats: [1, 2].map((seat) => ({ seat, here: true, state })) });
    server.send('board', { seats: [{ seat: 2, here: false, state }] });
    server.send('board', { seats: [{ seat: 0, here: false, state }] });
    const { board } = client.store.read();
    expect([...board.values()].map(({ seat, here }) => [seat, here])).toEqual([
      [1, true],
      [2, false],
    ]);
    client.close();
  });

  it.each(['instructor', 'projector'])(
    'of a watched seat: the %s has its whole work again after the line broke',
    async (role) => {
      const server = createFakeServer();
      const head = { attempt: 1, headS: 4, hash: null, setupHash: '', startedMs: 0, applied: 0 };
      server.work = { ...head, rev: 1, acts: [{ t: 1, type: 'check' }], desk: [] };
      const client =
        role === 'instructor'
          ? connect(server, createShelf(), rolling())
          : connectProjector(
              { class: PLACE.class, key: 'the key of the screen' },
              { openWire: server.openWire },
            );
      await vi.advanceTimersByTimeAsync(50);
      const seen: [number, number][] = [];
      client.onWorked((seat, work) => seen.push([seat, work.acts.length]));
      const watching = client.watch(3);
      await vi.advanceTimersByTimeAsync(50);
      expect((await watching)?.acts).toHaveLength(1);
      const delta = {
        ...head,
        rev: 2,
        keepActs: 1,
        acts: [{ t: 2, type: 'check' }],
        keepDesk: 0,
        desk: [],
      };
      server.send('worked', { seat: 3, delta });
      server.send('worked', { seat: 5, delta });
      server.work = { ...server.work, rev: 3, acts: [1, 2, 3].map((t) => ({ t, type: 'check' })) };
      server.drop();
      await vi.advanceTimersByTimeAsync(2000);
      expect(seen).toEqual([
        [3, 1],
        [3, 2],
        [3, 3],
      ]);
      client.close();
    },
  );
});
