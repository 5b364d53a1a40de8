/** One moment as the drawing sees it, filled anew for every frame. */
export interface FrameView {
  /** Blended readings, in the order of the channels. */
  readonly values: Float64Array;
  /** Time that moving things move on by, s; 0 for a still picture. */
  dtS: number;
  /** Time since the drawing began, s, that sways and swirls follow. */
  clockS: number;
  /** No motion for its own sake: fan, marks, flame and bubbles stand still. */
  still: boolean;
}

/** At twenty-fold playback things still move no faster than the eye can follow. */
const LONGEST_MOVE_S = 0.05;
/** Packed words and indices; between two values of these there is nothing. */
const WHOLE_NUMBERS = /^(logic|wiring)\./;

export function createFrameView(channelIds: readonly string[]): FrameView {
  return { values: new Float64Array(channelIds.length), dtS: 0, clockS: 0, still: false };
}

export function wholeNumberPlaces(channelIds: readonly string[]): Uint8Array {
  return Uint8Array.from(channelIds, (id) => (WHOLE_NUMBERS.test(id) ? 1 : 0));
}

/** Readings between two frames; whole numbers stay as they were until the later frame is reached. */
export function blendInto(
  out: Float64Array,
  previous: Float64Array,
  next: Float64Array,
  blend: number,
  whole: Uint8Array,
): void {
  const count = Math.min(out.length, previous.length, next.length);
  for (let i = 0; i < count; i += 1) {
    const from = previous[i];
    const to = next[i];
    if (blend >= 1) out[i] = to;
    else out[i] = whole[i] === 1 ? from : from + (to - from) * blend;
  }
}

/** How far things move on between two calls: never back, never in a jump. */
export function moveTime(lastMs: number | null, nowMs: number): number {
  if (lastMs === null || nowMs <= lastMs) return 0;
  return Math.min(LONGEST_MOVE_S, (nowMs - lastMs) / 1000);
}

/** Whether a frame goes on from the one before, or is a moment of its own, as after a jump. */
export function isContinuous(lastMs: number | null, nowMs: number): boolean {
  return lastMs !== null && nowMs >= lastMs && nowMs - lastMs < JUMP_MS;
}
const JUMP_MS = 600;
