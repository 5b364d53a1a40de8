/** The page's end against a real host over a toy run; the wire between them copies as a worker's does. */
import { beforeEach, describe, expect, it } from 'vitest';
import { createRunHost } from '../../../src/app/session/run-host.ts';
import { createSession } from '../../../src/app/session/session.ts';
import type { Session, WorkerLike } from '../../../src/app/session/session-types.ts';
import { type Bench, createBench } from './toy-run.ts';

let bench: Bench;
let session: Session;
let worker: WorkerLike;
let host: ReturnType<typeof createRunHost>;
let moments: number[];

function live(realS: number): void {
  for (let i = 0; i < realS * 50; i += 1) {
    bench.clockMs += 20;
    host.tick();
    session.animate(bench.clockMs);
  }
}
function state() {
  return session.store.read();
}

beforeEach(() => {
  bench = createBench();
  worker = {
    postMessage: (message) => host.receive(structuredClone(message)),
    terminate: () => undefined,
    onmessage: null,
    onerror: null,
  };
  host = createRunHost({
    ...bench.ports,
    post: (data) => worker.onmessage?.({ data: structuredClone(data) } as MessageEvent),
  });
  const waiting: Parameters<WorkerLike['postMessage']>[0][] = [];
  const send = worker.postMessage;
  worker.postMessage = (message) => waiting.push(message);
  session = createSession(worker, 'toy');
  worker.postMessage = send;
  for (const message of waiting) send(message);
  moments = [];
  session.onMoment(({ tS }) => moments.push(tS));
});

describe('session', () => {
  it('runs at once when it is open, and shows time going by smoothly', () => {
    live(3);
    expect(state()).toMatchObject({ phase: 'open', lookingBack: false });
    expect(moments.at(-1)).toBeGreaterThan(2.6);
    for (let i = 1; i < moments.length; i += 1) {
      expect(moments[i]).toBeGreaterThanOrEqual(moments[i - 1] ?? 0);
    }
  });

  it('blends between the frames around the moment shown', () => {
    session.act({ type: 'reset', pressed: true });
    let checked = 0;
    session.onMoment(({ previous, next, blend, tS }) => {
      const held = (previous[0] ?? 0) + ((next[0] ?? 0) - (previous[0] ?? 0)) * blend;
      // From 0.1 s on the toy counts hundredths of a second.
      if (tS > 0.2) expect(held).toBeCloseTo((tS - 0.1) * 100, 6);
      checked += 1;
    });
    live(2);
    expect(checked).toBeGreaterThan(50);
  });

  it('draws nothing while nothing moves, until it is asked to', () => {
    live(1);
    session.pause();
    live(1);
    const drawn = moments.length;
    live(2);
    expect(moments.length).toBe(drawn);
    session.refresh();
    live(0.1);
    expect(moments.length).toBe(drawn + 1);
  });

  it('shows what is scrubbed to without asking the run, and settles there', () => {
    live(4);
    session.scrub(1.5);
    live(0.1);
    expect(state()).toMatchObject({ shownS: 1.5, lookingBack: true });
    session.settle();
    live(0.3);
    expect(state().status).toMatchObject({ mode: 'paused', timeS: 1.5 });
  });

  it('runs on from a moment in the past until it is where it was, and is then not looking back', () => {
    live(4);
    session.scrub(3);
    session.play();
    live(0.3);
    expect(state().lookingBack).toBe(true);
    live(2);
    expect(state().lookingBack).toBe(false);
    expect(state().shownS).toBeGreaterThan(4);
  });

  it('goes back to live and on, when it was running before', () => {
    live(4);
    session.scrub(1);
    session.settle();
    live(0.5);
    session.backToLive();
    live(0.2);
    expect(state()).toMatchObject({ lookingBack: false });
    expect(state().status?.mode).toBe('playing');
    expect(state().shownS).toBeGreaterThan(3.5);
  });

  it('forgets what came later when something is done in the past', () => {
    live(4);
    session.scrub(2);
    session.act({ type: 'supply', on: false });
    live(0.1);
    expect(state().status?.headS).toBe(2);
    expect(state().lookingBack).toBe(false);
    expect(session.history()?.count).toBe(21);
    expect(state().events).toHaveLength(1);
  });

  it('says what went wrong and keeps what was run', () => {
    live(2);
    const { count } = session.history() ?? { count: 0 };
    worker.onmessage?.({ data: { type: 'gibberish' } } as MessageEvent);
    expect(state().failure?.failure).toBe('message not understood');
    expect(state().phase).toBe('open');
    expect(session.history()?.count).toBe(count);
    session.dismissFailure();
    live(1);
    expect(state()).toMatchObject({ failure: null });
    expect(state().shownS).toBeGreaterThan(2.5);
  });
});
