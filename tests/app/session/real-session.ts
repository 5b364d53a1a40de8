/** A session of the page over the real engine; the wire between them copies as a worker's does. */
import library from 'virtual:library';
import { benchPort } from '../../../src/app/session/bench-port.ts';
import { libraryWith } from '../../../src/app/session/given-library.ts';
import { createRunHost } from '../../../src/app/session/run-host.ts';
import { createSession } from '../../../src/app/session/session.ts';
import type { SessionOpening, WorkerLike } from '../../../src/app/session/session-types.ts';
import { openStage } from '../../../src/app/session/stage.ts';
import { createRun, type Run, type RunSetup } from '../../../src/engine/index.ts';

export interface Clock {
  ms: number;
}

/** @param make in place of the engine's own */
export function openRealSession(
  clock: Clock,
  opening: SessionOpening,
  make: (setup: RunSetup) => Run = (setup) => createRun(setup),
) {
  const worker: WorkerLike = {
    postMessage: (message) => host.receive(structuredClone(message)),
    terminate: () => undefined,
    onmessage: null,
    onerror: null,
  };
  const late: unknown[] = [];
  let opened = false;
  const host = createRunHost({
    nowMs: () => clock.ms,
    post: (data) => {
      const copy = structuredClone(data);
      if (opened) worker.onmessage?.({ data: copy } as MessageEvent);
      else late.push(copy);
    },
    openStage: (id, kind, { given, seed }) =>
      openStage(libraryWith(library, given), id, kind, seed === undefined ? {} : { seed }),
    createRun: make,
    bench: benchPort,
  });
  const session = createSession(worker, opening, null, () => clock.ms);
  opened = true;
  for (const data of late) worker.onmessage?.({ data } as MessageEvent);
  return {
    session,
    tick(): void {
      host.tick();
      session.animate(clock.ms);
    },
    /** What the worker itself says of the run, whatever is shown. */
    status: () => session.store.read().status,
  };
}
