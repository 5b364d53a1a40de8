/** What would bring a session's run back, as it is known here from one message to the next. */
import type { Action, TimedAction } from '../../engine/index.ts';
import type { Status } from './protocol.ts';
import type { SavedRun } from './session-types.ts';

type Listener = (saved: SavedRun) => void;

/** Less than a step of the engine apart is the same moment. */
const SAME_S = 0.005;

export function createSavedRun() {
  const listeners = new Set<Listener>();
  let log: readonly TimedAction[] | null = null;
  let head = { s: 0, hash: null as string | null };
  /** Sent to the worker as its so-and-so-manieth message, and not yet taken in there. */
  let pending: readonly { readonly action: Action; readonly message: number }[] = [];

  function savedNow(): SavedRun | null {
    if (log === null) return null;
    return {
      log,
      pending: pending.map(({ action }) => action),
      headS: head.s,
      hash: pending.length > 0 ? null : head.hash,
    };
  }

  function tell(): void {
    const saved = savedNow();
    if (saved !== null) for (const listener of [...listeners]) listener(saved);
  }

  return {
    takeLog(message: { log: readonly TimedAction[]; headS: number; hash: string }): void {
      log = message.log;
      head = { s: message.headS, hash: message.hash };
    },
    takeStatus({ answered, timeS, headS, hash }: Status): void {
      pending = pending.filter(({ message }) => message > answered);
      if (Math.abs(timeS - headS) < SAME_S) head = { s: headS, hash };
      else if (headS !== head.s) head = { s: headS, hash: null };
      tell();
    },
    await(action: Action, message: number): void {
      pending = [...pending, { action, message }];
      tell();
    },
    now: savedNow,
    listen(listener: Listener): () => void {
      listeners.add(listener);
      const saved = savedNow();
      if (saved !== null) listener(saved);
      return () => listeners.delete(listener);
    },
  };
}
