/** The page's end of asking what follows: a worker for one question, ended with its answer. */
import type { TimedAction } from '../../engine/index.ts';
import { startWorker } from '../quiz-item/start-worker.ts';
import { type FromHere, fromHereSchema, type ToHere } from '../session/here-protocol.ts';

export type Moment = Pick<ToHere, 'kind' | 'id' | 'given' | 'seed' | 'atS'> & {
  readonly log: readonly TimedAction[];
};

/** Never rejects: what went wrong is told as an answer. */
export function askHere({ log, ...moment }: Moment, place: number): Promise<FromHere> {
  return new Promise((resolve) => {
    const worker = startWorker();
    const end = (answer: FromHere) => {
      worker.terminate();
      resolve(answer);
    };
    worker.onmessage = (event) => {
      const parsed = fromHereSchema.safeParse(event.data);
      end(parsed.success ? parsed.data : brokenOff(parsed.error.message));
    };
    worker.onerror = (event) => end(brokenOff(event.message ?? ''));
    worker.postMessage({
      type: 'ask here',
      ask: 1,
      ...moment,
      log: [...log],
      place,
    } satisfies ToHere);
  });
}

function brokenOff(detail: string): FromHere {
  return { type: 'asked here', ask: 1, ok: false, why: 'asking broke off', detail };
}
