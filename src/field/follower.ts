/** Something that follows what is asked of it only after the asking has stood for a while. */
export interface Follower {
  made: boolean;
  /** How long the present asking for a change has stood. */
  pendingS: number;
}

/** Far below a step, far above the rounding of a sum of steps. */
const ROUNDING_S = 1e-9;

export function createFollower(made: boolean): Follower {
  return { made, pendingS: 0 };
}

/** With no delay it follows in the same step; an asking withdrawn before its delay leaves no trace. */
export function follow(
  follower: Follower,
  wanted: boolean,
  delayS: number,
  stepS: number,
): boolean {
  if (wanted === follower.made) {
    follower.pendingS = 0;
    return wanted;
  }
  follower.pendingS += stepS;
  if (follower.pendingS >= delayS - ROUNDING_S) {
    follower.made = wanted;
    follower.pendingS = 0;
  }
  return follower.made;
}
