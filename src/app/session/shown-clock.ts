/**
 * The moment that is shown. Frames arrive in bursts; what is shown runs smoothly a little
 * behind the newest one, so that there is always a next frame to blend towards.
 */
const FRAME_LAG_S = 0.1;
/** Real seconds of frames kept in hand, against uneven arrival. */
const HAND_S = 0.06;
/** Beyond this many real seconds of lag the shown moment jumps instead of hurrying. */
const JUMP_S = 1.5;

export function advanceShownS(
  shownS: number,
  newestS: number,
  speed: number,
  elapsedS: number,
  running: boolean,
): number {
  if (shownS >= newestS) return newestS;
  const wantedS = running ? newestS - FRAME_LAG_S - HAND_S * speed : newestS;
  const behindS = wantedS - shownS;
  if (behindS > JUMP_S * speed + 1) return wantedS;
  const hurry = running ? Math.min(2, Math.max(0.5, 1 + behindS / speed)) : 2;
  return Math.min(newestS, shownS + elapsedS * speed * hurry);
}
