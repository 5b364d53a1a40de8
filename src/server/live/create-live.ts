import type { Server as HttpServer } from 'node:http';
import { Server } from 'socket.io';
import { MESSAGE_BYTES } from '../../classroom/index.ts';
import type { ClassStore } from '../store/types.ts';
import { createAllowances } from './allowance.ts';
import { type Bus, createNoBus } from './bus.ts';
import type { ClassJudge } from './class-judge.ts';
import { takeConnections } from './connect.ts';
import { hearOthers } from './hear.ts';
import { ADDRESS_LIMITS, type AddressLimits } from './limits.ts';
import type { Live } from './live.ts';
import type { Log } from './log.ts';
import { createMetrics } from './metrics.ts';
import { startPulse } from './pulse.ts';
import { createRedisBus } from './redis-bus.ts';
import { watchStore } from './watch-store.ts';
import { createWorkSaver } from './work-saver.ts';

export const CLASS_PATH = '/class';

export interface LiveOptions {
  readonly store: ClassStore;
  readonly judge: ClassJudge;
  readonly log: Log;
  readonly addresses: () => readonly string[];
  /** Whether other processes may write to the same classes. */
  readonly shared: boolean;
  readonly redisUrl?: string | undefined;
  readonly limits?: Partial<AddressLimits> | undefined;
  readonly nowMs?: (() => number) | undefined;
}

export interface LiveServer {
  readonly live: Live;
  /** Tells everyone, saves what is pending and lets go; whether all of it was saved. */
  stop(withinMs: number): Promise<boolean>;
}

/** How long a page may be silent until it counts as gone, ms. */
const PING_EVERY_MS = 10_000;
const PONG_WITHIN_MS = 15_000;
const HELLO_WITHIN_MS = 10_000;

/** The live part of the server, on the web server that serves the page. */
export function createLive(http: HttpServer, options: LiveOptions): LiveServer {
  const io = new Server({
    path: CLASS_PATH,
    transports: ['websocket'],
    allowUpgrades: false,
    serveClient: false,
    perMessageDeflate: false,
    httpCompression: false,
    maxHttpBufferSize: MESSAGE_BYTES,
    pingInterval: PING_EVERY_MS,
    pingTimeout: PONG_WITHIN_MS,
    connectTimeout: HELLO_WITHIN_MS,
  });
  attach(io, http);
  const { log } = options;
  const { store, state: database } = watchStore(options.store);
  const metrics = createMetrics();
  const nowMs = options.nowMs ?? Date.now;
  const bus: Bus =
    options.redisUrl === undefined ? createNoBus() : createRedisBus(io, options.redisUrl, log);
  const works = createWorkSaver(store, metrics, log);
  let isStopping = false;
  const live: Live = {
    io,
    store,
    bus,
    works,
    judge: options.judge,
    metrics,
    log,
    limits: { ...ADDRESS_LIMITS, ...options.limits },
    attempts: createAllowances(nowMs),
    addresses: options.addresses,
    nowMs,
    shared: options.shared,
    health: () => ({ database: database(), redis: bus.state() }),
    stopping: () => isStopping,
    classes: new Map(),
    loading: new Map(),
  };
  takeConnections(live);
  const { sweepSilent } = hearOthers(live);
  const stopPulse = startPulse(live, sweepSilent);
  return {
    live,
    async stop(withinMs) {
      isStopping = true;
      stopPulse();
      bus.tell({ type: 'stops' });
      io.local.emit('gone', { why: 'server stops' });
      const saved = await works.close(withinMs);
      io.local.disconnectSockets(true);
      io.engine.close();
      await bus.close();
      metrics.close();
      return saved;
    },
  };
}

/**
 * Only the upgrade to a socket goes to the engine. By itself it would take every request below
 * its path, and pages have places there.
 */
function attach(io: Server, http: HttpServer): void {
  const listeners = http.listeners('request') as ((...given: unknown[]) => void)[];
  io.attach(http);
  http.removeAllListeners('request');
  for (const listener of listeners) http.on('request', listener);
}
