/**
 * What is due when, by simulated time; ties in the order they were put in.
 * A sorted list: a run has tens of entries, and the step only looks at the first.
 */
export interface Schedule<T> {
  readonly entries: { readonly ms: number; readonly what: T }[];
}

export function createSchedule<T>(): Schedule<T> {
  return { entries: [] };
}

export function nextDueMs<T>(schedule: Schedule<T>): number {
  const first = schedule.entries[0];
  return first === undefined ? Number.POSITIVE_INFINITY : first.ms;
}

export function putAt<T>(schedule: Schedule<T>, ms: number, what: T): void {
  let i = schedule.entries.length;
  while (i > 0 && (schedule.entries[i - 1] as { ms: number }).ms > ms) i--;
  schedule.entries.splice(i, 0, { ms, what });
}

/** As putAt, but before all of the same time: what the plant does by itself goes ahead of a hand. */
export function putFirst<T>(schedule: Schedule<T>, ms: number, what: T): void {
  let i = 0;
  while (i < schedule.entries.length && (schedule.entries[i] as { ms: number }).ms < ms) i++;
  schedule.entries.splice(i, 0, { ms, what });
}

export function takeDue<T>(schedule: Schedule<T>, nowMs: number): T | undefined {
  const first = schedule.entries[0];
  if (first === undefined || first.ms > nowMs) return undefined;
  schedule.entries.shift();
  return first.what;
}
