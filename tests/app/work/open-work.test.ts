/** Work from the device to a running session and back: what is saved and when, and how it comes back. */
import { beforeEach, describe, expect, it } from 'vitest';
import { keyOfWork, listKept, readKept } from '../../../src/app/work/keep-work.ts';
import { openWork } from '../../../src/app/work/open-work.ts';
import type { WorkRecord } from '../../../src/app/work/work-record.ts';
import { openToySession } from '../session/toy-session.ts';
import { createToyShelf, type ToyShelf } from './toy-shelf.ts';

const NOW = '2026-11-28T23:00:00.000Z';
const NAME = { kind: 'job', id: 'toy' } as const;
const OWN = [{ t: 2, type: 'call-for-heat', on: true }] as const;
const ARRIVES_S = 15;
const USE = { tool: 'manometer', place: 'inlet', range: 'low' } as const;

let shelf: ToyShelf;
beforeEach(() => {
  shelf = createToyShelf();
});

/** As a page does it: the work of the device, and its session in a worker. */
function begin(plays = true) {
  const work = openWork(shelf, () => NOW, NAME);
  return { work, ...openSessionOf(work, plays) };
}
function openSessionOf(work: ReturnType<typeof openWork>, plays = true) {
  const toy = openToySession({ ...work.opening(), play: plays }, OWN, ARRIVES_S);
  return { ...toy, detach: work.attach(toy.session) };
}
const kept = (): WorkRecord => readKept(shelf, NAME, NOW).record as WorkRecord;

describe('work', () => {
  it('begins where the learner comes, and is kept once there is something to keep', () => {
    const { work, session, live } = begin(false);
    live(1);
    expect(work.state.read()).toMatchObject({ resumed: false, issue: null });
    expect(session.headS()).toBe(ARRIVES_S);
    expect(shelf.keys()).toEqual([]);
    work.putDesk([{ t: ARRIVES_S, type: 'arrive', tools: [] }]);
    live(0.1);
    expect(kept()).toMatchObject({
      ...NAME,
      seed: 1,
      setupHash: 'toy',
      headS: ARRIVES_S,
      log: OWN,
    });
  });

  it('goes on after a killed page: acts, paper, tools and the same run', () => {
    const first = begin();
    first.live(1);
    first.session.connect(USE);
    first.work.putDesk([{ t: first.session.headS(), type: 'begin' }]);
    first.session.perform({ type: 'supply', on: false });
    first.live(3);
    first.session.pause();
    first.work.saveNow();
    const { headS, hash } = kept();

    const second = begin(false);
    expect(second.work.state.read()).toMatchObject({ resumed: true, issue: null });
    expect(second.session.store.read()).toMatchObject({ failure: null });
    expect(second.session.store.read().status).toMatchObject({ timeS: headS, hash });
    expect(second.work.state.read().desk).toMatchObject([{ type: 'begin' }]);
    second.live(0.5);
    expect(second.session.meterUses()).toEqual([USE]);
    expect(second.session.atThePlant.read().meters).toHaveLength(1);
    expect(kept().log.map(({ type }) => type)).toEqual(['call-for-heat', 'check', 'supply']);
  });

  it('has every act and every entry on the device before the worker has even heard of it', () => {
    const { work, session, live, door } = begin();
    live(1);
    door.shut = true;
    session.perform({ type: 'lock', point: 'isolator', on: true });
    work.putDesk([{ t: 16, type: 'note', text: 'locked' }]);
    expect(kept()).toMatchObject({
      pending: [{ type: 'lock', point: 'isolator', on: true }],
      desk: [{ type: 'note', text: 'locked' }],
    });
    const back = begin(false);
    back.live(0.2);
    expect(back.session.atThePlant.read().bench?.locks).toEqual(['isolator']);
    expect(kept().pending).toEqual([]);
  });

  it.each([1, 20] as const)(
    'is never more than two seconds of the plant behind, at %d×',
    (speed) => {
      const { session, live, work } = begin();
      work.putDesk([{ t: ARRIVES_S, type: 'begin' }]);
      session.play(speed);
      for (let i = 0; i < 100; i += 1) {
        live(0.06);
        // A tick of the host more, since time goes in ticks.
        expect(session.headS() - kept().headS).toBeLessThanOrEqual(2 + 0.02 * speed);
      }
    },
  );

  it('is not written again and again while nothing happens', () => {
    const { session, live } = begin();
    session.pause();
    live(0.5);
    const { writes } = shelf;
    live(5);
    expect(shelf.writes).toBe(writes);
  });

  it('keeps an entry that is made before the run is open', () => {
    const work = openWork(shelf, () => NOW, NAME);
    work.putDesk([{ t: 0, type: 'arrive', tools: [] }]);
    expect(kept().desk).toHaveLength(1);
    const again = begin(false);
    expect(again.session.headS()).toBe(ARRIVES_S);
    expect(kept()).toMatchObject({ desk: [{ type: 'arrive' }], log: OWN, setupHash: 'toy' });
  });

  it('says when the device is full, goes on, and saves all of it once there is room', () => {
    const { work, session, live } = begin();
    live(0.5);
    shelf.room = 100;
    session.perform({ type: 'supply', on: false });
    live(0.5);
    expect(work.state.read().issue).toMatchObject({ trouble: 'no room' });
    shelf.room = 1e6;
    work.putDesk([{ t: 16, type: 'begin' }]);
    expect(work.state.read().issue).toBeNull();
    expect(kept().log.map(({ type }) => type)).toContain('supply');
  });

  it('names a broken record, puts it aside and begins new', () => {
    shelf.set(keyOfWork(NAME), '{"v":1');
    const { work, session } = begin(false);
    expect(work.state.read().issue).toMatchObject({ trouble: 'broken', name: NAME });
    expect(session.headS()).toBe(ARRIVES_S);
    expect(listKept(shelf, NOW).aside).toHaveLength(1);
  });

  it('names work whose acts the engine does not know, and leaves it until it is begun anew', () => {
    const { work, session, live } = begin();
    session.perform({ type: 'supply', on: false });
    live(0.5);
    const text = shelf.get(keyOfWork(NAME))?.replaceAll('"supply"', '"teleport"') ?? '';
    work.yieldTo(keyOfWork(NAME));
    shelf.set(keyOfWork(NAME), text);
    const again = begin();
    expect(again.session.store.read().phase).toBe('failed');
    expect(again.work.state.read().issue?.trouble).toBe('broken');
    expect(shelf.get(keyOfWork(NAME))).toBe(text);
    again.work.startAnew();
    expect(listKept(shelf, NOW).aside).toHaveLength(1);
  });

  it('does not write over work of a newer version, until it is begun anew', () => {
    const newer = JSON.stringify({ v: 2, kind: 'job', id: 'toy' });
    shelf.set(keyOfWork(NAME), newer);
    const { work, session, live } = begin();
    session.perform({ type: 'supply', on: false });
    live(1);
    expect(work.state.read().issue?.trouble).toBe('newer version');
    expect(shelf.get(keyOfWork(NAME))).toBe(newer);
    work.startAnew();
    openSessionOf(work);
    work.putDesk([{ t: ARRIVES_S, type: 'begin' }]);
    expect(kept()).toMatchObject({ v: 1, desk: [{ type: 'begin' }] });
    expect(listKept(shelf, NOW).aside).toHaveLength(1);
  });

  it('stops saving when another page of the device goes on with it', () => {
    const { work, session, live } = begin();
    live(0.5);
    work.yieldTo(keyOfWork({ kind: 'job', id: 'other' }));
    expect(work.state.read().issue).toBeNull();
    work.yieldTo(keyOfWork(NAME));
    const { writes } = shelf;
    session.perform({ type: 'supply', on: false });
    live(1);
    expect(work.state.read().issue?.trouble).toBe('open elsewhere');
    expect(shelf.writes).toBe(writes);
  });
});

