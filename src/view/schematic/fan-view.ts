/** How the fan looks at a shaft speed. */
export interface FanLook {
  /** Turn of the wheel for the eye, rad/s. */
  readonly turnRadS: number;
  /** 0 blades seen one by one, 1 a disc. */
  readonly blur: number;
}

/** A real wheel at speed is a blur; the drawn one is slowed so that it can be seen to turn. */
const SEEN_TURNS_AT_FULL = 1.4;
const FULL_RPM = 1800;
const BLUR_STEPS = 8;

export function fanLook(speedRpm: number): FanLook {
  const share = speedRpm / FULL_RPM;
  return {
    turnRadS: share * SEEN_TURNS_AT_FULL * 2 * Math.PI,
    blur: Math.round(Math.min(1, Math.max(0, share)) * BLUR_STEPS) / BLUR_STEPS,
  };
}
