import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fastify, { type FastifyInstance, LogController } from 'fastify';
import type { LearnerLibrary } from '../scenario/index.ts';
import { lanAddresses } from './addresses.ts';
import { SECURITY_HEADERS } from './headers.ts';
import { answerFailure } from './http/answer-failure.ts';
import {
  createInstructorKey,
  type HttpDeps,
  registerClasses,
  registerResults,
  registerWatch,
  sweepExpired,
} from './http/index.ts';
import { registerLibrary } from './library/index.ts';
import { listenOnFreePort } from './listen.ts';
import {
  type AddressLimits,
  type ClassJudge,
  createClassJudge,
  createLive,
  type Live,
} from './live/index.ts';
import { registerPage } from './page-server.ts';
import type { ServerSettings } from './settings.ts';
import { type ClassStore, createClassStore, createDatabase } from './store/index.ts';

export interface StartOptions {
  /** The folder of built files, or null for a server without a page. */
  readonly root: string | null;
  /** Where `atlas/` and `quiz/` lie; left out: with the page. */
  readonly assets?: string;
  readonly settings: ServerSettings;
  /** Shipped scenarios, read when first asked for. */
  readonly library: () => LearnerLibrary;
  /** In place of the one that the settings name. */
  readonly store?: ClassStore;
  readonly judge?: ClassJudge;
  readonly limits?: Partial<AddressLimits>;
  /** Whether other processes may write to the same classes; left out: with a PostgreSQL. */
  readonly shared?: boolean;
}

export interface RunningServer {
  readonly port: number;
  readonly url: string;
  readonly fastify: FastifyInstance;
  readonly live: Live;
  /** Asked of instructors elsewhere than on this machine; null where the settings gave it. */
  readonly instructorKey: string | null;
  /** Takes nothing more, saves what is pending, tells everyone and ends. Once. */
  stop(): Promise<void>;
}

/** More than this no request has, but for routes that say so. */
const BODY_BYTES = 4096;
const SAVE_WITHIN_MS = 4000;
const SWEEP_EVERY_MS = 3_600_000;
const DATABASE_FOLDER = 'database';

/**
 * The page, classes and the library on one port.
 *
 * @throws where the port, the page or the instructor's key is not to be had
 */
export async function startServer(options: StartOptions): Promise<RunningServer> {
  const { settings, root, library } = options;
  const key = createInstructorKey(settings.dataFolder, settings.instructorKey);
  const store = options.store ?? storeOf(settings);
  const { database } = store;
  const assets = options.assets ?? root ?? '';
  const server = fastify({
    bodyLimit: BODY_BYTES,
    forceCloseConnections: true,
    logger: loggerOf(settings.log),
    logController: new LogController({ disableRequestLogging: settings.log !== 'debug' }),
  });
  server.addHook('onRequest', async (_request, reply) => {
    reply.headers(SECURITY_HEADERS);
  });
  server.setErrorHandler(answerFailure);
  let port = settings.port;
  const judge = options.judge ?? createClassJudge(library, join(assets, 'atlas'));
  const { live, stop: stopLive } = createLive(server.server, {
    store,
    judge,
    log: server.log,
    addresses: () => lanAddresses().map((address) => `http://${address}:${port}`),
    shared: options.shared ?? database.kind === 'postgresql',
    redisUrl: settings.redisUrl,
    limits: options.limits,
  });
  const deps: HttpDeps = { live, key, library, quizItems: readOnce(() => itemIds(assets)) };
  registerClasses(server, deps);
  registerResults(server, deps);
  registerWatch(server, live);
  registerLibrary(server, {
    database: async () => database,
    mayWrite: (request) => key.allows(request),
    base: library,
  });
  if (root !== null) await registerPage(server, root);
  const sweep = setInterval(() => {
    // A database that nobody has opened is not opened for this while nothing was ever kept in it.
    const isThere = options.store !== undefined || hasDatabase(settings);
    if (isThere) void sweepExpired(live);
  }, SWEEP_EVERY_MS);
  let stopping: Promise<void> | null = null;
  const stop = async (): Promise<void> => {
    clearInterval(sweep);
    const saved = await stopLive(SAVE_WITHIN_MS);
    if (!saved) server.log.error({}, 'stopped with works that could not be saved');
    await server.close();
    await judge.close();
    await database.close();
  };
  port = await listenOnFreePort(server, { port: settings.port, host: settings.host });
  return {
    port,
    url: `http://${urlHost(settings.host)}:${port}`,
    fastify: server,
    live,
    instructorKey: key.made,
    stop: () => {
      stopping ??= stop();
      return stopping;
    },
  };
}

function hasDatabase({ databaseUrl, dataFolder }: ServerSettings): boolean {
  return databaseUrl !== undefined || existsSync(join(dataFolder, DATABASE_FOLDER));
}

function storeOf({ databaseUrl, dataFolder }: ServerSettings): ClassStore {
  const folder = join(dataFolder, DATABASE_FOLDER);
  return createClassStore(
    createDatabase(databaseUrl === undefined ? { folder } : { folder, databaseUrl }),
  );
}

/** No names and no secrets: of a request its method and path, of an answer its status. */
function loggerOf(level: ServerSettings['log']) {
  if (level === 'silent') return false;
  return {
    level,
    serializers: {
      req: ({ method, url }: { method: string; url: string }) => ({
        method,
        path: url.split('?', 1)[0],
      }),
      res: ({ statusCode }: { statusCode: number }) => ({ status: statusCode }),
    },
  };
}

function itemIds(assets: string): ReadonlySet<string> {
  const bank = JSON.parse(readFileSync(join(assets, 'quiz/items.json'), 'utf8')) as {
    readonly items: readonly { readonly id: string }[];
  };
  return new Set(bank.items.map(({ id }) => id));
}

function readOnce<T>(read: () => T): () => T {
  let known: { readonly value: T } | null = null;
  return () => {
    known ??= { value: read() };
    return known.value;
  };
}

function urlHost(host = 'localhost'): string {
  return host.includes(':') ? `[${host}]` : host;
}
