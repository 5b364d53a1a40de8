/** Workers that run the starts of items: one that is done with waits for the next start, warm. */
import type { WorkerLike } from '../session/session-types.ts';
import { LINGER_MS } from './item-maker.ts';
import { startWorker } from './start-worker.ts';

interface Idle {
  readonly worker: Worker;
  readonly ending: ReturnType<typeof setTimeout>;
}

const idle: Idle[] = [];

/** Loads what runs a start while the item is still being made. */
export function warmUp(): void {
  if (idle.length === 0) lay(startWorker());
}

/** For one session; ended by it, it waits for another. */
export function borrowWorker(): WorkerLike {
  const waiting = idle.pop();
  if (waiting !== undefined) clearTimeout(waiting.ending);
  const worker = waiting?.worker ?? startWorker();
  let broken = false;
  const lent: WorkerLike = {
    onmessage: null,
    onerror: null,
    postMessage: (message) => worker.postMessage(message),
    terminate() {
      worker.onmessage = null;
      worker.onerror = null;
      if (broken) worker.terminate();
      else lay(worker);
    },
  };
  worker.onmessage = (event) => lent.onmessage?.(event);
  worker.onerror = (event) => {
    broken = true;
    lent.onerror?.(event);
  };
  return lent;
}

function lay(worker: Worker): void {
  idle.push({ worker, ending: setTimeout(() => endOf(worker), LINGER_MS) });
}

function endOf(worker: Worker): void {
  const place = idle.findIndex((one) => one.worker === worker);
  if (place >= 0) idle.splice(place, 1);
  worker.terminate();
}
