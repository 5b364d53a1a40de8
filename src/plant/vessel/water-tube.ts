import { readSaturation, type Saturation } from '../steam/index.ts';
import { fillBoiling, solveBoiling } from './boiling-balance.ts';
import { stepFeedWater } from './feed-water.ts';
import { passHeat } from './heating-surface.ts';
import { stepOutlets, wetShare } from './outlets.ts';
import { type RiserSteam, type RiserStores, readRiserSteam, riserStores } from './riser.ts';
import type { WaterTubeParameters } from './vessel-parameters.ts';
import type { VesselFeed, VesselState } from './vessel-state.ts';

const GRAVITY = 9.80665;
/** Water in the heated tubes boils from this far below the boiling point of the whole. */
const BOILS_FROM_K = 4;
const MOST_QUALITY = 0.95;
/** Downcomers draw steam, and circulation fails, below this share of the drum. */
const DRAWS_BELOW = 0.03;

const steam: RiserSteam = { share: 0, byQuality: 0, byKelvin: 0, exponent: 1 };
const stores: RiserStores = { byKelvin: 0, byQuality: 0 };

/**
 * A drum with downcomers and heated risers.
 *
 * Four states: mass and energy of all water, steam and metal (so pressure and the volume of water),
 * the mass share of steam at the end of the risers α, and the steam below the surface of the
 * drum V_sd.
 *
 * Equation: pressure and water by `solveBoiling`; risers by `riserStores`; circulation by buoyancy
 *   against friction, ½ k q_dc² = ρ_w A_dc (ρ_w − ρ_s) g ᾱ V_r; the drum
 *   d(ρ_s V_sd)/dt = α q_r − q_sd − q_cd, with steam through the surface
 *   q_sd = ρ_s (V_sd − V⁰_sd)/T_d + α q_dc + α β (q_dc − q_r) and steam condensed by the feed and by
 *   rising pressure q_cd = [(h_w − h_f) q_f + (ρ_s V_sd h_s' + ρ_w V_wd h_w' − (V_sd + V_wd) p' +
 *   m_d C) dT/dt]/h_c. Level from V_wd + V_sd, V_wd = V_w − V_dc − (1 − ᾱ) V_r.
 * Numerics: α and V_sd by one linearly implicit midpoint step each, second order; the change of the
 *   risers' mass is taken as the difference of the two moments, so none is made or lost.
 * Valid for: 0 to 160 bar. Adapted to what the source does not treat: V⁰_sd, a constant there, falls
 *   away with the steam out of the risers below `bubbleSteamKgS`, so that a drum without fire holds
 *   no bubbles; tubes make no steam while the water is colder than boiling; circulation fails when
 *   the drum is nearly empty, and dry tubes take no heat.
 * Left out: slip, delay along the tubes, colder water in the downcomers, superheater.
 * Source: K. J. Åström and R. D. Bell, Drum-boiler dynamics, Automatica 36 (2000) 363.
 */
