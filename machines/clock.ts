/**
 * The simulated clock: timers kept by due time, advanced to each in turn.
 *
 * A timer set inside another's callback counts from the moment that callback was due, so a
 * chain of delays loses no time however far one advance jumps. Timers due at the same instant
 * fire in the order they were set. Times are whole milliseconds. It satisfies XState's `Clock`.
 */
export interface SimulatedClock {
  /** The present, ms. During a callback: the moment the callback was due. */
  readonly nowMs: number;
  /** When the next timer is due, ms; Infinity when none is set. One comparison a step. */
  readonly nextDueMs: number;
  setTimeout(callback: () => void, delayMs: number): number;
  clearTimeout(id: number): void;
  /** Moves the present to `ms`, firing every timer due up to and including it at its own time. */
  advanceTo(ms: number): void;
}

interface Timer {
  readonly id: number;
  readonly dueMs: number;
  readonly callback: () => void;
}

/** Timers one instant may fire before the chain counts as endless. */
const MOST_AT_ONE_INSTANT = 10_000;

export function createSimulatedClock(startMs = 0): SimulatedClock {
  const timers: Timer[] = [];
  let lastId = 0;
  let advancing = false;
  const clock = {
    nowMs: startMs,
    nextDueMs: Number.POSITIVE_INFINITY,
    setTimeout(callback: () => void, delayMs: number): number {
      lastId += 1;
      const dueMs = clock.nowMs + Math.max(0, Math.round(delayMs));
      let at = timers.length;
      while (at > 0 && (timers[at - 1] as Timer).dueMs > dueMs) at -= 1;
      timers.splice(at, 0, { id: lastId, dueMs, callback });
      readNextDue();
      return lastId;
    },
    clearTimeout(id: number): void {
      const at = timers.findIndex((timer) => timer.id === id);
      if (at < 0) return;
      timers.splice(at, 1);
      readNextDue();
    },
    advanceTo(ms: number): void {
      if (advancing) throw new Error('the clock is already advancing');
      if (ms < clock.nowMs)
        throw new Error(`the clock cannot go back from ${clock.nowMs} to ${ms} ms`);
      advancing = true;
      try {
        fireUpTo(ms);
        clock.nowMs = ms;
      } finally {
        advancing = false;
      }
    },
  };
  function readNextDue(): void {
    const next = timers[0];
    clock.nextDueMs = next === undefined ? Number.POSITIVE_INFINITY : next.dueMs;
  }
  function fireUpTo(ms: number): void {
    let atThisInstant = 0;
    for (let timer = timers[0]; timer !== undefined && timer.dueMs <= ms; timer = timers[0]) {
      timers.shift();
      readNextDue();
      atThisInstant = timer.dueMs === clock.nowMs ? atThisInstant + 1 : 0;
      if (atThisInstant > MOST_AT_ONE_INSTANT) {
        throw new Error(`timers at ${timer.dueMs} ms set one another without end`);
      }
      clock.nowMs = timer.dueMs;
      timer.callback();
    }
  }
  return clock;
}
