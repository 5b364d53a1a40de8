/**
 * Turns real time into simulated time without drift: the target is always counted from
 * an anchor, never summed up. A gap (a sleeping tab, a shut laptop) is skipped, not made
 * up for, so a run never races through what nobody watched.
 */
export interface Pace {
  readonly anchorSimS: number;
  readonly anchorMs: number;
  readonly lastMs: number;
  readonly speed: number;
}

/** The longest stretch of real time that one tick may answer for. */
export const MAX_GAP_MS = 250;

export function startPace(simS: number, nowMs: number, speed: number): Pace {
  return { anchorSimS: simS, anchorMs: nowMs, lastMs: nowMs, speed };
}

export function tickPace(pace: Pace, nowMs: number): Pace {
  const gapMs = nowMs - pace.lastMs;
  const skippedMs = Math.max(0, gapMs - MAX_GAP_MS);
  return { ...pace, anchorMs: pace.anchorMs + skippedMs, lastMs: nowMs };
}

export function paceTargetS(pace: Pace): number {
  return pace.anchorSimS + ((pace.lastMs - pace.anchorMs) / 1000) * pace.speed;
}
