/** How a flame looks: calm and honest, nothing that is not in the readings. */
export interface FlameLook {
  readonly shown: boolean;
  /** Length and girth as shares of the room it has. */
  readonly length: number;
  readonly girth: number;
  /** Distance of the flame's foot from the burner head, share of the room. */
  readonly offset: number;
  readonly bodyAlpha: number;
  /** The blue foot that sits on the head; fades as the flame lifts. */
  readonly footAlpha: number;
}

const SEEN = 0.015;
const SHORTEST = 0.26;
const GROWTH = 0.62;
const LIFT_REACH = 0.22;

/** @param lift 0 seated on the head … 1 blown off it */
export function flameLook(intensity: number, lift: number): FlameLook {
  const strength = Math.min(1, Math.max(0, intensity));
  const lifted = Math.min(1, Math.max(0, lift));
  return {
    shown: strength > SEEN,
    length: SHORTEST + GROWTH * Math.sqrt(strength),
    girth: 0.45 + 0.55 * Math.sqrt(strength),
    offset: lifted * LIFT_REACH,
    bodyAlpha: Math.min(1, 0.35 + 0.75 * strength) * (1 - 0.45 * lifted),
    footAlpha: (1 - lifted) * Math.min(1, strength * 2.5),
  };
}

/**
 * Slow breathing of a flame, within ±1: three incommensurable sines, so that it does not
 * visibly repeat and never flashes (under 3 Hz).
 */
export function sway(clockS: number, phase: number): number {
  return (
    (Math.sin(clockS * 5.1 + phase) +
      Math.sin(clockS * 8.3 + phase * 2.3) * 0.6 +
      Math.sin(clockS * 2.2 + phase * 0.7) * 0.8) /
    2.4
  );
}
