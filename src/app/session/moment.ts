import { type FrameHistory, frameAt, frameIndexAt } from './frame-history.ts';
import type { Moment } from './session-types.ts';

type Around = Pick<Moment, 'tS' | 'nowMs' | 'running' | 'headS' | 'lookingBack'>;

/** A moment with the two frames around it, and how far it is from one to the other. */
export function momentAt(history: FrameHistory, around: Around): Moment | null {
  const k = frameIndexAt(history, around.tS);
  const previous = frameAt(history, k);
  const next = frameAt(history, k + 1);
  if (previous === null || next === null) return null;
  const blend = Math.max(0, Math.min(1, around.tS / history.frameS - k));
  return { ...around, previous, next, blend };
}
