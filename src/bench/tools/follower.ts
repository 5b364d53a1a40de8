import { exactExp } from '../../numeric/index.ts';
import type { Follower } from './tool-types.ts';

/** A display that has not moved by more than its tolerance for this long stands still, frames. */
export const STILL_FRAMES = 10;

export function createFollower(value = 0): Follower {
  return { value, began: false, least: 0, most: 0, reference: value, stillFrames: 0 };
}

/**
 * What of the distance a first-order lag goes in one frame: 1 − e^(−Δt/τ), exact for an input that
 * is held over the frame.
 */
export function followGain(lagS: number, frameS: number): number {
  return lagS > 0 ? 1 - exactExp(-frameS / lagS) : 1;
}

/** One frame of lag; `tolerance` is how far a display may move and still be called still. */
export function follow(follower: Follower, towards: number, gain: number, tolerance: number): void {
  const value = follower.value + gain * (towards - follower.value);
  follower.value = value;
  follower.least = follower.began ? Math.min(follower.least, value) : value;
  follower.most = follower.began ? Math.max(follower.most, value) : value;
  follower.began = true;
  if (Math.abs(value - follower.reference) > tolerance) {
    follower.reference = value;
    follower.stillFrames = 0;
  } else {
    follower.stillFrames += 1;
  }
}

export function isStill(follower: Follower, frames = STILL_FRAMES): boolean {
  return follower.stillFrames >= frames;
}
