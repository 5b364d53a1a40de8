import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { bringWork } from '../../../src/app/class/bring-work.ts';
import { handIn } from '../../../src/app/class/hand-in.ts';
import { tellWork } from '../../../src/app/class/tell-work.ts';
import { toldOf } from '../../../src/app/class/told-of.ts';
import { createStore } from '../../../src/app/session/store.ts';
import { readKept } from '../../../src/app/work/keep-work.ts';
import type { WorkRecord } from '../../../src/app/work/work-record.ts';
import type { Work, WorkState } from '../../../src/app/work/work-types.ts';
import type { WorkRecord as ClassWork } from '../../../src/classroom/index.ts';
import { createFakeServer } from '../../classroom/client/fake-server.ts';
import { createToySeat } from './toy-seat.ts';

const WHAT = { kind: 'job', id: 'a-job', title: 'A job', plant: 'a plant' } as const;
const STARTED = '2026-11-29T09:00:00.000Z';
const RECORD: WorkRecord = {
  v: 1,
  kind: 'job',
  id: 'a-job',
  seed: 7,
  startedISO: STARTED,
  savedISO: STARTED,
  log: [{ t: 5, type: 'call-for-heat', on: true }],
  pending: [],
  desk: [{ t: 180, type: 'arrive', tools: [] }],
  headS: 200,
  hash: 'of the run',
  setupHash: 'of the setup',
  uses: [],
};

beforeEach(() => void vi.useFakeTimers({ now: Date.parse(STARTED) }));
afterEach(() => void vi.useRealTimers());

/** Only what telling goes by. */
function createToyWork(record: WorkRecord | null) {
  const state = createStore<WorkState>({
    record,
    desk: [],
    issue: null,
    resumed: false,
    attempt: 0,
  });
  return { state, work: { state } as unknown as Work };
}

