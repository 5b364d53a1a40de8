/** A connection to a class that is made again and again, over plain Socket.IO. */
import { io, type Socket } from 'socket.io-client';
import {
  type Answers,
  CLASS_PROTOCOL,
  type ToClient,
  type ToServer,
} from '../../../src/classroom/index.ts';

/** Longer than a server puts off what it could not save. */
const ANSWER_WITHIN_MS = 12_000;
const COME_IN_WITHIN_MS = 15_000;
const AGAIN_AFTER_MS = 150;

type Welcome = ToClient['welcome'];

export interface Line {
  /** Null where there is no answer: then nobody knows whether it was heard. */
  ask<K extends keyof Answers>(name: K, message: ToServer[K]): Promise<Answers[K] | null>;
  readonly isIn: () => boolean;
  close(): void;
}

export interface LineOptions {
  readonly url: () => string;
  readonly hello: () => Readonly<Record<string, unknown>>;
  readonly welcome: (welcome: Welcome) => void;
  readonly entry: (entry: ToClient['entry']) => void;
}

export function openLine({ url, hello, welcome, entry }: LineOptions): Line {
  let socket: Socket | null = null;
  let isIn = false;
  let isClosed = false;

  function connect(): void {
    if (isClosed) return;
    const made = io(url(), {
      ...{ path: '/class', transports: ['websocket'], forceNew: true, reconnection: false },
      ...{ timeout: COME_IN_WITHIN_MS, auth: { v: CLASS_PROTOCOL, ...hello() } },
    });
    socket = made;
    let isOver = false;
    const over = (): void => {
      if (isOver) return;
      isOver = true;
      isIn = false;
      clearTimeout(late);
      made.removeAllListeners();
      made.disconnect();
      if (!isClosed) setTimeout(connect, AGAIN_AFTER_MS);
    };
    // Connected is not in: a line may be there that carries nothing.
    const late = setTimeout(over, COME_IN_WITHIN_MS);
    made.on('connect_error', over);
    made.on('disconnect', over);
    made.on('welcome', (message: Welcome) => {
      clearTimeout(late);
      welcome(message);
      isIn = true;
    });
    made.on('entry', entry);
  }
  connect();
  return {
    async ask(name, message) {
      const asked = socket;
      if (asked === null || !isIn) return null;
      try {
        return await asked.timeout(ANSWER_WITHIN_MS).emitWithAck(name, message);
      } catch {
        // As a page does: the line may be dead though nobody has said so.
        if (asked === socket && isIn) asked.io.engine.close();
        return null;
      }
    },
    isIn: () => isIn,
    close() {
      isClosed = true;
      socket?.removeAllListeners();
      socket?.disconnect();
    },
  };
}

export function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
