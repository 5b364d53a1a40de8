/** How the damper looks: blade by its own angle, servo arm by the angle it feeds back. */
export interface DamperLook {
  /** Turn of the blade from along the duct, rad. */
  readonly bladeRad: number;
  readonly armRad: number;
}

const RAD_PER_DEG = Math.PI / 180;
const SHUT_DEG = 0;
const OPEN_DEG = 90;
/** Angles are drawn in steps no eye tells apart. */
const STEP_DEG = 0.25;

/** 0° lies across the duct (shut), 90° along it (open). */
export function damperLook(bladeDeg: number, feedbackDeg: number): DamperLook {
  return { bladeRad: turned(bladeDeg), armRad: turned(feedbackDeg) };
}

function turned(deg: number): number {
  const bounded = Math.min(OPEN_DEG, Math.max(SHUT_DEG, deg));
  return (Math.round(bounded / STEP_DEG) * STEP_DEG - OPEN_DEG) * RAD_PER_DEG;
}