describe('work at a seat', () => {
  it('is told as it is saved: acts at once, time alone now and then', async () => {
    const seat = createToySeat();
    const { state, work } = createToyWork(null);
    const stop = tellWork(seat, work);
    await vi.advanceTimersByTimeAsync(1000);
    expect(seat.server.work).toBeNull();
    state.write({ record: RECORD });
    await vi.advanceTimersByTimeAsync(500);
    expect(seat.server.work).toMatchObject({
      attempt: 1,
      headS: 200,
      startedMs: Date.parse(STARTED),
      acts: RECORD.log,
      desk: RECORD.desk,
    });
    for (let n = 1; n <= 10; n += 1) {
      state.write({ record: { ...RECORD, headS: 200 + n } });
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(seat.server.deltas).toHaveLength(1);
    await vi.advanceTimersByTimeAsync(3000);
    expect(seat.server.work?.headS).toBe(210);
    const log = [...RECORD.log, { t: 211, type: 'call-for-heat', on: false } as const];
    state.write({ record: { ...RECORD, log } });
    await vi.advanceTimersByTimeAsync(300);
    expect(seat.server.work?.acts).toHaveLength(2);
    stop();
    seat.client.close();
  });

  it('begun anew is another try, and an older one is told no more', async () => {
    const seat = createToySeat();
    const { state, work } = createToyWork(RECORD);
    const stop = tellWork(seat, work);
    await vi.advanceTimersByTimeAsync(500);
    seat.book.write({ handedIn: true, outcome: 1 });
    state.write({ record: { ...RECORD, startedISO: '2026-11-29T09:30:00.000Z', log: [] } });
    await vi.advanceTimersByTimeAsync(500);
    expect(seat.server.work).toMatchObject({ attempt: 2, acts: [] });
    expect(seat.book.read()).toMatchObject({ attempt: 2, handedIn: false, outcome: null });
    stop();
    seat.client.close();
  });

  it('tells what was saved last when its page goes', async () => {
    const seat = createToySeat();
    const { state, work } = createToyWork(RECORD);
    const stop = tellWork(seat, work);
    await vi.advanceTimersByTimeAsync(500);
    state.write({ record: { ...RECORD, headS: 201 } });
    stop();
    await vi.advanceTimersByTimeAsync(500);
    expect(seat.server.work?.headS).toBe(201);
    seat.client.close();
  });

  it('is handed in once, also without a server at first', async () => {
    const server = createFakeServer();
    server.isDown = true;
    const seat = createToySeat(server);
    const { work } = createToyWork(RECORD);
    const stop = tellWork(seat, work);
    handIn(seat, 0.8, 'of the run');
    handIn(seat, 0.8, 'of the run');
    await vi.advanceTimersByTimeAsync(5000);
    expect(seat.book.read()).toMatchObject({ outcome: 0.8, handedIn: false });
    server.isDown = false;
    await vi.advanceTimersByTimeAsync(10_000);
    expect(seat.book.read().handedIn).toBe(true);
    handIn(seat, 0.8, 'of the run');
    await vi.advanceTimersByTimeAsync(1000);
    expect(server.handedIn).toEqual([{ attempt: 1, rev: server.work?.rev }]);
    stop();
    seat.client.close();
  });
});

describe('work that another device did', () => {
  const HELD: ClassWork = {
    attempt: 2,
    rev: 9,
    headS: 200,
    hash: 'of the run',
    setupHash: 'of the setup',
    startedMs: Date.parse(STARTED),
    applied: 4,
    acts: [{ t: 5, type: 'call-for-heat', on: true }],
    desk: [{ t: 180, type: 'arrive', tools: [] }],
  };

  it('lies on the shelf before the page opens it', async () => {
    const server = createFakeServer();
    server.work = HELD;
    const seat = createToySeat(server);
    await vi.advanceTimersByTimeAsync(50);
    bringWork(seat, WHAT);
    const { record } = readKept(seat.shelf, { kind: 'job', id: 'a-job' }, STARTED);
    expect(record).toMatchObject({
      ...RECORD,
      ofClass: { applied: 4, ordered: [] },
    });
    expect(seat.book.read()).toMatchObject({ attempt: 2, startedISO: STARTED });
    seat.client.close();
  });

  it('does not take the place of what this device has of the same try', async () => {
    const server = createFakeServer();
    server.work = HELD;
    const seat = createToySeat(server);
    seat.book.write({ attempt: 2, startedISO: STARTED });
    await vi.advanceTimersByTimeAsync(50);
    bringWork(seat, WHAT);
    expect(seat.shelf.keys()).toEqual([]);
    seat.client.close();
  });

  it('is left alone where it cannot be read', async () => {
    const server = createFakeServer();
    server.work = { ...HELD, desk: [{ type: 'no such entry' }] };
    const seat = createToySeat(server);
    await vi.advanceTimersByTimeAsync(50);
    bringWork(seat, WHAT);
    expect(seat.shelf.keys()).toEqual([]);
    expect(seat.book.read().attempt).toBe(0);
    seat.client.close();
  });
});

describe('the one plant as it is followed', () => {
  const acts = [{ t: 1, type: 'call-for-heat', on: true }];
  const work = {
    attempt: 1,
    rev: 3,
    headS: 4,
    hash: 'at 4',
    setupHash: '',
    startedMs: 0,
    applied: 0,
    acts,
    desk: [],
  };
  const head = {
    attempt: 1,
    rev: 3,
    acts: 1,
    headS: 9,
    hash: 'at 9',
    mode: 'playing',
    speed: 2,
  } as const;

  it('stands where its head is, or where its newest work is if that was cut since', () => {
    expect(toldOf({ work, head: null })).toBeNull();
    expect(toldOf({ work, head })).toMatchObject({ headS: 9, hash: 'at 9', speed: 2 });
    expect(toldOf({ work: { ...work, rev: 4 }, head })).toMatchObject({ headS: 4, hash: 'at 4' });
  });

  it('is told again only when something has changed', () => {
    const told = toldOf({ work, head });
    expect(toldOf({ work, head: { ...head } }, told)).toBe(told);
    expect(toldOf({ work, head: { ...head, headS: 10 } }, told)).not.toBe(told);
  });
});
