import { beforeEach, describe, expect, it } from 'vitest';
import { openFailure, type RunHost } from '../../../src/app/session/host-ports.ts';
import type { HistoryEvent, Status, ToPage } from '../../../src/app/session/protocol.ts';
import { createRunHost } from '../../../src/app/session/run-host.ts';
import type { ToWorker } from '../../../src/app/session/to-worker.ts';
import { MAX_RUN_S } from '../../../src/judging/work/index.ts';
import { type Bench, createBench } from './toy-run.ts';

let bench: Bench;
let host: RunHost;

function tell(...messages: ToWorker[]): void {
  for (const message of messages) host.receive(message);
}
function run(realS: number): void {
  for (let i = 0; i < realS * 40; i += 1) {
    bench.clockMs += 25;
    host.tick();
  }
}
function status(): Status {
  const last = bench.posted.filter((message) => message.type === 'batch').at(-1);
  if (last === undefined) throw new Error('no batch was posted');
  return last.status;
}
function posted<T extends ToPage['type']>(type: T): Extract<ToPage, { type: T }>[] {
  return bench.posted.filter((message) => message.type === type) as Extract<ToPage, { type: T }>[];
}

/** As the page keeps them: a batch replaces what was there from its first event on. */
function events(): HistoryEvent[] {
  const kept: HistoryEvent[] = [];
  for (const message of bench.posted) {
    if (message.type === 'cut') kept.length = message.events;
    if (message.type === 'batch') {
      kept.splice(message.firstEvent, Number.POSITIVE_INFINITY, ...message.events);
    }
  }
  return kept;
}

beforeEach(() => {
  bench = createBench();
  host = createRunHost(bench.ports);
  tell({ type: 'open', kind: 'watch', id: 'toy' });
  host.tick();
});

describe('run host', () => {
  it('opens paused, with facts and the healthy twin', () => {
    expect(posted('opened')).toHaveLength(1);
    expect(posted('expected')[0]?.frames.length).toBe(51 * 2);
    expect(status()).toMatchObject({ mode: 'paused', timeS: 0 });
  });

  it.each([1, 2, 5, 20] as const)('keeps %d× of real time', (speed) => {
    tell({ type: 'play', speed });
    run(3);
    expect(status().timeS).toBeCloseTo(3 * speed, 6);
  });

  it('sends every frame once, in order, and none while it stands still', () => {
    tell({ type: 'play', speed: 5 });
    run(2);
    tell({ type: 'pause' });
    run(2);
    let next = 0;
    for (const batch of posted('batch')) {
      expect(batch.firstFrame).toBe(next);
      next += batch.frames.length / 2;
    }
    expect(next).toBe(101);
  });

  it('a run that was rewound and let run again has the hash it had', () => {
    tell({ type: 'play', speed: 20 });
    run(1);
    tell({ type: 'act', action: { type: 'reset', pressed: true } });
    run(1);
    tell({ type: 'act', action: { type: 'reset', pressed: false } }, { type: 'pause' });
    const { timeS, hash } = status();
    tell({ type: 'seek', tS: 3 });
    expect(status()).toMatchObject({ timeS: 3, headS: timeS, mode: 'paused' });
    expect(status().hash).not.toBe(hash);
    tell({ type: 'play', speed: 5 });
    run(1);
    tell({ type: 'live' });
    expect(status()).toMatchObject({ timeS, hash });
    expect(posted('failed')).toEqual([]);
  });

  it('says so when a replay is not the same run', () => {
    tell({ type: 'play', speed: 20 });
    run(1);
    bench.ports.createRun = ((original) => (setup) => {
      const other = original(setup);
      return { ...other, hash: () => 'another' };
    })(bench.ports.createRun);
    tell({ type: 'seek', tS: 1 }, { type: 'live' });
    expect(posted('failed')[0]?.failure).toBe('replay differs');
  });

  it('acting after a rewind drops what came later, and nothing before', () => {
    tell({ type: 'play', speed: 20 });
    run(1);
    tell({ type: 'act', action: { type: 'supply', on: false } });
    run(1);
    tell({ type: 'seek', tS: 5 }, { type: 'act', action: { type: 'call-for-heat', on: true } });
    expect(posted('cut')).toEqual([{ type: 'cut', frames: 51, events: 0 }]);
    expect(status()).toMatchObject({ timeS: 5, headS: 5 });
    tell({ type: 'play', speed: 20 });
    run(3);
    const acts = events().flatMap((event) => (event.type === 'action' ? [event.action] : []));
    expect(acts).toEqual([{ t: 5, type: 'call-for-heat', on: true }]);
    expect(status().headS).toBeCloseTo(65, 6);
  });

  it('shows an act at once, though the plant takes it with its next step', () => {
    tell({ type: 'play', speed: 1 });
    run(1);
    tell({ type: 'pause' }, { type: 'act', action: { type: 'supply', on: false } });
    expect(events()).toHaveLength(1);
    tell({ type: 'play', speed: 1 });
    run(1);
    expect(events()).toEqual([
      { t: 1, type: 'action', action: { t: 1, type: 'supply', on: false } },
    ]);
  });

  it('runs to the next step and stops at its first frame', () => {
    tell({ type: 'next step' });
    run(1);
    expect(status()).toMatchObject({ mode: 'paused', timeS: 10 });
  });

  it('gives up waiting for a next step that does not come', () => {
    tell({ type: 'next step' });
    run(1);
    tell({ type: 'next step' });
    run(2);
    tell({ type: 'next step' });
    run(10);
    expect(status()).toMatchObject({ mode: 'paused', note: 'no step change', timeS: 350 });
  });

  it('stretches a short press so that the plant can notice it', () => {
    tell({ type: 'play', speed: 20 });
    run(0.5);
    tell(
      { type: 'act', action: { type: 'reset', pressed: true } },
      { type: 'act', action: { type: 'reset', pressed: false } },
    );
    run(1);
    const resets = events().filter((event) => event.type === 'action');
    expect(resets.map(({ t }) => t)).toEqual([10, 10.3]);
  });

  it('lets time run as for the finger while the reset is held', () => {
    tell({ type: 'play', speed: 20 });
    run(1);
    tell({ type: 'act', action: { type: 'reset', pressed: true } });
    run(2);
    expect(status().timeS).toBeCloseTo(22, 6);
    tell({ type: 'act', action: { type: 'reset', pressed: false } });
    run(1);
    expect(status().timeS).toBeCloseTo(42, 6);
  });

  it('ends after an hour rather than forget the beginning', () => {
    tell({ type: 'play', speed: 20 });
    run(200);
    expect(status()).toMatchObject({ mode: 'paused', timeS: MAX_RUN_S, note: 'end of run' });
  });

  it.each([
    null,
    7,
    { type: 'fly' },
    { type: 'play', speed: 0 },
    { type: 'act', action: { type: 'reset' } },
  ])('reports a message that does not fit (%j) and goes on', (message) => {
    host.receive(message);
    expect(posted('failed')[0]?.failure).toBe('message not understood');
    tell({ type: 'play', speed: 1 });
    run(1);
    expect(status().timeS).toBeCloseTo(1, 6);
  });

  it('says which scenario could not be opened', () => {
    bench.ports.openStage = () => {
      throw openFailure('unknown scenario', 'nowhere');
    };
    tell({ type: 'open', kind: 'watch', id: 'nowhere' });
    expect(posted('failed')).toEqual([
      { type: 'failed', failure: 'unknown scenario', detail: 'nowhere' },
    ]);
  });
});
