/** The worker: a run host, a clock for it, and the shipped library to open scenarios from. */
import library from 'virtual:library';
import { createRun } from '../../engine/index.ts';
import { benchPort } from './bench-port.ts';
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

let timer: ReturnType<typeof setTimeout> | null = null;

function tick(): void {
  timer = host.tick() ? setTimeout(tick, TICK_MS) : null;
}

self.onmessage = (event: MessageEvent) => {
  host.receive(event.data);
  if (timer === null) timer = setTimeout(tick, 0);
};
