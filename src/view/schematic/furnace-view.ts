/** Inside of the furnace: how warm its walls look, and how much unburnt gas is marked. */
/** Water about the furnace is drawn thicker than a lining, so that its colour is seen. */
export const WET_WALL_PX = 13;
const COLD_K = 400;
const HOT_K = 1500;
const GLOW_STEPS = 24;

/** 0 cold … 1 hot, in steps. */
export function wallGlow(temperatureK: number): number {
  const share = (temperatureK - COLD_K) / (HOT_K - COLD_K);
  return Math.round(Math.min(1, Math.max(0, share)) * GLOW_STEPS) / GLOW_STEPS;
}

/** Strength of the dots that stand for unburnt gas; full at the lower flammability limit. */
export function gasDots(combustible: number): number {
  if (combustible < 0.005) return 0;
  return Math.round(Math.min(1, 0.15 + combustible * 0.85) * 20) / 20;
}

/** Haze over the stack: by how much flue gas leaves, and how much warmer than air it is. */
export function stackHaze(flowKgS: number, flueK: number): number {
  const flow = Math.min(1, Math.max(0, flowKgS) / 0.8);
  const warm = Math.min(1, Math.max(0, flueK - 310) / 120);
  return Math.round(flow * (0.15 + 0.85 * warm) * 20) / 20;
}
