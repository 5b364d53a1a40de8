import fc from 'fast-check';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { ClassEvent } from '../../../machines/class/index.ts';
import type { WorkRecord } from '../../../src/classroom/index.ts';
import { POSTGRESQL } from '../../../src/cli/house/services.ts';
import { type ClassStore, createClassStore } from '../../../src/server/store/index.ts';
import { needService } from '../../support/services/index.ts';
import { act, DAY_MS, OPENED_MS, oneMore, someClass, someSeat, workOf } from './classes.ts';
import { type Ground, KINDS, makeGround, START_LIMIT_MS } from './databases.ts';

const HINT: ClassEvent = { type: 'hint', to: 'all', text: 'Look at the gauge.' };

// A busy machine takes its time, above all with the embedded engine.
vi.setConfig({ testTimeout: START_LIMIT_MS });

describe.each(KINDS)('what is kept of classes in the %s database', (kind) => {
  let ground: Ground | null = null;
  let store: ClassStore;
  /** Of another server on the same database. */
  let other: ClassStore;

  beforeAll(async () => {
    ground = await makeGround(kind);
    if (ground === null) return;
    [store, other] = ground.pair.map(createClassStore) as [ClassStore, ClassStore];
  }, START_LIMIT_MS);
  afterAll(() => ground?.remove(), START_LIMIT_MS);
  beforeEach((test) => {
    if (kind === 'postgresql') needService(POSTGRESQL, test);
  });

  async function opened(change: Parameters<typeof someClass>[0] = {}): Promise<string> {
    const kept = someClass(change);
    await store.openClass(kept);
    return kept.id;
  }

  describe('classes', () => {
    it('come back as they were opened, with an own exercise, letter by letter', async () => {
      const given = { kind: 'job', data: { b: 1, a: [0.1, -1e-7, 'ü "\\ \u0000 \ud83d\ude00'] } };
      const what = { ...someClass().what, given };
      const kept = someClass({ what, seed: 2 ** 31 - 1, way: 'own copies' });
      await store.openClass(kept);
      const back = await other.classById(kept.id);
      expect(back).toEqual({ ...kept, closedMs: null, n: 0 });
      expect(JSON.stringify(back?.what.given)).toBe(JSON.stringify(given));
      expect(await store.classById('none')).toBeNull();
    });

    it('are listed, the newest first, with the count of their seats and without the exercise', async () => {
      const what = { ...someClass().what, given: { data: 'long' } };
      const older = await opened({ openedMs: OPENED_MS + 1e9, what });
      const newer = await opened({ openedMs: OPENED_MS + 2e9 });
      await store.addSeat(older, someSeat('Ann'));
      await store.addSeat(older, someSeat('Ben'));
      const listed = (await store.classes()).filter(({ id }) => id === older || id === newer);
      expect(listed.map(({ id, seats }) => [id, seats])).toEqual([
        [newer, 0],
        [older, 2],
      ]);
      expect(listed[1]?.what).toEqual(someClass().what);
    });

    it('are found by their code until they are closed, and then the code is free again', async () => {
      const first = await opened({ code: 'AGAIN1' });
      expect((await store.classByCode('AGAIN1'))?.id).toBe(first);
      await expect(store.openClass(someClass({ code: 'AGAIN1' }))).rejects.toMatchObject({
        trouble: 'database refused',
      });
      await store.append(first, 'key of close', { type: 'close' }, OPENED_MS + 5, 0);
      expect(await store.classByCode('AGAIN1')).toBeNull();
      expect(await store.classById(first)).toMatchObject({ closedMs: OPENED_MS + 5, n: 1 });
      const second = await opened({ code: 'AGAIN1' });
      expect((await store.classByCode('AGAIN1'))?.id).toBe(second);
    });
  });

  describe('entries', () => {
    it('are numbered from 1 on without a gap and come back in their order', async () => {
      const id = await opened();
      for (let n = 0; n < 5; n++) await store.append(id, `key ${n}`, HINT, OPENED_MS + n, n);
      const entries = await other.entriesSince(id, 2);
      expect(entries).toEqual([3, 4, 5].map((n) => ({ n, atMs: OPENED_MS + n - 1, ...HINT })));
      expect(await other.lastNumbers([id, 'none'])).toEqual(new Map([[id, 5]]));
    });

    it('with a key that was there give what it gave before, whatever the number asked for', async () => {
      const id = await opened();
      const first = await store.append(id, 'the key', HINT, OPENED_MS, 0);
      expect(first).toEqual({ entry: { n: 1, atMs: OPENED_MS, ...HINT }, fresh: true });
      for (const after of [0, 1, -1]) {
        const again = await other.append(id, 'the key', { type: 'begin' }, OPENED_MS + 9, after);
        expect(again).toEqual({ entry: first?.entry, fresh: false });
      }
      expect((await store.classById(id))?.n).toBe(1);
    });

    it('are not taken where the class stands at another number, or is not there', async () => {
      const id = await opened();
      expect(await store.append(id, 'early', HINT, OPENED_MS, 1)).toBeNull();
      expect(await store.append('none', 'nowhere', HINT, OPENED_MS, 0)).toBeNull();
      expect(await store.entriesSince(id, 0)).toEqual([]);
    });

    it('of two servers that append at once get every number once', async () => {
      const id = await opened();
      const each = 12;
      const say = async (from: ClassStore, name: string): Promise<void> => {
        for (let count = 0; count < each; ) {
          const after = (await from.classById(id))?.n ?? 0;
          const key = `${name} ${count}`;
          const taken = await from.append(id, key, { ...HINT, text: key }, OPENED_MS, after);
          if (taken !== null) count++;
        }
      };
      await Promise.all([say(store, 'one'), say(other, 'two')]);
      const entries = await store.entriesSince(id, 0);
      expect(entries.map(({ n }) => n)).toEqual(Array.from({ length: 2 * each }, (_, i) => i + 1));
      const texts = entries.map((entry) => (entry.type === 'hint' ? entry.text : ''));
      expect(new Set(texts).size).toBe(2 * each);
      expect(texts.filter((text) => text.startsWith('one'))).toEqual(
        Array.from({ length: each }, (_, i) => `one ${i}`),
      );
    });

    it('with one key told to two servers at once are one entry, which both of them get', async () => {
      const id = await opened();
      for (let n = 0; n < 10; n++) {
        const key = `same ${n}`;
        const both = await Promise.all(
          [store, other].map((one) => one.append(id, key, HINT, OPENED_MS, n)),
        );
        expect(both.map((taken) => taken?.entry.n)).toEqual([n + 1, n + 1]);
        expect(both.filter((taken) => taken?.fresh)).toHaveLength(1);
      }
      expect(await store.entriesSince(id, 0)).toHaveLength(10);
    });
  });

  describe('seats', () => {
    it('are numbered one after the other, whichever of two servers they come to', async () => {
      const id = await opened();
      const names = Array.from({ length: 12 }, (_, i) => `Learner ${i}`);
      const given = await Promise.all(
        names.map((name, i) => (i % 2 === 0 ? store : other).addSeat(id, someSeat(name))),
      );
      expect([...given].sort((a, b) => a - b)).toEqual(names.map((_, i) => i + 1));
      const seats = await store.seats(id);
      expect(seats.map(({ seat }) => seat)).toEqual(names.map((_, i) => i + 1));
      for (const [i, name] of names.entries()) {
        expect(await other.seat(id, given[i] as number)).toMatchObject(someSeat(name));
      }
      await expect(store.addSeat('none', someSeat('Nobody'))).rejects.toMatchObject({
        trouble: 'database refused',
      });
    });

    it('keep a new token and when the work was handed in', async () => {
      const id = await opened();
      const nickname = 'Zoë \u0000 \ud83d\ude00';
      const seat = await store.addSeat(id, { ...someSeat('Zoë'), nickname });
      await store.setToken(id, seat, 'another token');
      await store.noteHandedIn(id, seat, OPENED_MS + 99);
      expect(await other.seat(id, seat)).toEqual({
        ...someSeat('Zoë'),
        nickname: 'Zoë  \ud83d\ude00',
        seat,
        tokenHash: 'another token',
        handedInMs: OPENED_MS + 99,
      });
      expect(await store.seat(id, seat + 1)).toBeNull();
    });
  });

  describe('works', () => {
    it('come back as they were saved last, however they went on and were cut back', async () => {
      const text = fc.string({ unit: 'binary', maxLength: 6 });
      const step = fc.record({
        keep: fc.double({ min: 0, max: 1, noNaN: true }),
        texts: fc.array(text, { maxLength: 4 }),
        by: fc.constantFrom('same', 'other', 'clone', 'new attempt', 'read'),
      });
      await fc.assert(
        fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 12 }), async (steps) => {
          const id = await opened();
          let work = workOf(1, 1, []);
          for (const { keep, texts, by } of steps) {
            if (by === 'read') work = (await store.work(id, 1)) ?? work;
            const before = by === 'clone' ? structuredClone(work) : work;
            const isNew = by === 'new attempt';
            const kept = isNew ? 0 : Math.round(keep * before.acts.length);
            const fresh = texts.map((type, t) => ({ t, type, place: { text: type } }));
            work = {
              ...workOf(isNew ? work.attempt + 1 : work.attempt, work.rev + 1, []),
              acts: [...before.acts.slice(0, kept), ...fresh],
              desk: before.desk,
            };
            await (by === 'other' ? other : store).saveWorks([{ id, seat: 1, work }]);
            expect(await other.work(id, 1)).toEqual(work);
          }
          expect(await other.works(id)).toEqual([{ seat: 1, work }]);
        }),
        { numRuns: kind === 'embedded' ? 6 : 25, seed: 7 },
      );
    });

    it('that are older than what is there, or as old, change nothing', async () => {
      const id = await opened();
      const newest = workOf(2, 5, [act(1), act(2)]);
      await store.saveWorks([{ id, seat: 3, work: newest }]);
      for (const old of [workOf(2, 4, []), workOf(2, 5, [act(9)]), workOf(1, 9, [act(9)])]) {
        await store.saveWorks([{ id, seat: 3, work: old }]);
        await other.saveWorks([{ id, seat: 3, work: old }]);
      }
      expect(await store.work(id, 3)).toEqual(newest);
      expect(await store.attempts(id)).toEqual([
        { seat: 3, attempt: 2, rev: 5, startedMs: newest.startedMs },
      ]);
    });

    it('of earlier attempts stay, and seat 0 has its own', async () => {
      const id = await opened();
      const [first, second, plant] = [
        workOf(1, 7, [act(1)]),
        workOf(2, 1, []),
        workOf(1, 1, [act(3)]),
      ];
      await store.saveWorks([{ id, seat: 1, work: first }]);
      await store.saveWorks([
        { id, seat: 1, work: second },
        { id, seat: 0, work: plant },
      ]);
      expect(await other.work(id, 1)).toEqual(second);
      expect(await other.work(id, 1, 1)).toEqual(first);
      expect(await other.work(id, 1, 3)).toBeNull();
      expect(await other.works(id)).toEqual([
        { seat: 0, work: plant },
        { seat: 1, work: second },
      ]);
    });

    it('that move between two servers all the time lose nothing', async () => {
      const id = await opened();
      const seats = [1, 2, 3];
      let works = seats.map((seat) => ({ id, seat, work: workOf(1, 1, [act(0)]) }));
      for (let round = 0; round < 90; round++) {
        works = works.map((one) => ({ ...one, work: oneMore(one.work) }));
        // Long stays, so that one tidies away what the other one rested on.
        await (round % 60 < 50 ? store : other).saveWorks(works);
      }
      expect(await store.works(id)).toEqual(works.map(({ seat, work }) => ({ seat, work })));
      expect(await other.work(id, 2)).toEqual(works[1]?.work);
    });

    it('told to two servers at once end with the newer one', async () => {
      const id = await opened();
      let work = workOf(1, 1, []);
      for (let round = 0; round < 15; round++) {
        const newer = oneMore(work);
        const newest = oneMore(newer);
        await Promise.all([
          store.saveWorks([{ id, seat: 1, work: newer }]),
          other.saveWorks([{ id, seat: 1, work: newest }]),
        ]);
        work = newest;
        expect(await store.work(id, 1)).toEqual(newest);
      }
    });

    it('take room by what is new in them, not by what they have come to', async () => {
      const id = await opened();
      const { database } = store;
      let work: WorkRecord = workOf(
        1,
        1,
        Array.from({ length: 2000 }, (_, t) => act(t)),
      );
      await store.saveWorks([{ id, seat: 1, work }]);
      for (let count = 0; count < 150; count++) {
        work = oneMore(work);
        await store.saveWorks([{ id, seat: 1, work }]);
      }
      const [lines] = await database.query<{ parts: number; letters: number }>(
        `select count(*) as parts, sum(length(acts::text)) as letters from work_part where class = $1`,
        [id],
      );
      const whole = JSON.stringify(work.acts).length;
      expect(lines?.letters).toBeLessThan(2 * whole);
      expect(lines?.parts).toBeLessThan(100);
      expect(await other.work(id, 1)).toEqual(work);
    });

    it('of a class that was deleted meanwhile do not keep the others from being saved', async () => {
      const [gone, there] = [await opened(), await opened()];
      let work = workOf(1, 1, [act(1)]);
      const both = () => [gone, there].map((id) => ({ id, seat: 1, work }));
      await store.saveWorks(both());
      await other.deleteClass(gone);
      work = oneMore(work);
      await store.saveWorks(both());
      expect(await store.work(there, 1)).toEqual(work);
      expect(await store.work(gone, 1)).toBeNull();
    });
  });

  it('keeps of a poll the first answer of each seat', async () => {
    const id = await opened();
    await store.answerPoll(id, { poll: 'p1', seat: 2, option: 1 });
    await other.answerPoll(id, { poll: 'p1', seat: 2, option: 3 });
    await store.answerPoll(id, { poll: 'p1', seat: 1, option: 0 });
    await store.answerPoll(id, { poll: 'p2', seat: 1, option: 2 });
    await store.answerPoll('none', { poll: 'p1', seat: 1, option: 0 });
    expect(await other.pollAnswers(id, 'p1')).toEqual([
      { poll: 'p1', seat: 1, option: 0 },
      { poll: 'p1', seat: 2, option: 1 },
    ]);
  });

  it('keeps one result for each attempt, the last that was judged', async () => {
    const id = await opened();
    const result = { outcome: 0.1 + 0.2, remarks: [], name: 'ü\u0000' };
    const first = { seat: 1, attempt: 1, judgedMs: OPENED_MS, result, refused: { outcome: 1 } };
    const again = { ...first, judgedMs: OPENED_MS + 1, refused: null };
    const second = { ...first, attempt: 2, result: null };
    for (const one of [first, second, again]) await store.saveResult(id, one);
    expect(await other.results(id)).toEqual([again, second]);
  });

  describe('deletion', () => {
    it('takes with a class all that hangs on it, and nothing else', async () => {
      const [id, stays] = [await opened(), await opened()];
      for (const one of [id, stays]) {
        await store.addSeat(one, someSeat('Ann'));
        await store.append(one, 'key', HINT, OPENED_MS, 0);
        let work = workOf(1, 1, [act(1)]);
        for (let count = 0; count < 3; count++) {
          await store.saveWorks([{ id: one, seat: 1, work }]);
          work = oneMore(work);
        }
        await store.answerPoll(one, { poll: 'p', seat: 1, option: 0 });
        await store.saveResult(one, { seat: 1, attempt: 1, judgedMs: 1, result: 1, refused: null });
      }
      await other.deleteClass(id);
      const counts = await store.database.query<{ id: string; lines: number }>(
        ['class_entry', 'seat', 'work_part', 'poll_answer', 'result']
          .map((table) => `select class as id, count(*) as lines from ${table} group by class`)
          .join(' union all '),
      );
      expect(await store.classById(id)).toBeNull();
      expect(counts.filter((one) => one.id === id)).toEqual([]);
      expect(counts.filter((one) => one.id === stays).map(({ lines }) => lines)).toEqual([
        1, 1, 3, 1, 1,
      ]);
    });

    it('comes by itself when the days are over, from the end or else from what was said last', async () => {
      const long = 50 * 365 * DAY_MS + OPENED_MS;
      const past = long - 11 * DAY_MS;
      const days = { retentionDays: 10, openedMs: past };
      const [over, closed, said, longer] = [
        await opened(days),
        await opened(days),
        await opened(days),
        await opened(days),
      ];
      await store.append(closed, 'k', { type: 'close' }, past + 2 * DAY_MS, 0);
      await store.append(said, 'k', HINT, past + 2 * DAY_MS, 0);
      await store.setRetention(longer, 20);
      const ids = new Set([over, closed, said, longer]);
      const gone = async (nowMs: number) =>
        (await store.deleteExpired(nowMs)).filter((id) => ids.has(id)).sort();
      expect(await gone(long)).toEqual([over]);
      expect(await store.classById(over)).toBeNull();
      expect(await gone(long)).toEqual([]);
      expect(await gone(long + 2 * DAY_MS)).toEqual([closed, said].sort());
      expect(await gone(long + 10 * DAY_MS)).toEqual([longer]);
    });
  });
});
