/** A connection that comes back by itself, for ever, until it is closed or told not to. */
import type { z } from 'zod';
import {
  ANSWERS,
  type Answers,
  CLASS_PROTOCOL,
  GONE,
  type Hello,
  TO_CLIENT,
  type ToClient,
  type ToServer,
  type Welcome,
} from '../protocol/index.ts';
import { waitBefore } from './wait-before.ts';
import type { WaysTaken } from './ways.ts';
import type { Wire } from './wire.ts';

export type Gone = (typeof GONE)[number];
/** 'away': it reconnects by itself; 'gone': it does not. */
export type LinkPhase = 'connecting' | 'live' | 'away' | 'gone';

export type Hears = {
  readonly [Event in Exclude<keyof ToClient, 'welcome' | 'gone'>]?: (data: ToClient[Event]) => void;
};

export interface LinkEnd {
  /** Given anew with each try. */
  hello(): Hello;
  welcome(welcome: Welcome): void;
  /** What the server says by itself, once it has been checked. */
  readonly hears: Hears;
  phase(phase: LinkPhase, gone: Gone | null): void;
  /** The device may have slept: what looks live is to be tried. */
  woken(): void;
}

export interface Link {
  phase(): LinkPhase;
  /** @throws (rejects) when it is away or no answer came that can be read */
  ask<Event extends keyof Answers>(
    event: Event,
    data: ToServer[Event],
    withinMs?: number,
  ): Promise<Answers[Event]>;
  /** May be lost. */
  tell<Event extends 'state' | 'head'>(event: Event, data: ToServer[Event]): void;
  /** Begins with a connection anew, for a welcome that tells everything again. */
  renew(): void;
  /** It is of no use to come back. */
  giveUp(gone: Gone): void;
  close(): void;
}

/** What passes by itself: the same may be tried again. */
export const PASSING: readonly string[] = [
  'server stops',
  'too fast',
  'too many attempts',
  'cannot be saved now',
] satisfies readonly Gone[];

const WELCOME_WITHIN_MS = 5000;
const ANSWER_WITHIN_MS = 8000;
/** What held so long counts as having held. */
const HELD_MS = 5000;

export function createLink(ways: WaysTaken, end: LinkEnd): Link {
  let phase: LinkPhase = 'connecting';
  let wire: Wire | null = null;
  let tries = 0;
  let liveSinceMs = 0;
  let timer: ReturnType<typeof setTimeout> | null = null;

  function turn(next: LinkPhase, gone: Gone | null = null): void {
    phase = next;
    end.phase(next, gone);
  }

  function stopTimer(): void {
    if (timer !== null) clearTimeout(timer);
    timer = null;
  }

  function connect(): void {
    stopTimer();
    wire?.close();
    const opened: Wire = ways.openWire(ways.url, end.hello(), {
      opened() {
        // Whoever is let in but not welcomed tries again.
      },
      message: (event, data) => {
        if (wire === opened) take(event, data);
      },
      closed: (why) => {
        if (wire === opened) lost(why);
      },
    });
    wire = opened;
    timer = setTimeout(() => lost(''), WELCOME_WITHIN_MS);
  }

  function lost(why: string): void {
    const gone = GONE.find((one) => one === why);
    if (gone !== undefined && !PASSING.includes(gone)) {
      stop(gone);
      return;
    }
    wire?.close();
    wire = null;
    if (phase === 'live' && ways.now() - liveSinceMs >= HELD_MS) tries = 0;
    tries += 1;
    stopTimer();
    timer = setTimeout(connect, waitBefore(tries, ways.random()));
    if (phase === 'live' || phase === 'connecting') turn('away');
  }

  function stop(gone: Gone | null): void {
    stopTimer();
    stopWaking();
    wire?.close();
    wire = null;
    if (phase !== 'gone') turn('gone', gone);
  }

  function take(event: string, data: unknown): void {
    if (event === 'welcome') {
      const welcome = TO_CLIENT.welcome.safeParse(data);
      if (!welcome.success) {
        stop(isOtherVersion(data) ? 'other version' : 'message not understood');
        return;
      }
      stopTimer();
      liveSinceMs = ways.now();
      end.welcome(welcome.data);
      if (phase !== 'gone') turn('live');
      return;
    }
    if (!isFromServer(event)) return;
    const message = TO_CLIENT[event].safeParse(data);
    if (!message.success) return;
    if (event === 'gone') lost((message.data as ToClient['gone']).why);
    else if (phase === 'live' && event !== 'welcome') end.hears[event]?.(message.data as never);
  }

  async function ask<Event extends keyof Answers>(
    event: Event,
    data: ToServer[Event],
    withinMs = ANSWER_WITHIN_MS,
  ): Promise<Answers[Event]> {
    const asked = wire;
    if (asked === null || phase !== 'live') throw new Error('away');
    let answer: unknown;
    try {
      answer = await asked.ask(event, data, withinMs);
    } catch (error) {
      // A line that does not answer is no line, whatever it looks like.
      if (wire === asked) lost('');
      throw error;
    }
    return (ANSWERS[event] as unknown as z.ZodType<Answers[Event]>).parse(answer);
  }

  const stopWaking = ways.wake(() => {
    if (phase === 'gone') return;
    if (phase === 'live') {
      end.woken();
      return;
    }
    tries = 0;
    connect();
  });

  connect();
  return {
    phase: () => phase,
    ask,
    tell(event, data) {
      if (phase === 'live') wire?.tell(event, data);
    },
    renew() {
      if (phase !== 'gone') lost('');
    },
    giveUp: stop,
    close() {
      phase = 'gone';
      stop(null);
    },
  };
}

function isFromServer(event: string): event is keyof ToClient {
  return Object.hasOwn(TO_CLIENT, event);
}

function isOtherVersion(data: unknown): boolean {
  const v = (data as { readonly v?: unknown } | null)?.v;
  return typeof v === 'number' && v !== CLASS_PROTOCOL;
}
