/** The page's end: questions to a worker of its own, each answered or cancelled. */
import type { WorkerLike } from '../session/session-types.ts';
import {
  type AuthorAnswers,
  type AuthorQuestion,
  fromAuthorSchema,
  type ToAuthor,
} from './author-protocol.ts';

export interface AuthorPort {
  /** Rejects where the worker breaks off or is closed. */
  ask<Of extends AuthorQuestion['of']>(
    what: Extract<AuthorQuestion, { of: Of }>,
  ): Promise<AuthorAnswers[Of]>;
  /** Whatever is still asked rejects with the reason `closed`. */
  close(): void;
}

export const CLOSED = 'closed';

export function createAuthorPort(start: () => WorkerLike<ToAuthor>): AuthorPort {
  let worker: WorkerLike<ToAuthor> | null = null;
  let number = 0;
  const open = new Map<number, { resolve(answer: never): void; reject(error: Error): void }>();

  function started(): WorkerLike<ToAuthor> {
    const made = start();
    made.onmessage = ({ data }) => {
      const parsed = fromAuthorSchema.safeParse(data);
      if (!parsed.success) return;
      const { ask, answer, trouble } = parsed.data;
      const asked = open.get(ask);
      open.delete(ask);
      if (trouble === null) asked?.resolve(answer as never);
      else asked?.reject(new Error(trouble));
    };
    made.onerror = (event) => end(event.message ?? '');
    return made;
  }

  function end(why: string): void {
    worker?.terminate();
    worker = null;
    const waiting = [...open.values()];
    open.clear();
    for (const { reject } of waiting) reject(new Error(why));
  }

  return {
    ask(what) {
      worker ??= started();
      const running = worker;
      number += 1;
      const ask = number;
      return new Promise((resolve, reject) => {
        open.set(ask, { resolve, reject });
        running.postMessage({ type: 'author', ask, what });
      });
    },
    close: () => end(CLOSED),
  };
}
