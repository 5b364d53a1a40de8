/** A host over the real engine, the real bench and a library, as the worker has it; time goes by when told. */
import library from 'virtual:library';
import { benchPort } from '../../../src/app/session/bench-port.ts';
import { libraryWith } from '../../../src/app/session/given-library.ts';
import type { HistoryEvent, Status, ToPage } from '../../../src/app/session/protocol.ts';
import { createRunHost } from '../../../src/app/session/run-host.ts';
import { openStage } from '../../../src/app/session/stage.ts';
import type { Opening, ToWorker } from '../../../src/app/session/to-worker.ts';
import { createRun } from '../../../src/engine/index.ts';

export function openHost(opening: Opening, from: typeof library = library) {
  let clockMs = 0;
  const posted: ToPage[] = [];
  const host = createRunHost({
    nowMs: () => clockMs,
    post: (message) => posted.push(message),
    openStage: (id, kind, { given, seed }) =>
      openStage(libraryWith(from, given), id, kind, seed === undefined ? {} : { seed }),
    createRun: (setup) => createRun(setup),
    bench: benchPort,
  });
  const tell = (...messages: ToWorker[]) => {
    for (const message of messages) host.receive(message);
  };
  const live = (realS: number) => {
    for (let i = 0; i < realS * 40; i += 1) {
      clockMs += 25;
      host.tick();
    }
  };
  const of = <T extends ToPage['type']>(type: T) =>
    posted.filter((message) => message.type === type) as Extract<ToPage, { type: T }>[];
  const status = (): Status => of('batch').at(-1)?.status as Status;
  const events = (): HistoryEvent[] => {
    const kept: HistoryEvent[] = [];
    for (const batch of of('batch')) {
      kept.splice(batch.firstEvent, Number.POSITIVE_INFINITY, ...batch.events);
    }
    return kept;
  };
  tell({ type: 'open', ...opening });
  return { tell, live, of, status, events };
}
