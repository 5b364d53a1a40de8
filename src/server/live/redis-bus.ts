import { randomUUID } from 'node:crypto';
import { createAdapter } from '@socket.io/redis-streams-adapter';
import { Redis } from 'ioredis';
import type { Server } from 'socket.io';
import type { Bus, BusMessage, BusState } from './bus.ts';
import type { Log } from './log.ts';

/** A room without connections: what is told to it goes to the other processes alone. */
const PROCESSES = 'processes';
const EVENT = 'told';
const LONGEST_WAIT_MS = 2000;
const CONNECT_WITHIN_MS = 5000;
/** How long a reader waits for the next message before it asks again, ms: so long stopping may take. */
const BLOCK_MS = 1000;
/** Messages that Redis keeps for a process that was cut off for a moment. */
const KEPT_MESSAGES = 5000;

/** What a message looks like when it has come through the adapter. */
interface Broadcast {
  readonly uid?: string;
  readonly data?: {
    readonly packet?: { readonly data?: readonly unknown[] };
    readonly opts?: { readonly rooms?: readonly string[] };
  };
}
interface Adapter {
  onMessage(message: Broadcast, offset?: string): void;
}

/**
 * Between processes by Socket.IO's adapter over Redis Streams. While Redis is gone nothing is
 * told and nothing waits: classes go on by what the store says.
 *
 * @param url of Redis
 */
export function createRedisBus(io: Server, url: string, log: Log): Bus {
  const own = randomUUID();
  const connections: Redis[] = [];
  const redis = connect();
  let last: BusState = 'not reached';
  let closed = false;
  let take: ((message: BusMessage, from: string) => void) | null = null;

  function connect(): Redis {
    const connection = new Redis(url, {
      // Commands wait for the connection instead of failing: those that read go on where they were.
      maxRetriesPerRequest: null,
      connectTimeout: CONNECT_WITHIN_MS,
      retryStrategy: (times) =>
        closed ? null : Math.min(LONGEST_WAIT_MS, 100 * 2 ** Math.min(times, 6)),
    });
    connection.on('error', () => {
      if (last === 'ready') log.warn({}, 'redis not reached');
      last = 'not reached';
    });
    // The adapter asks to hear a channel and does not look whether it may.
    const subscribe = connection.subscribe.bind(connection) as (
      ...names: string[]
    ) => Promise<unknown>;
    Object.assign(connection, {
      subscribe: (...names: string[]) => subscribe(...names).catch(() => 0),
    });
    connections.push(connection);
    return connection;
  }
  redis.on('ready', () => {
    if (last !== 'ready') log.info({}, 'redis reached');
    last = 'ready';
  });
  redis.on('close', () => {
    last = 'not reached';
  });

  const isReady = (): boolean => redis.status === 'ready';
  const unlessGone = (command: () => Promise<unknown>): Promise<unknown> =>
    isReady() ? command().catch(() => '') : Promise.resolve('');
  // What the adapter is given to write with: it drops what cannot be told now.
  const writer = {
    options: redis.options,
    duplicate: connect,
    xadd: (args: [string, ...string[]]) =>
      unlessGone(() => redis.call('XADD', ...args.map(String))),
    publish: (channel: string, payload: Buffer) =>
      unlessGone(() => redis.publish(channel, payload)),
  };
  const makeAdapter = createAdapter(writer, {
    streamName: 'flamewright',
    channelPrefix: 'flamewright',
    maxLen: KEPT_MESSAGES,
    blockTimeInMs: BLOCK_MS,
  });
  // Called with `new`, so no arrow.
  io.adapter(function forNamespace(namespace: unknown) {
    const adapter = makeAdapter(namespace) as unknown as Adapter;
    const handOn = adapter.onMessage.bind(adapter);
    adapter.onMessage = (message, offset) => {
      if (message.data?.opts?.rooms?.[0] !== PROCESSES) return handOn(message, offset);
      const [event, from, told] = message.data.packet?.data ?? [];
      if (event !== EVENT || typeof from !== 'string' || from === own) return;
      take?.(told as BusMessage, from);
    };
    return adapter;
  } as never);

  return {
    tell(message) {
      if (isReady() && !closed) io.to(PROCESSES).emit(EVENT, own, message);
    },
    listen(listener) {
      take = listener;
    },
    state: () => (isReady() ? 'ready' : 'not reached'),
    async close() {
      closed = true;
      io.of('/').adapter.close();
      for (const connection of connections) connection.disconnect();
    },
  };
}
