/** A session against a real host over the toy run; the wire between them copies as a worker's does. */
import { createRunHost } from '../../../src/app/session/run-host.ts';
import { createSession } from '../../../src/app/session/session.ts';
import type { SessionOpening, WorkerLike } from '../../../src/app/session/session-types.ts';
import type { TimedAction } from '../../../src/engine/index.ts';
import { createBench } from './toy-run.ts';

export function openToySession(
  what: string | SessionOpening,
  actions: readonly TimedAction[] = [],
  arriveS = 0,
) {
  const bench = createBench(actions, arriveS);
  /** While it is shut, what the page says waits at the worker's door. */
  const door = { shut: false };
  const waiting: unknown[] = [];
  const worker: WorkerLike = {
    postMessage: (message) => {
      waiting.push(structuredClone(message));
      if (!door.shut) letIn();
    },
    terminate: () => undefined,
    onmessage: null,
    onerror: null,
  };
  const host = createRunHost({
    ...bench.ports,
    post: (data) => worker.onmessage?.({ data: structuredClone(data) } as MessageEvent),
  });
  function letIn(): void {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) host.receive(next);
  }
  door.shut = true;
  const session = createSession(worker, what);
  door.shut = false;
  letIn();
  const live = (realS: number): void => {
    for (let i = 0; i < realS * 50; i += 1) {
      bench.clockMs += 20;
      host.tick();
      session.animate(bench.clockMs);
    }
  };
  return { session, live, bench, door, letIn, worker };
}
