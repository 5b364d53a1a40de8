import type { Socket } from 'socket.io';
import {
  type Answers,
  type ClassError,
  type Failed,
  TO_SERVER,
  type ToServer,
} from '../../classroom/index.ts';
import { isStoreFailure } from '../store/index.ts';
import { type Allowances, createAllowances } from './allowance.ts';
import { MESSAGE_RATES, PACKETS } from './limits.ts';
import type { Live } from './live.ts';
import { whereOf } from './refuse-message.ts';
import { RIGHTS, type Role } from './rights.ts';

type Name = keyof ToServer;
type Answer<K extends Name> = K extends keyof Answers ? Answers[K] : undefined;

/** What is done for each message. A connection without the right never comes so far. */
export type Handlers = {
  readonly [K in Name]?: (message: ToServer[K]) => Promise<Answer<K>> | Answer<K>;
};

/**
 * Takes the messages of one connection: each with its right, its rate and its schema. Whoever
 * waits for an answer always gets one.
 */
export function serveMessages(live: Live, socket: Socket, role: Role, handlers: Handlers): void {
  const rates = createAllowances(live.nowMs);
  socket.use((packet, next) => {
    if (!rates.take('', PACKETS)) {
      live.metrics.count('slow connections cut');
      live.log.warn({ role }, 'connection cut: it sends without end');
      socket.disconnect(true);
      return;
    }
    next();
    if (isName(packet[0])) return;
    refuse(live, ackOf(packet.slice(1)), 'message not understood', 'no such message');
  });
  for (const name of Object.keys(TO_SERVER) as Name[]) {
    socket.on(name, (...given: unknown[]) => {
      void take(live, rates, role, handlers, name, given);
    });
  }
}

async function take<K extends Name>(
  live: Live,
  rates: Allowances,
  role: Role,
  handlers: Handlers,
  name: K,
  given: readonly unknown[],
): Promise<void> {
  const ack = ackOf(given);
  const handle = handlers[name];
  live.metrics.count('messages');
  if (!RIGHTS[name].includes(role) || handle === undefined) {
    return refuse(live, ack, 'not for this role');
  }
  if (!rates.take(name, MESSAGE_RATES[name])) return refuse(live, ack, 'too fast');
  const message = TO_SERVER[name].safeParse(given[0]);
  if (!message.success) {
    return refuse(live, ack, 'message not understood', whereOf(message.error));
  }
  try {
    const answer = await handle(message.data as ToServer[K]);
    ack?.(answer);
  } catch (error) {
    noteFailure(live, error, name);
    refuse(live, ack, 'cannot be saved now');
  }
}

/** The store's troubles are expected; anything else is a mistake of ours and is noted as one. */
export function noteFailure(live: Live, error: unknown, what: string): void {
  if (isStoreFailure(error)) {
    live.log.warn({ what, trouble: error.trouble }, 'not kept');
    return;
  }
  live.log.error({ what, err: error }, 'failed');
}

function refuse(live: Live, ack: Ack | null, error: ClassError, detail?: string): void {
  live.metrics.count('messages refused');
  const failed: Failed = { ok: false, error, ...(detail === undefined ? {} : { detail }) };
  ack?.(failed);
}

type Ack = (answer: unknown) => void;

function ackOf(given: readonly unknown[]): Ack | null {
  const last = given.at(-1);
  return typeof last === 'function' ? (last as Ack) : null;
}

function isName(name: unknown): boolean {
  return typeof name === 'string' && Object.hasOwn(TO_SERVER, name);
}
