/** Where a run has come to, as those that follow it hear of it. */
import type { TimedAction } from '../../engine/index.ts';
import type { Status } from './protocol.ts';
import type { ToldChange } from './to-worker.ts';

export interface Told {
  /** Everything done so far, and what the scenario does by itself later. */
  readonly log: readonly TimedAction[];
  readonly headS: number;
  /** Of the run at `headS`; null where it is not known. */
  readonly hash: string | null;
  readonly mode: Status['mode'];
  readonly speed: number;
}

/** A log may be told whole each time; the worker hears of what changed. */
export function changeOfTold(
  { log, ...head }: Told,
  before: readonly TimedAction[] = [],
): ToldChange {
  const most = Math.min(log.length, before.length);
  let keep = 0;
  while (keep < most && isSame(log[keep], before[keep])) keep += 1;
  return { keep, add: log.slice(keep), ...head };
}

function isSame(a: TimedAction | undefined, b: TimedAction | undefined): boolean {
  return a === b || JSON.stringify(a) === JSON.stringify(b);
}

/** No more often than this while nothing but time goes on. */
export const LEAD_EVERY_MS = 500;

/** Tells those that listen, as often as it is worth hearing. */
export function createLead(nowMs: () => number) {
  const listeners = new Set<(told: Told) => void>();
  let last: { readonly told: Told; readonly atMs: number } | null = null;

  return {
    listen(listener: (told: Told) => void, now: Told | null): () => void {
      listeners.add(listener);
      if (now !== null) listener(now);
      return () => listeners.delete(listener);
    },
    tell(told: Told): void {
      if (listeners.size === 0) return;
      const atMs = nowMs();
      if (last !== null && !isNews(told, last.told) && atMs - last.atMs < LEAD_EVERY_MS) return;
      if (last !== null && told.headS === last.told.headS && !isNews(told, last.told)) return;
      last = { told, atMs };
      for (const listener of [...listeners]) listener(told);
    },
  };
}

function isNews(told: Told, before: Told): boolean {
  return (
    told.log !== before.log ||
    told.mode !== before.mode ||
    told.speed !== before.speed ||
    told.headS < before.headS
  );
}
