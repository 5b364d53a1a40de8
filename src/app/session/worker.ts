/**
 * The worker: a run host, a clock for it, and the shipped library to open scenarios from. Asked to
 * reason it does only that, in a second one of its kind, so that the engine is loaded from one file.
 */
import library from 'virtual:library';
import { createRun } from '../../engine/index.ts';
import { benchPort } from './bench-port.ts';
import { caseOfExercise } from './exercise-case.ts';
import type { ReasonHost } from './reason-host.ts';
import { createRunHost } from './run-host.ts';
import { openStage } from './stage.ts';

/** About as often as a screen is drawn; frames come every tenth of a simulated second. */
const TICK_MS = 25;

const host = createRunHost({
  nowMs: () => performance.now(),
  post: (message, transfer = []) => self.postMessage(message, { transfer }),
  openStage: (id, kind) => openStage(library, id, kind),
  createRun: (setup) => createRun(setup),
  bench: benchPort,
});

let reasoning: Promise<ReasonHost> | null = null;

/** What reasons comes when it is asked for: a plant that is only run never loads it. */
async function startReasoning(): Promise<ReasonHost> {
  const [{ createReasonHost }, { loadAtlas }, { createReasoner }] = await Promise.all([
    import('./reason-host.ts'),
    import('./load-atlas.ts'),
    import('./reason-port.ts'),
  ]);
  return createReasonHost({
    post: (message) => self.postMessage(message),
    openCase: (kind, id) => caseOfExercise(library, kind, id),
    loadAtlas,
    createReasoner,
  });
}

let timer: ReturnType<typeof setTimeout> | null = null;

function tick(): void {
  timer = host.tick() ? setTimeout(tick, TICK_MS) : null;
}

self.onmessage = (event: MessageEvent) => {
  if (isToReason(event.data)) {
    reasoning ??= startReasoning();
    reasoning.then((reasons) => reasons.receive(event.data)).catch(failLoudly);
    return;
  }
  host.receive(event.data);
  if (timer === null) timer = setTimeout(tick, 0);
};

/** Thrown outside of a promise, so that the page hears of it as an error of this worker. */
function failLoudly(error: unknown): void {
  setTimeout(() => {
    throw error;
  });
}

function isToReason(message: unknown): boolean {
  return (message as { readonly type?: unknown } | null)?.type === 'reason';
}
