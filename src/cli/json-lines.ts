import type { RunEvent } from '../engine/index.ts';

/** One event a line, times as whole hundredths of a second. */
export function jsonLines(events: readonly RunEvent[]): string {
  return events.map((event) => JSON.stringify({ ...event, t: roundTime(event.t) })).join('\n');
}

/** Sums of steps leave last bits that are no part of a time. */
export function roundTime(t: number): number {
  return Math.round(t * 100) / 100;
}
