import { fileURLToPath } from 'node:url';
import { io, type Socket } from 'socket.io-client';
import { onTestFinished } from 'vitest';
import {
  type Answers,
  CLASS_PROTOCOL,
  type OpenClass,
  type OpenedClass,
  openedClassSchema,
  type Seated,
  type ToClient,
  type ToServer,
  type Welcome,
  type WorkDelta,
} from '../../../src/classroom/index.ts';
import { type RunningServer, type StartOptions, startServer } from '../../../src/server/index.ts';
import { library } from '../../support/library.ts';
import { createMemoryStore, type MemoryStore } from '../../support/memory-store.ts';

const ASSETS = fileURLToPath(new URL('../../../assets/page', import.meta.url));
const ANSWER_WITHIN_MS = 10_000;
export const KEY = 'key of the tests';

export interface TestServer extends RunningServer {
  readonly store: MemoryStore;
}

/** A server on a free port of this machine, ended with the test. */
export async function serve(
  given: Partial<StartOptions> & { readonly store?: MemoryStore } = {},
): Promise<TestServer> {
  const store = given.store ?? createMemoryStore();
  const server = await startServer({
    root: null,
    assets: ASSETS,
    settings: {
      port: 0,
      host: '127.0.0.1',
      dataFolder: '',
      instructorKey: KEY,
      log: 'silent',
    },
    library: () => library,
    judge: { judge: async () => null, close: async () => {} },
    ...given,
    store,
  });
  onTestFinished(() => server.stop());
  return { ...server, store };
}

export const OWN_COPIES: OpenClass = {
  what: { kind: 'start', id: 'healthy-start', title: 'A healthy start', plant: 'dairy' },
  way: 'own copies',
};

export async function openClass(
  server: RunningServer,
  asked: OpenClass = OWN_COPIES,
): Promise<OpenedClass> {
  const response = await fetch(`${server.url}/api/classes`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', 'x-instructor-key': KEY },
    body: JSON.stringify(asked),
  });
  const body: unknown = await response.json();
  if (response.status !== 201) throw new Error(`not opened: ${JSON.stringify(body)}`);
  return openedClassSchema.parse(body);
}

/** One connection with all that came over it. */
export interface Client {
  readonly socket: Socket;
  readonly welcomes: Welcome[];
  readonly got: { readonly [K in keyof ToClient]: ToClient[K][] };
  ask<K extends keyof Answers>(name: K, message: ToServer[K]): Promise<Answers[K]>;
  /** Whatever is sent, as whoever writes pages of his own could. */
  askAny(name: string, message: unknown): Promise<{ ok: boolean; error?: string; detail?: string }>;
  tell<K extends keyof ToServer>(name: K, message: ToServer[K]): void;
  /** Waits until it holds. */
  until(holds: () => boolean): Promise<void>;
  close(): void;
}

/** Connects with any hello. Rejects with the code when it is not let in. */
export async function connect(
  server: Pick<RunningServer, 'url'>,
  hello: Readonly<Record<string, unknown>>,
): Promise<Client> {
  const socket = io(server.url, {
    path: '/class',
    transports: ['websocket'],
    forceNew: true,
    reconnection: false,
    auth: { v: CLASS_PROTOCOL, ...hello },
  });
  onTestFinished(() => void socket.disconnect());
  const got: Record<string, unknown[]> = {
    welcome: [],
    entry: [],
    head: [],
    worked: [],
    board: [],
    roster: [],
    'poll counts': [],
    gone: [],
  };
  for (const [name, list] of Object.entries(got)) {
    socket.on(name, (message: unknown) => list.push(message));
  }
  await new Promise<void>((resolve, reject) => {
    socket.once('connect_error', (error) => reject(new Error(error.message)));
    socket.once(hello.role === 'door' ? 'connect' : 'welcome', () => resolve());
  });
  const askAny = (name: string, message: unknown): Promise<never> =>
    socket.timeout(ANSWER_WITHIN_MS).emitWithAck(name, message) as Promise<never>;
  return {
    socket,
    welcomes: got.welcome as Welcome[],
    got: got as unknown as Client['got'],
    ask: askAny,
    askAny,
    tell: (name, message) => void socket.emit(name, message),
    until: (holds) => waitUntil(holds),
    close: () => void socket.disconnect(),
  };
}

/** A learner who has come in by the code. */
export async function join(
  server: RunningServer,
  opened: OpenedClass,
  nickname = 'Robin',
): Promise<Extract<Seated, { ok: true }>> {
  const door = await connect(server, { role: 'door' });
  const seated = await door.ask('join', { code: opened.code, nickname });
  door.close();
  if (!seated.ok) throw new Error(seated.error);
  return seated;
}

export function sit(
  server: RunningServer,
  seated: Extract<Seated, { ok: true }>,
  since = 0,
): Promise<Client> {
  const { seat, token } = seated;
  return connect(server, { role: 'seat', class: seated.class, seat, token, since });
}

export function lead(server: RunningServer, opened: OpenedClass, since = 0): Promise<Client> {
  const { id, secret } = opened;
  return connect(server, { role: 'instructor', class: id, secret, since });
}

export function project(server: RunningServer, opened: OpenedClass): Promise<Client> {
  const { id, projectorKey } = opened;
  return connect(server, { role: 'projector', class: id, key: projectorKey, since: 0 });
}

export async function waitUntil(holds: () => boolean): Promise<void> {
  while (!holds()) await new Promise((resolve) => setTimeout(resolve, 10));
}

let keys = 0;
/** A key as an instructor's page makes it. */
export function newKey(): string {
  keys += 1;
  return `key-${String(keys).padStart(6, '0')}`;
}

export const TOGETHER: OpenClass = { ...OWN_COPIES, way: 'together' };

/** Something told of work, empty but for what is given. */
export function workDelta(given: Partial<WorkDelta>): WorkDelta {
  return {
    attempt: 1,
    rev: 1,
    headS: 10,
    hash: null,
    setupHash: 'setup',
    startedMs: 0,
    applied: 0,
    keepActs: 0,
    acts: [],
    keepDesk: 0,
    desk: [],
    ...given,
  };
}
