import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type ClassEvent, foldClass } from '../../../machines/class/index.ts';
import {
  connectSeat,
  type SeatClient,
  type WorkToTell,
} from '../../../src/classroom/client/index.ts';
import { createFakeServer, type FakeServer } from './fake-server.ts';

const PLACE = { class: 'class-of-eight', seat: 3, token: 'a token of this very seat' };

const EMPTY: WorkToTell = {
  attempt: 1,
  headS: 0,
  hash: null,
  setupHash: 'of the setup',
  startedMs: 1000,
  applied: 0,
  acts: [],
  desk: [],
};

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

function connect(server: FakeServer, wake?: (again: () => void) => () => void): SeatClient {
  return connectSeat(PLACE, {
    openWire: server.openWire,
    random: () => 0.5,
    now: () => Date.now(),
    ...(wake === undefined ? {} : { wake }),
  });
}

function withActs(count: number, more: Partial<WorkToTell> = {}): WorkToTell {
  const acts = Array.from({ length: count }, (_, n) => ({ t: n, type: 'check', n }));
  return { ...EMPTY, headS: count, acts, ...more };
}

describe('the place of a learner in a class', () => {
  it('is welcomed with all that was said so far', async () => {
    const server = createFakeServer();
    server.add({ type: 'begin' });
    const seat = connect(server);
    await vi.advanceTimersByTimeAsync(50);
    const now = seat.store.read();
    expect(now).toMatchObject({ link: 'live', code: 'ACDEFH', nickname: 'Kim', offsetMs: 5000 });
    expect(now.book).toEqual(foldClass(server.entries));
    expect(now.book.phase).toBe('under way');
    seat.close();
  });

  it('knows without a server what an earlier page knew, and asks only for what is new', async () => {
    const server = createFakeServer();
    server.add({ type: 'begin' });
    server.isDown = true;
    const known = [...server.entries];
    const seat = connectSeat({ ...PLACE, known }, { openWire: server.openWire, random: () => 0 });
    expect(seat.store.read()).toMatchObject({ link: 'connecting', book: foldClass(known) });
    server.add({ type: 'hint', to: 'all', text: 'look at the damper' });
    server.isDown = false;
    await vi.advanceTimersByTimeAsync(5000);
    expect(server.hellos.at(-1)).toMatchObject({ since: 2 });
    expect(seat.store.read().book).toEqual(foldClass(server.entries));
    seat.close();
  });

  it('forgets what it knew of a class that has lost it', async () => {
    const server = createFakeServer();
    const known = [...server.entries, server.add({ type: 'begin' })];
    server.entries.length = 1;
    const seat = connectSeat({ ...PLACE, known }, { openWire: server.openWire });
    await vi.advanceTimersByTimeAsync(2000);
    expect(seat.store.read()).toMatchObject({ link: 'live', book: foldClass(server.entries) });
    seat.close();
  });

  it('is back within five seconds of a server that was away for an hour', async () => {
    const server = createFakeServer();
    const seat = connect(server);
    await vi.advanceTimersByTimeAsync(6000);
    server.isDown = true;
    server.drop();
    expect(seat.store.read().link).toBe('away');
    await vi.advanceTimersByTimeAsync(20_000);
    server.isDown = false;
    await vi.advanceTimersByTimeAsync(5000);
    expect(seat.store.read().link).toBe('live');
    server.isDown = true;
    server.drop();
    await vi.advanceTimersByTimeAsync(3_600_000);
    server.isDown = false;
    await vi.advanceTimersByTimeAsync(10_100);
    expect(seat.store.read().link).toBe('live');
    seat.close();
  });

  it('connects at once when the device wakes up', async () => {
    const server = createFakeServer();
    let wakeUp = (): void => undefined;
    const seat = connect(server, (again) => {
      wakeUp = again;
      return () => undefined;
    });
    await vi.advanceTimersByTimeAsync(50);
    server.isDown = true;
    server.drop();
    await vi.advanceTimersByTimeAsync(3_600_000);
    server.isDown = false;
    wakeUp();
    await vi.advanceTimersByTimeAsync(20);
    expect(seat.store.read().link).toBe('live');
    seat.close();
  });

  it('finds out on waking that its line is dead, and takes another', async () => {
    const server = createFakeServer();
    let wakeUp = (): void => undefined;
    const seat = connect(server, (again) => {
      wakeUp = again;
      return () => undefined;
    });
    await vi.advanceTimersByTimeAsync(50);
    server.losesQuestions = true;
    server.add({ type: 'begin' });
    wakeUp();
    await vi.advanceTimersByTimeAsync(2100);
    expect(seat.store.read().link).toBe('away');
    server.losesQuestions = false;
    await vi.advanceTimersByTimeAsync(1000);
    expect(seat.store.read()).toMatchObject({ link: 'live' });
    expect(seat.store.read().book.phase).toBe('under way');
    seat.close();
  });

  it.each(['seat taken elsewhere', 'class deleted', 'no such class', 'other version'])(
    'does not come back after "%s"',
    async (why) => {
      const server = createFakeServer();
      const seat = connect(server);
      await vi.advanceTimersByTimeAsync(50);
      server.send('gone', { why });
      server.drop();
      await vi.advanceTimersByTimeAsync(60_000);
      expect(seat.store.read()).toMatchObject({ link: 'gone', gone: why });
      expect(server.hellos).toHaveLength(1);
      seat.close();
    },
  );

  it('comes back after "server stops", and after being turned away as too fast', async () => {
    const server = createFakeServer();
    const seat = connect(server);
    await vi.advanceTimersByTimeAsync(50);
    server.refuses = 'too fast';
    server.send('gone', { why: 'server stops' });
    await vi.advanceTimersByTimeAsync(2000);
    expect(seat.store.read().link).toBe('away');
    server.refuses = null;
    await vi.advanceTimersByTimeAsync(5000);
    expect(seat.store.read().link).toBe('live');
    seat.close();
  });

  it('says what is saved: kept here while there is no server, saved once it has answered', async () => {
    const server = createFakeServer();
    server.isDown = true;
    const seat = connect(server);
    seat.tellWork(withActs(3));
    await vi.advanceTimersByTimeAsync(1000);
    expect(seat.store.read().saved).toBe('kept here');
    server.isDown = false;
    server.cannotSave = true;
    await vi.advanceTimersByTimeAsync(5000);
    expect(seat.store.read()).toMatchObject({ link: 'live', saved: 'telling', workRefused: null });
    server.cannotSave = false;
    await vi.advanceTimersByTimeAsync(2000);
    expect(seat.store.read().saved).toBe('saved');
    expect(server.work).toMatchObject(withActs(3));
    seat.close();
  });

  it('tells only what is new of it', async () => {
    const server = createFakeServer();
    const seat = connect(server);
    await vi.advanceTimersByTimeAsync(50);
    seat.tellWork(withActs(1000));
    await vi.advanceTimersByTimeAsync(1000);
    seat.tellWork(withActs(1001));
    await vi.advanceTimersByTimeAsync(1000);
    expect(server.deltas.map(({ keepActs, acts }) => [keepActs, acts.length])).toEqual([
      [0, 1000],
      [1000, 1],
    ]);
    seat.close();
  });

  it('hands in only what is saved, and once more where no answer came', async () => {
    const server = createFakeServer();
    const seat = connect(server);
    await vi.advanceTimersByTimeAsync(50);
    server.cannotSave = true;
    seat.tellWork(withActs(3));
    let done = false;
    const handing = seat.handIn(1, { outcome: 0.5, hash: 'of the run' }).then((answer) => {
      done = answer.ok;
    });
    await vi.advanceTimersByTimeAsync(5000);
    expect(server.handedIn).toEqual([]);
    server.cannotSave = false;
    await vi.advanceTimersByTimeAsync(1100);
    server.losesAnswers = true;
    await vi.advanceTimersByTimeAsync(8000);
    server.losesAnswers = false;
    await vi.advanceTimersByTimeAsync(10_000);
    await handing;
    expect(done).toBe(true);
    expect(server.handedIn.at(-1)).toEqual({ attempt: 1, rev: server.work?.rev });
    seat.close();
  });

  it('shows the head of the one plant only once the work is there on which it rests', async () => {
    const server = createFakeServer();
    server.entries.length = 0;
    server.add({
      type: 'open',
      what: { kind: 'start', id: 'a start', title: 'A start', plant: 'a plant' },
      way: 'together',
      seed: 7,
    });
    server.work = { ...withActs(2), rev: 4 };
    const seat = connect(server);
    await vi.advanceTimersByTimeAsync(50);
    const head = { attempt: 1, acts: 3, headS: 9, hash: null, mode: 'playing', speed: 1 } as const;
    server.send('head', { ...head, rev: 4 });
    expect(seat.store.read().head?.rev).toBe(4);
    server.send('head', { ...head, rev: 5, headS: 10 });
    expect(seat.store.read().head?.rev).toBe(4);
    const { acts, desk: _, ...rest } = withActs(3);
    const delta = { ...rest, rev: 5, keepActs: 2, acts: acts.slice(2), keepDesk: 0, desk: [] };
    server.send('worked', { seat: null, delta });
    expect(seat.store.read()).toMatchObject({ head: { rev: 5, headS: 10 }, work: withActs(3) });
    seat.close();
  });
});