describe('work of an exercise that an update has changed', () => {
  beforeEach(() => {
    const { session, live, work, detach } = begin();
    session.perform({ type: 'supply', on: false });
    live(2);
    work.putDesk([{ t: 17, type: 'begin' }]);
    detach();
    shelf.set(keyOfWork(NAME), JSON.stringify({ ...kept(), setupHash: 'before' }));
  });

  it('is not opened and not touched, and it is said', () => {
    const text = shelf.get(keyOfWork(NAME));
    const { work, session } = begin();
    expect(session.store.read().phase).toBe('failed');
    expect(work.state.read().issue?.trouble).toBe('exercise changed');
    expect(shelf.get(keyOfWork(NAME))).toBe(text);
  });

  it('can be begun anew; the old stands aside', () => {
    const { work, detach } = begin();
    work.startAnew();
    detach();
    expect(work.state.read()).toMatchObject({ record: null, desk: [], resumed: false, attempt: 1 });
    const { session } = openSessionOf(work, false);
    expect(session.headS()).toBe(ARRIVES_S);
    session.perform({ type: 'second-setpoint', on: true });
    expect(kept().log.map(({ type }) => type)).toEqual(['call-for-heat', 'second-setpoint']);
    expect(kept().desk).toEqual([]);
    expect(listKept(shelf, NOW).aside).toMatchObject([{ why: 'started anew' }]);
  });

  it('can be gone on with all the same', () => {
    const { work, detach } = begin();
    work.goOnAnyway();
    detach();
    const { session } = openSessionOf(work, false);
    expect(session.store.read().phase).toBe('open');
    expect(session.headS()).toBeGreaterThan(ARRIVES_S + 1);
    expect(kept()).toMatchObject({ setupHash: 'toy', desk: [{ type: 'begin' }] });
  });
});
