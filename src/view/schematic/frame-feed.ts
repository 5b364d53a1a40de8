import {
  blendInto,
  type FrameView,
  isContinuous,
  moveTime,
  wholeNumberPlaces,
} from './frame-view.ts';
import type { LabelTurns } from './label-turns.ts';
import type { Drawn } from './scene.ts';
import { createTimingRing, type TimingRing } from './timing-ring.ts';

/** Brings the frames of the run to what moves and to the labels. */
export interface FrameFeed {
  /** The moment `blend` (0…1) of the way from one frame to the next; see `Schematic`. */
  show(previous: Float64Array, next: Float64Array, blend: number, nowMs: number): void;
  readonly timing: TimingRing;
  stop(): void;
}

interface Fed {
  readonly view: FrameView;
  readonly moving: () => readonly Drawn[];
  readonly turns: LabelTurns;
  readonly draw: () => void;
}

/** A picture that is not followed by another within this time is completed. */
const SETTLE_MS = 90;

export function createFrameFeed(
  channelIds: readonly string[],
  { view, moving, turns, draw }: Fed,
): FrameFeed {
  const whole = wholeNumberPlaces(channelIds);
  const timing = createTimingRing();
  let lastMs: number | null = null;
  let lastShownAt = 0;
  let settleTimer: ReturnType<typeof setTimeout> | undefined;

  function settle(): void {
    settleTimer = undefined;
    const waited = performance.now() - lastShownAt;
    if (waited < SETTLE_MS) {
      settleTimer = setTimeout(settle, SETTLE_MS - waited);
      return;
    }
    turns.all(view.values);
    draw();
  }

  return {
    timing,
    show(previous, next, blend, nowMs) {
      const start = performance.now();
      blendInto(view.values, previous, next, blend, whole);
      view.dtS = moveTime(lastMs, nowMs);
      view.clockS += view.dtS;
      for (const piece of moving()) piece.show?.(view);
      if (isContinuous(lastMs, nowMs)) turns.next(view.values);
      else turns.all(view.values);
      lastMs = nowMs;
      draw();
      lastShownAt = performance.now();
      settleTimer ??= setTimeout(settle, SETTLE_MS);
      timing.add(lastShownAt - start);
    },
    stop: () => clearTimeout(settleTimer),
  };
}
