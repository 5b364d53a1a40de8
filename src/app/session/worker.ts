/**
 * The worker: a run host, a clock for it, and the shipped library to open scenarios from. Asked to
 * reason, or to make items of a quiz, it does only that, in another one of its kind, so that the
 * engine is loaded from one file.
 */
import library from 'virtual:library';
import { createRun } from '../../engine/index.ts';
import { caseOfExercise } from '../../judging/work/index.ts';
import type { AuthorHost } from '../teach-scenarios/author-host.ts';
import { benchPort } from './bench-port.ts';
import { openFailure } from './host-ports.ts';
import type { MakeHost } from './make-host.ts';
import type { ReasonHost } from './reason-host.ts';
import { createRunHost } from './run-host.ts';
import { openStage } from './stage.ts';

/** About as often as a screen is drawn; frames come every tenth of a simulated second. */
const TICK_MS = 25;

/** What opens the start of a quiz item comes with the first of them; till then its mail waits. */
let openItemStage: typeof import('./item-stage.ts').openItemStage | null = null;
/** So does what checks an exercise that is no shipped one. */
let libraryWith: typeof import('./given-library.ts').libraryWith | null = null;
let waiting: unknown[] | null = null;

const laidOver = (given: unknown) => libraryWith?.(library, given) ?? library;

const host = createRunHost({
  nowMs: () => performance.now(),
  post: (message, transfer = []) => self.postMessage(message, { transfer }),
  openStage(id, kind, { item, given, seed }) {
    const choices = seed === undefined ? {} : { seed };
    if (item === undefined) return openStage(laidOver(given), id, kind, choices);
    if (openItemStage === null) throw openFailure('unknown scenario', id);
    return openItemStage(library, id, item);
  },
  createRun: (setup) => createRun(setup),
  bench: benchPort,
});

let reasoning: Promise<ReasonHost> | null = null;

/** What reasons comes when it is asked for: a plant that is only run never loads it. */
async function startReasoning(): Promise<ReasonHost> {
  const [{ createReasonHost }, { loadAtlas }, { createReasoner }, { libraryWith }] =
    await Promise.all([
      import('./reason-host.ts'),
      import('./load-atlas.ts'),
      import('../../judging/reasoning/index.ts'),
      import('./given-library.ts'),
    ]);
  return createReasonHost({
    post: (message) => self.postMessage(message),
    openCase: (kind, id, { given, seed }) =>
      caseOfExercise(libraryWith(library, given), kind, id, seed === undefined ? {} : { seed }),
    loadAtlas,
    createReasoner,
  });
}

let making: Promise<MakeHost> | null = null;

async function startMaking(): Promise<MakeHost> {
  const [{ createMakeHost }, { loadAtlas }, { makePort }] = await Promise.all([
    import('./make-host.ts'),
    import('./load-atlas.ts'),
    import('./make-port.ts'),
  ]);
  return createMakeHost({
    ...makePort(library),
    post: (message) => self.postMessage(message),
    loadAtlas,
  });
}

let authoring: Promise<AuthorHost> | null = null;

async function startAuthoring(): Promise<AuthorHost> {
  const [{ createAuthorHost }, { loadAtlas }] = await Promise.all([
    import('../teach-scenarios/author-host.ts'),
    import('./load-atlas.ts'),
  ]);
  return createAuthorHost({
    library,
    post: (message) => self.postMessage(message),
    loadAtlas,
  });
}

let timer: ReturnType<typeof setTimeout> | null = null;

function tick(): void {
  timer = host.tick() ? setTimeout(tick, TICK_MS) : null;
}

self.onmessage = (event: MessageEvent) => {
  if (isOfType(event.data, 'make item')) {
    making ??= startMaking();
    making.then((makes) => makes.receive(event.data)).catch(failLoudly);
    return;
  }
  if (isOfType(event.data, 'ask here')) {
    import('./here-host.ts')
      .then(({ answerHere }) => self.postMessage(answerHere(library, event.data)))
      .catch(failLoudly);
    return;
  }
  if (isOfType(event.data, 'author')) {
    authoring ??= startAuthoring();
    authoring.then((author) => author.receive(event.data)).catch(failLoudly);
    return;
  }
  if (isOfType(event.data, 'reason')) {
    reasoning ??= startReasoning();
    reasoning.then((reasons) => reasons.receive(event.data)).catch(failLoudly);
    return;
  }
  if (waiting !== null) {
    waiting.push(event.data);
    return;
  }
  const loads = whatLoads(event.data);
  if (loads !== null) {
    waiting = [event.data];
    loads().then(letIn).catch(failLoudly);
    return;
  }
  receive(event.data);
};

function receive(message: unknown): void {
  host.receive(message);
  if (timer === null) timer = setTimeout(tick, 0);
}

/** What has to come before a message can be answered; null where it is there. */
function whatLoads(message: unknown): (() => Promise<void>) | null {
  if (openItemStage === null && opens(message, 'item')) return loadItemStage;
  return libraryWith === null && opens(message, 'given') ? loadLibraryWith : null;
}

async function loadItemStage(): Promise<void> {
  ({ openItemStage } = await import('./item-stage.ts'));
}

async function loadLibraryWith(): Promise<void> {
  ({ libraryWith } = await import('./given-library.ts'));
}

function letIn(): void {
  const mail = waiting ?? [];
  waiting = null;
  for (const message of mail) receive(message);
}

/** Thrown outside of a promise, so that the page hears of it as an error of this worker. */
function failLoudly(error: unknown): void {
  setTimeout(() => {
    throw error;
  });
}

function opens(message: unknown, what: 'item' | 'given'): boolean {
  const found = ((message ?? {}) as { readonly [key: string]: unknown })[what];
  return isOfType(message, 'open') && found !== undefined;
}

function isOfType(message: unknown, type: string): boolean {
  return (message as { readonly type?: unknown } | null)?.type === type;
}
