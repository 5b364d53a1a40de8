/** The start of a quiz item over the real engine: its record at once, and no further. */
import library from 'virtual:library';
import { beforeAll, describe, expect, it } from 'vitest';
import { benchPort } from '../../../src/app/session/bench-port.ts';
import { openItemStage, RUNS_ON_S } from '../../../src/app/session/item-stage.ts';
import type { ToPage } from '../../../src/app/session/protocol.ts';
import { createRunHost } from '../../../src/app/session/run-host.ts';
import { openStage } from '../../../src/app/session/stage.ts';
import type { ToWorker } from '../../../src/app/session/to-worker.ts';
import { createRun } from '../../../src/engine/index.ts';
import type { ItemRun } from '../../../src/quiz/index.ts';

const RUN: ItemRun = {
  plant: 'dairy',
  tolerances: 4711,
  faults: [{ fault: 'damper jammed short of purge', severity: 25, onset: { kind: 'start' } }],
  actions: [{ t: 90, type: 'emergency-stop', pressed: true }],
  untilS: 110,
};

function openHost(run: ItemRun, runsOn: boolean) {
  let clockMs = 0;
  const posted: ToPage[] = [];
  const host = createRunHost({
    nowMs: () => clockMs,
    post: (message) => posted.push(message),
    openStage: (id, kind, { item }) =>
      item === undefined ? openStage(library, id, kind) : openItemStage(library, id, item),
    createRun: (setup) => createRun(setup),
    bench: benchPort,
  });
  const tell = (message: ToWorker) => host.receive(message);
  tell({ type: 'open', kind: 'quiz', id: 'cause/dairy/1', item: { run, runsOn } });
  const of = <T extends ToPage['type']>(type: T) =>
    posted.filter((message) => message.type === type) as Extract<ToPage, { type: T }>[];
  return {
    tell,
    of,
    live(realS: number) {
      for (let i = 0; i < realS * 40; i += 1) {
        clockMs += 25;
        host.tick();
      }
    },
    status: () => of('batch').at(-1)?.status,
    frames: () =>
      Math.max(
        0,
        ...of('batch').map(({ firstFrame, frames }) => firstFrame + frames.length / (width() || 1)),
      ),
  };
  function width(): number {
    return of('opened')[0]?.facts.channels.length ?? 0;
  }
}

describe('the start of a quiz item', () => {
  let before: ReturnType<typeof openHost>;
  beforeAll(() => {
    before = openHost(RUN, false);
  });

  it('is there to its end as soon as it is opened', () => {
    expect(before.of('failed')).toEqual([]);
    expect(before.of('opened')[0]?.facts).toMatchObject({
      arriveS: 110,
      work: { kind: 'quiz', rewinds: true, allow: [] },
    });
    expect(before.status()).toMatchObject({ mode: 'paused', timeS: 110, headS: 110 });
  });

  it('has what was done by hand besides the call for heat', () => {
    const actions = before
      .of('log')
      .at(-1)
      ?.log.map(({ t, type }) => `${t} ${type}`);
    expect(actions).toEqual(['60 call-for-heat', '90 emergency-stop']);
  });

  it('shows nothing of what follows before the answer: neither run on nor beside the sound plant', () => {
    before.live(1);
    before.tell({ type: 'play', speed: 20 });
    before.live(2);
    expect(before.status()).toMatchObject({ headS: 110, note: 'end of run' });
    expect(before.frames() * 0.1).toBeLessThanOrEqual(110.2);
    expect(before.of('expected')).toEqual([]);
  });

  it('is looked back on, and comes back to the same end', () => {
    const { hash } = before.status() ?? {};
    before.tell({ type: 'seek', tS: 40 });
    expect(before.status()).toMatchObject({ timeS: 40, headS: 110 });
    before.tell({ type: 'live' });
    expect(before.status()).toMatchObject({ timeS: 110, hash });
    expect(before.of('failed')).toEqual([]);
  });

  it('lets nothing be done to it', () => {
    before.tell({ type: 'act', action: { type: 'reset', pressed: true } });
    expect(before.of('failed').at(-1)).toMatchObject({ failure: 'action refused' });
  });

  it('runs on past its end after the answer, up to a limit', () => {
    const after = openHost(RUN, true);
    after.tell({ type: 'play', speed: 20 });
    after.live(2);
    expect(after.status()?.headS).toBeGreaterThan(140);
    expect(after.of('expected')).toHaveLength(1);
    after.live(20);
    expect(after.status()).toMatchObject({ headS: 110 + RUNS_ON_S, note: 'end of run' });
  });

  it('is opened by a host that had another one before, as by a fresh one', () => {
    const host = openHost(RUN, false);
    host.tell({ type: 'seek', tS: 40 });
    host.tell({
      type: 'open',
      kind: 'quiz',
      id: 'cause/dairy/1',
      item: { run: RUN, runsOn: true },
    });
    expect(host.status()).toMatchObject({ answered: 1, timeS: 110, headS: 110 });
    expect(host.of('batch').at(-1)).toMatchObject({ firstFrame: 0, firstEvent: 0 });
  });

  it('of a plant that is not there, or without a run, is not opened', () => {
    expect(openHost({ ...RUN, plant: 'ironworks' }, false).of('failed')).toMatchObject([
      { failure: 'unknown scenario' },
    ]);
    const host = openHost(RUN, false);
    host.tell({ type: 'open', kind: 'quiz', id: 'cause/dairy/1' });
    expect(host.of('failed')).toMatchObject([{ failure: 'unknown scenario' }]);
  });

  it('of a run that no engine knows is refused at the door', () => {
    const odd = { ...RUN, actions: [{ t: 1, type: 'kick', hard: true }] } as unknown as ItemRun;
    expect(openHost(odd, false).of('failed')).toMatchObject([
      { failure: 'message not understood' },
    ]);
  });
});