export function stepWaterTube(
  state: VesselState,
  p: WaterTubeParameters,
  feed: VesselFeed,
  spanS: number,
): void {
  const { saturation: s, middle: m, prepared } = state;
  const kelvinBefore = s.temperatureK;
  const qualityBefore = state.riserQuality;
  const riserKgBefore = state.riserKg;
  const drumWaterBefore = drumWater(state, p);

  stepFeedWater(state, p, feed, spanS);
  const heatW = passHeat(state, feed.heatW, wetShare(state), spanS);
  stepOutlets(state, p, feed.load, spanS);
  state.energyJ += heatW * spanS;
  solveBoiling(state);

  const kelvinRate = (s.temperatureK - kelvinBefore) / spanS;
  readSaturation(m, 0.5 * (kelvinBefore + s.temperatureK));
  const latent = m.steamEnthalpy - m.waterEnthalpy;
  readRiserSteam(steam, m, qualityBefore);
  riserStores(stores, steam, m, qualityBefore, p.riserVolumeM3, p.riserMetalKg * p.metalHeatJKgK);
  const draws = drawShare(p, drumWaterBefore);
  const circulation = draws * circulationOf(p, m, steam.share);
  const boilingW = heatW * boilingShare(m.temperatureK, prepared.boilingK);
  const excess = boilingW - stores.byKelvin * kelvinRate - qualityBefore * latent * circulation;
  const rate = excess / stores.byQuality;
  const fades = (latent * circulation * (1 + 0.5 * steam.exponent)) / stores.byQuality;
  const quality = qualityBefore + (spanS * rate) / (1 + 0.5 * spanS * fades);
  state.riserQuality = quality > MOST_QUALITY ? MOST_QUALITY : Math.max(quality, 0);

  showRiser(state, p);
  const surge = (state.riserKg - riserKgBefore) / spanS;
  const drumWaterNow = drumWater(state, p);
  const drumWaterMean = 0.5 * (drumWaterBefore + drumWaterNow);
  const qualityMean = 0.5 * (qualityBefore + state.riserQuality);

  const flows =
    (m.steamDensity * steamHeld(p, qualityMean * circulation)) / p.bubbleS -
    qualityMean * (1 + p.bubbleMomentum) * surge -
    ((m.waterEnthalpy - prepared.feedEnthalpyJKg) * state.feedKgS +
      ((m.waterDensity * m.waterEnthalpySlope - m.pressureSlope) * drumWaterMean +
        p.drumMetalKg * p.metalHeatJKgK) *
        kelvinRate) /
      latent;
  const perBubble =
    m.steamDensity / p.bubbleS +
    kelvinRate *
      (m.steamDensitySlope + (m.steamDensity * m.steamEnthalpySlope - m.pressureSlope) / latent);
  const bubble =
    state.bubbleM3 +
    (spanS * (flows - perBubble * state.bubbleM3)) / (m.steamDensity + 0.5 * spanS * perBubble);
  const room = p.drumVolumeM3 - drumWaterNow;
  state.bubbleM3 = bubble > room ? room : Math.max(bubble, 0);

  showDrum(state, p, drumWaterNow);
}

/** At rest without fire: no steam but above the surface. */
export function settleWaterTube(
  state: VesselState,
  p: WaterTubeParameters,
  kelvin: number,
  levelM: number,
): void {
  const drum = p.drumNormalM3 + levelM * p.drumSurfaceM2;
  fillBoiling(state, kelvin, drum + p.downcomerVolumeM3 + p.riserVolumeM3);
  state.riserQuality = 0;
  state.bubbleM3 = 0;
  showWaterTube(state, p);
}

/** Whatever follows from the four states, after these were set from outside. */
export function showWaterTube(state: VesselState, p: WaterTubeParameters): void {
  showRiser(state, p);
  showDrum(state, p, drumWater(state, p));
}

function showRiser(state: VesselState, p: WaterTubeParameters): void {
  const s = state.saturation;
  readRiserSteam(steam, s, state.riserQuality);
  state.riserShare = steam.share;
  state.riserKg =
    p.riserVolumeM3 * (s.waterDensity - steam.share * (s.waterDensity - s.steamDensity));
}

function showDrum(state: VesselState, p: WaterTubeParameters, drumWaterM3: number): void {
  state.circulationKgS =
    drawShare(p, drumWaterM3) * circulationOf(p, state.saturation, state.riserShare);
  state.levelM = (drumWaterM3 + state.bubbleM3 - p.drumNormalM3) / p.drumSurfaceM2;
}

function circulationOf(p: WaterTubeParameters, s: Saturation, share: number): number {
  const lift = s.waterDensity * (s.waterDensity - s.steamDensity) * GRAVITY;
  return Math.sqrt(
    (2 * p.downcomerAreaM2 * lift * share * p.riserVolumeM3) / p.circulationFriction,
  );
}

/** Water of the drum; none when what is left does not fill the tubes. */
function drumWater(state: VesselState, p: WaterTubeParameters): number {
  const water = state.waterM3 - p.downcomerVolumeM3 - (1 - state.riserShare) * p.riserVolumeM3;
  return Math.max(water, 0);
}

function drawShare(p: WaterTubeParameters, drumWaterM3: number): number {
  const share = drumWaterM3 / (DRAWS_BELOW * p.drumVolumeM3);
  return Math.min(share, 1);
}

/** V⁰_sd, level at its full value so that it joins it without a kink. */
function steamHeld(p: WaterTubeParameters, riserSteamKgS: number): number {
  const share = riserSteamKgS / p.bubbleSteamKgS;
  return share < 1 ? p.bubbleM3 * share * (2 - share) : p.bubbleM3;
}

function boilingShare(kelvin: number, boilingK: number): number {
  const share = 1 + (kelvin - boilingK) / BOILS_FROM_K;
  return share >= 1 ? 1 : share > 0 ? share * share * (3 - 2 * share) : 0;
}
