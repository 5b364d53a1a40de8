import { readSaturation } from '../steam/index.ts';
import { fillBoiling, solveBoiling } from './boiling-balance.ts';
import { stepFeedWater } from './feed-water.ts';
import { passHeat } from './heating-surface.ts';
import { stepOutlets, wetShare } from './outlets.ts';
import type { FireTubeParameters } from './vessel-parameters.ts';
import type { VesselFeed, VesselState } from './vessel-state.ts';

/** Water near the heating surface boils from this far below the boiling point of the whole. */
const BOILS_FROM_K = 4;

/**
 * A shell of boiling water with the fire in tubes through it.
 *
 * Equation: pressure and water by `solveBoiling`; steam below the surface
 *   d(ρ_s V_sd)/dt = q_e − ρ_s V_sd/T_d with the steam that boils off there
 *   q_e = [Q − (h_w − h_f) q_f − (ρ_w V_w h_w' + ρ_s V_sd h_s' − (V_w + V_sd) p' + mC) dT/dt]/h_c.
 *   Of the steam that flashes at a fall of pressure only `flashShare` counts, the rest comes off
 *   at the surface. Level from V_w + V_sd.
 * Numerics: one implicit midpoint step for V_sd, second order.
 * Valid for: 0 to 160 bar; cold water is heated as water, with no bubbles.
 * Left out: circulation, colder water below the feed inlet, carry-over.
 * Source: global balances of K. J. Åström and R. D. Bell, Automatica 36 (2000) 363, with hold-up of
 *   bubbles by residence time in place of their risers.
 */
export function stepFireTube(
  state: VesselState,
  p: FireTubeParameters,
  feed: VesselFeed,
  spanS: number,
): void {
  const { saturation: s, middle: m, prepared } = state;
  const kelvinBefore = s.temperatureK;
  const waterBefore = state.waterM3;

  stepFeedWater(state, p, feed, spanS);
  const heatW = passHeat(state, feed.heatW, wetShare(state), spanS);
  stepOutlets(state, p, feed.load, spanS);
  state.energyJ += heatW * spanS;
  solveBoiling(state);

  const kelvinRate = (s.temperatureK - kelvinBefore) / spanS;
  readSaturation(m, 0.5 * (kelvinBefore + s.temperatureK));
  const latent = m.steamEnthalpy - m.waterEnthalpy;
  const water = 0.5 * (waterBefore + state.waterM3);
  const waterStore = (m.waterDensity * m.waterEnthalpySlope - m.pressureSlope) * water;
  const flashing = kelvinRate < 0 ? kelvinRate * p.flashShare : kelvinRate;
  const boils = 1 + (m.temperatureK - prepared.boilingK) / BOILS_FROM_K;
  const boilingW = boils >= 1 ? heatW : boils > 0 ? heatW * boils * boils * (3 - 2 * boils) : 0;
  const boiled =
    (boilingW -
      (m.waterEnthalpy - prepared.feedEnthalpyJKg) * state.feedKgS -
      (waterStore + prepared.metalJK) * flashing) /
    latent;
  const perBubble =
    m.steamDensity / p.bubbleS +
    kelvinRate * m.steamDensitySlope +
    (flashing * (m.steamDensity * m.steamEnthalpySlope - m.pressureSlope)) / latent;
  const bubble =
    state.bubbleM3 +
    (spanS * (boiled - perBubble * state.bubbleM3)) / (m.steamDensity + 0.5 * spanS * perBubble);
  const room = p.shellVolumeM3 - state.waterM3;
  state.bubbleM3 = bubble > room ? room : Math.max(bubble, 0);
  showFireTube(state, p);
}

export function settleFireTube(
  state: VesselState,
  p: FireTubeParameters,
  kelvin: number,
  levelM: number,
): void {
  fillBoiling(state, kelvin, p.shellNormalM3 + levelM * p.surfaceM2);
  state.bubbleM3 = 0;
  showFireTube(state, p);
}

export function showFireTube(state: VesselState, p: FireTubeParameters): void {
  state.levelM = (state.waterM3 + state.bubbleM3 - p.shellNormalM3) / p.surfaceM2;
}