describe('whatever the network does', () => {
  type Step =
    | { do: 'act' | 'desk' | 'undo' | 'anew' | 'drop' | 'down' | 'up' | 'twice' | 'back to front' }
    | { do: 'cut'; share: number }
    | { do: 'entry'; sent: boolean }
    | { do: 'lose answers' | 'lose questions' | 'no saving'; on: boolean }
    | { do: 'wait' | 'travel'; ms: number };
  const step: fc.Arbitrary<Step> = fc.oneof(
    fc.record({
      do: fc.constantFrom('act', 'act', 'act', 'desk', 'undo', 'drop', 'twice', 'back to front'),
    }),
    fc.record({ do: fc.constantFrom('anew', 'down', 'up') }),
    fc.record({
      do: fc.constant('cut' as const),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
    }),
    fc.record({ do: fc.constant('entry' as const), sent: fc.boolean() }),
    fc.record({
      do: fc.constantFrom('lose answers', 'lose questions', 'no saving'),
      on: fc.boolean(),
    }),
    fc.record({ do: fc.constant('wait'), ms: fc.integer({ min: 1, max: 12_000 }) }),
    fc.record({ do: fc.constant('wait'), ms: fc.integer({ min: 1, max: 400 }) }),
    fc.record({ do: fc.constant('travel'), ms: fc.integer({ min: 1, max: 3000 }) }),
  ) as fc.Arbitrary<Step>;

  it('ends in the same class and the same saved work', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(step, { maxLength: 40 }), async (steps) => {
        const server = createFakeServer();
        const seat = connect(server);
        let work = EMPTY;
        let acted = 0;
        let before = EMPTY;
        const tell = (change: Partial<WorkToTell>): void => {
          before = work;
          work = { ...work, ...change };
          seat.tellWork(work);
        };
        for (const one of steps) {
          switch (one.do) {
            case 'act':
              acted += 1;
              tell({ acts: [...work.acts, { t: acted, type: 'check', acted }], headS: acted });
              break;
            case 'desk':
              acted += 1;
              tell({ desk: [...work.desk, { type: 'note', text: `${acted}` }] });
              break;
            case 'cut':
              tell({ acts: work.acts.slice(0, Math.floor(one.share * work.acts.length)) });
              break;
            case 'undo':
              tell({ acts: before.acts, desk: before.desk });
              break;
            case 'anew':
              tell({ ...EMPTY, attempt: work.attempt + 1 });
              break;
            case 'entry': {
              const event: ClassEvent = { type: 'hint', to: 'all', text: `hint ${acted}` };
              const entry = server.add(event);
              if (one.sent) server.send('entry', entry);
              break;
            }
            case 'twice':
              server.send('entry', server.entries.at(-1));
              break;
            case 'back to front':
              for (const entry of server.entries.slice(-4).reverse()) server.send('entry', entry);
              break;
            case 'drop':
              server.drop();
              break;
            case 'down':
              server.isDown = true;
              server.drop();
              break;
            case 'up':
              server.isDown = false;
              break;
            case 'lose answers':
              server.losesAnswers = one.on;
              break;
            case 'lose questions':
              server.losesQuestions = one.on;
              break;
            case 'no saving':
              server.cannotSave = one.on;
              break;
            case 'travel':
              server.travelMs = one.ms;
              break;
            case 'wait':
              await vi.advanceTimersByTimeAsync(one.ms);
          }
        }
        server.isDown = false;
        server.losesAnswers = false;
        server.losesQuestions = false;
        server.cannotSave = false;
        server.travelMs = 5;
        const last = server.add({ type: 'hint', to: 'all', text: 'the last' });
        await vi.advanceTimersByTimeAsync(30_000);
        server.send('entry', last);
        await vi.advanceTimersByTimeAsync(1000);
        const now = seat.store.read();
        expect(now.link).toBe('live');
        expect(now.entries).toEqual(server.entries);
        expect(now.book).toEqual(foldClass(server.entries));
        expect(now.saved).toBe('saved');
        if (work !== EMPTY) expect(server.work).toMatchObject(work);
        seat.close();
      }),
      { seed: 20_431, numRuns: 500 },
    );
  });

  it('ends in the same saved work over any number of reloads of the page', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(
          fc.record({
            acts: fc.integer({ min: 0, max: 4 }),
            ms: fc.integer({ min: 0, max: 400 }),
            cut: fc.boolean(),
          }),
          { maxLength: 12 },
        ),
        async (pages) => {
          const server = createFakeServer();
          let work = EMPTY;
          let acted = 0;
          let seat = connect(server);
          for (const { acts, ms, cut } of pages) {
            if (cut) work = { ...work, acts: work.acts.slice(0, -1) };
            for (let n = 0; n < acts; n += 1) {
              acted += 1;
              work = { ...work, acts: [...work.acts, { t: acted, type: 'check', acted }] };
              seat.tellWork(work);
            }
            await vi.advanceTimersByTimeAsync(ms);
            // The page goes; what it has told may yet arrive.
            seat.close();
            seat = connect(server);
            seat.tellWork(work);
          }
          await vi.advanceTimersByTimeAsync(20_000);
          expect(seat.store.read().saved).toBe('saved');
          if (pages.length > 0) expect(server.work).toMatchObject(work);
          seat.close();
        },
      ),
      { seed: 977, numRuns: 200 },
    );
  });
});
