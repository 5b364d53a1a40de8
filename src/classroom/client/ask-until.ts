import type { Answers, ToServer } from '../protocol/index.ts';
import { type Link, PASSING } from './link.ts';

type AskedUntil = 'poll answer' | 'hand in';
const AGAIN_MS = 1000;

export interface AskingUntil {
  /** Asks again, over any number of connections, until the answer is one that stays. */
  ask<Event extends AskedUntil>(event: Event, data: ToServer[Event]): Promise<Answers[Event]>;
  live(): void;
  close(): void;
}

/** For what can be told any number of times and counts once. */
export function createAskingUntil(link: Pick<Link, 'ask' | 'phase'>): AskingUntil {
  let isClosed = false;
  let waiting: (() => void)[] = [];

  function wait(): Promise<void> {
    return new Promise((done) => {
      waiting.push(done);
      // While it is away the next welcome wakes it.
      if (link.phase() === 'live') setTimeout(done, AGAIN_MS);
    });
  }

  return {
    async ask(event, data) {
      for (;;) {
        if (isClosed) return { ok: false, error: 'server stops' };
        try {
          const answer = await link.ask(event, data);
          if (answer.ok || !PASSING.includes(answer.error)) return answer;
        } catch {
          // Told again.
        }
        await wait();
      }
    },
    live() {
      const woken = waiting;
      waiting = [];
      for (const done of woken) done();
    },
    close() {
      isClosed = true;
      for (const done of waiting) done();
    },
  };
}
