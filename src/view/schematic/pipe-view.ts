import type { Medium } from './layout-types.ts';

/** How a pipe looks: how full of its colour it is, and how its marks move. */
export interface PipeLook {
  /** 0 empty (grey) to FILL_STEPS (its medium's colour). */
  readonly fillStep: number;
  /** Along the points, px/s at drawing size; negative against them. */
  readonly markSpeedPxS: number;
  readonly markAlpha: number;
}

export const FILL_STEPS = 16;
/**
 * Half colour at this gauge pressure, so that a filling interspace is seen to fill; the few
 * millibars that purge air makes behind a shut valve leave a pipe without gas grey.
 */
const HALF_FULL_PA = 1200;
const FULL_SPEED_PX_S = 90;
const FASTEST_PX_S = 150;
/** Below this share of a pipe's full flow nothing is seen to move. */
const STILL_SHARE = 0.002;
/** Small flows are seen to move too: speed goes with this power of the flow. */
const SPEED_POWER = 0.6;
const MARKS_SHOWN_PX_S = 6;

/** Flow that moves the marks at full speed, kg/s: a plant of a few megawatts. */
const FULL_FLOW: Readonly<Record<Medium, number>> = {
  gas: 0.12,
  air: 2.4,
  flue: 2.4,
  steam: 2.2,
  water: 72,
};
const FULL_BRANCH_FLOW = 0.006;

/** @param pressurePa NaN for a pipe without a reading: its flow then fills it */
export function pipeLook(
  medium: Medium,
  isBranch: boolean,
  flowKgS: number,
  pressurePa: number,
): PipeLook {
  const full = isBranch ? FULL_BRANCH_FLOW : FULL_FLOW[medium];
  const share = Math.abs(flowKgS) / full;
  const speed =
    share < STILL_SHARE ? 0 : Math.min(FASTEST_PX_S, FULL_SPEED_PX_S * share ** SPEED_POWER);
  return {
    fillStep: Math.round(fullness(medium, share, pressurePa) * FILL_STEPS),
    markSpeedPxS: flowKgS < 0 ? -speed : speed,
    markAlpha: Math.min(1, Math.round((speed / MARKS_SHOWN_PX_S) * 8) / 8),
  };
}

function fullness(medium: Medium, flowShare: number, pressurePa: number): number {
  if (medium === 'water' || medium === 'steam') return 1;
  if (medium === 'gas' && !Number.isNaN(pressurePa)) {
    const p = Math.max(0, pressurePa / HALF_FULL_PA);
    return Math.max((p * p) / (p * p + 1), fullnessByFlow(flowShare));
  }
  return fullnessByFlow(flowShare);
}

function fullnessByFlow(share: number): number {
  return share / (share + 0.04);
}
