import { flag, number, type ParameterTable, type Values } from '../../quantity/index.ts';
import type { AmbientState } from '../air/index.ts';
import { createSaturation, readSaturation, type Saturation } from './saturation.ts';

export const vesselParameters = {
  totalVolumeM3: number('m³', 0.05, 300, 'water and steam space of drum and tubes'),
  waterVolumeM3: number('m³', 0.03, 250, 'water at normal level, steam bubbles apart'),
  surfaceM2: number('m²', 0.05, 200, 'water surface in the drum'),
  metalKg: number('kg', 50, 1e6, 'metal that follows the water temperature'),
  metalHeatJKgK: number('J/kg', 300, 800, 'specific heat of that metal, per kelvin', 500),
  bubbleS: number('s', 0.2, 30, 'time steam bubbles stay below the surface', 4),
  accumulatorM3: number('m³', 0, 500, 'water of a steam accumulator on the header', 0),
  heatLagS: number('s', 0.1, 200, 'lag of tube metal between gas and water', 8),
  heatLossW: number('W', 0, 1e6, 'heat lost by shell and header at normal pressure', 20000),
  normalPressurePa: number('Pa', 2e4, 2e6, 'gauge pressure for which steam flow is stated'),
  steamKgS: number('kg/s', 0.005, 60, 'steam the load takes wide open at normal pressure'),
  feedTemperatureC: number('°C', 5, 200, 'feed water temperature', 105),
  feedKgS: number('kg/s', 0.005, 100, 'feed with the valve wide open'),
  feedBandM: number('m', 0.02, 2, 'level range over which the feed valve goes from open to shut'),
  feedForward: number('1', 0, 1, 'share of the feed set by steam flow, not by level alone', 0),
  feedValveS: number('s', 0.1, 120, 'lag of the feed valve', 5),
  feedPumpRuns: flag('the feed pump is running', true),
  feedValveStuck: flag('the feed valve stays where it is', false),
  safetyValvePa: number('Pa', 3e4, 2.1e6, 'gauge pressure at which the safety valve opens'),
  safetyValveKgS: number('kg/s', 0.005, 100, 'steam it passes when open'),
} as const satisfies ParameterTable;
export type VesselParameters = Values<typeof vesselParameters>;

/** A drum of boiling water. */
export interface VesselState {
  parameters: VesselParameters;
  ambient: AmbientState;

  gaugePa: number;
  /** Water surface above normal. */
  levelM: number;
  waterTemperatureK: number;
  /** To the load. */
  steamKgS: number;
  feedKgS: number;
  feedOpening: number;
  safetyValveOpen: boolean;
  /** Heat into the water after the lag of the metal. */
  heatW: number;

  waterM3: number;
  bubbleM3: number;
  saturation: Saturation;
  normalRoot: number;
  lossWK: number;
  feedEnthalpy: number;
  normalBubbleM3: number;
  gatheredHeatJ: number;
  gatheredS: number;
  count: number;
}

/** The drum moves every tenth step, on the mean heat of the ten. */
const STEPS_TOGETHER = 10;
const RESEAT_SHARE = 0.95;
const FEED_HEAT_JKGK = 4190;
const COLD_WATER_JKGK = 4190;
const COLD_WATER_DENSITY = 985;
const LEAST_WATER_SHARE = 0.02;
const MOST_WATER_SHARE = 0.98;

export function createVessel(parameters: VesselParameters, ambient: AmbientState): VesselState {
  const state: VesselState = {
    parameters,
    ambient,
    gaugePa: 0,
    levelM: 0,
    waterTemperatureK: ambient.temperatureK,
    steamKgS: 0,
    feedKgS: 0,
    feedOpening: 0,
    safetyValveOpen: false,
    heatW: 0,
    waterM3: parameters.waterVolumeM3,
    bubbleM3: 0,
    saturation: createSaturation(),
    normalRoot: 1,
    lossWK: 0,
    feedEnthalpy: 0,
    normalBubbleM3: 0,
    gatheredHeatJ: 0,
    gatheredS: 0,
    count: 0,
  };
  prepareVessel(state);
  return state;
}

/** Derived constants, after a change of a parameter or of the ambient air. */
export function prepareVessel(state: VesselState): void {
  const p = state.parameters;
  const normal = createSaturation();
  readSaturation(normal, p.normalPressurePa + state.ambient.pressurePa);
  state.normalRoot = Math.sqrt(p.normalPressurePa * normal.steamDensity);
  state.lossWK = p.heatLossW / (normal.temperatureK - state.ambient.temperatureK);
  state.feedEnthalpy = FEED_HEAT_JKGK * p.feedTemperatureC;
  // Normal level is that of half load: bubbles of half the steam are part of it.
  state.normalBubbleM3 = (0.5 * p.steamKgS * p.bubbleS) / normal.steamDensity;
}

/** Puts the drum at rest at a pressure and a level, without fire; 0 Pa is water at 100 °C. */
export function settleVessel(state: VesselState, gaugePa: number, levelM: number): void {
  const { parameters: p, ambient } = state;
  state.gaugePa = gaugePa;
  readSaturation(state.saturation, gaugePa + ambient.pressurePa);
  state.waterTemperatureK = state.saturation.temperatureK;
  state.bubbleM3 = 0;
  state.waterM3 = p.waterVolumeM3 + state.normalBubbleM3 + levelM * p.surfaceM2;
  state.levelM = levelM;
  state.heatW = 0;
  state.steamKgS = 0;
  state.feedOpening = feedDemand(state);
  state.gatheredHeatJ = 0;
  state.gatheredS = 0;
  state.count = 0;
}

/** Lets the water of a drum without pressure be colder than boiling. */
export function chillVessel(state: VesselState, waterTemperatureK: number): void {
  settleVessel(state, 0, state.levelM);
  state.waterTemperatureK = Math.min(waterTemperatureK, state.saturation.temperatureK);
}

/**
 * Pressure, level and steam.
 *
 * Equation: with h* = (ρ_w h_w − ρ_s h_s)/(ρ_w − ρ_s) and C the stored energy per pascal,
 *   dp/dt = [Q − q_f (h* − h_f) − q_s (h_s − h*)] / C,
 *   dV_w/dt = (q_f − q_s − e₁₂ dp/dt) / (ρ_w − ρ_s),
 *   bubbles dV_b/dt = (q_e − ρ_s V_b/T_b − V_b ρ_s' dp/dt) / ρ_s with the steam q_e that boils off
 *   below the surface, level from V_w + V_b. Steam to the load q_s = load · q_rated ·
 *   √(p·ρ_s) / √(p·ρ_s)_normal. Feed valve proportional to level, and to steam
 *   flow so far as feedForward says, with a lag. An accumulator
 *   takes and gives steam by its own stored energy.
 * Valid for: 0 to 20 bar gauge; level within the drum.
 * Left out: downcomer circulation, steam superheat, blow-down, carry-over, air in a cold drum.
 * Source: global balances of K. J. Åström and R. D. Bell, Automatica 36 (2000) 363, with bubble
 *   hold-up in place of their riser distribution.
 *
 * @param heatW from the gas to the tubes; negative when cold air cools them
 * @param load opening of the load, 0 to 1
 */
export function stepVessel(state: VesselState, heatW: number, load: number, stepS: number): void {
  state.gatheredHeatJ += heatW * stepS;
  state.gatheredS += stepS;
  state.count += 1;
  if (state.count < STEPS_TOGETHER) return;
  const meanHeatW = state.gatheredHeatJ / state.gatheredS;
  const spanS = state.gatheredS;
  state.gatheredHeatJ = 0;
  state.gatheredS = 0;
  state.count = 0;
  stepDrum(state, meanHeatW, load, spanS);
}

/** The same for a caller that has gathered the heat of several steps by itself. */
export function stepDrum(state: VesselState, meanHeatW: number, load: number, spanS: number): void {
  const { parameters: p, saturation: s, ambient } = state;
  state.heatW += ((meanHeatW - state.heatW) * spanS) / (p.heatLagS + spanS);
  readSaturation(s, state.gaugePa + ambient.pressurePa);

  if (!p.feedValveStuck) {
    const demand = feedDemand(state);
    state.feedOpening += ((demand - state.feedOpening) * spanS) / (p.feedValveS + spanS);
  }
  state.feedKgS = p.feedPumpRuns ? state.feedOpening * p.feedKgS : 0;
  const heat = state.heatW - state.lossWK * (state.waterTemperatureK - ambient.temperatureK);

  if (state.waterTemperatureK < s.temperatureK && state.gaugePa <= 0) {
    warmWater(state, heat, spanS);
  } else {
    boil(state, heat, load, spanS);
  }
  const surface = state.waterM3 + state.bubbleM3 - p.waterVolumeM3 - state.normalBubbleM3;
  state.levelM = surface / p.surfaceM2;
}

function warmWater(state: VesselState, heatW: number, spanS: number): void {
  const { parameters: p, saturation: s } = state;
  const mass = state.waterM3 * COLD_WATER_DENSITY;
  const store = mass * COLD_WATER_JKGK + p.metalKg * p.metalHeatJKgK;
  const feedHeat =
    state.feedKgS * (state.feedEnthalpy - COLD_WATER_JKGK * (state.waterTemperatureK - 273.15));
  const warmed = state.waterTemperatureK + ((heatW + feedHeat) * spanS) / store;
  state.waterTemperatureK = Math.min(warmed, s.temperatureK);
  state.waterM3 = heldWater(p, state.waterM3 + (state.feedKgS * spanS) / COLD_WATER_DENSITY);
  state.steamKgS = 0;
  state.bubbleM3 = 0;
}

function boil(state: VesselState, heatW: number, load: number, spanS: number): void {
  const { parameters: p, saturation: s } = state;
  const pressure = Math.max(state.gaugePa, 0);
  state.steamKgS = (load * p.steamKgS * Math.sqrt(pressure * s.steamDensity)) / state.normalRoot;
  if (pressure > p.safetyValvePa) state.safetyValveOpen = true;
  else if (pressure < RESEAT_SHARE * p.safetyValvePa) state.safetyValveOpen = false;
  const taken = state.steamKgS + (state.safetyValveOpen ? p.safetyValveKgS : 0);
  const feed = state.feedKgS;

  const water = state.waterM3;
  const steamSpace = p.totalVolumeM3 - water;
  const apart = s.waterDensity - s.steamDensity;
  const latent = s.steamEnthalpy - s.waterEnthalpy;
  const shared = (s.waterDensity * s.waterEnthalpy - s.steamDensity * s.steamEnthalpy) / apart;
  const e12 = water * s.waterDensitySlope + steamSpace * s.steamDensitySlope;
  const metal = p.metalKg * p.metalHeatJKgK * s.temperatureSlope;
  const waterHeat = s.waterDensity * s.waterEnthalpySlope;
  const steamHeat = s.steamDensity * s.steamEnthalpySlope;
  const e22 =
    water * (s.waterEnthalpy * s.waterDensitySlope + waterHeat) +
    steamSpace * (s.steamEnthalpy * s.steamDensitySlope + steamHeat) -
    p.totalVolumeM3 +
    metal;
  // The accumulator condenses this much steam for a pascal of rise.
  const accumulated = (p.accumulatorM3 * (waterHeat - 1)) / latent;
  const store = e22 - shared * e12 + accumulated * (s.steamEnthalpy - shared);
  const net = heatW - feed * (shared - state.feedEnthalpy) - taken * (s.steamEnthalpy - shared);
  const rate = net / store;

  const bubble = state.bubbleM3;
  const leaving = taken + accumulated * rate;
  const inWater = water * waterHeat + bubble * steamHeat - (water + bubble) + metal;
  const boiled = (heatW - (s.waterEnthalpy - state.feedEnthalpy) * feed - inWater * rate) / latent;
  const swollen =
    (s.steamDensity * bubble + spanS * (boiled - bubble * s.steamDensitySlope * rate)) /
    (s.steamDensity * (1 + spanS / p.bubbleS));
  state.bubbleM3 = Math.max(swollen, 0);
  state.waterM3 = heldWater(p, water + (spanS * (feed - leaving - e12 * rate)) / apart);
  const next = state.gaugePa + rate * spanS;
  state.gaugePa = Math.max(next, 0);
  if (next < 0) state.waterTemperatureK = s.temperatureK + next * s.temperatureSlope;
  else state.waterTemperatureK = s.temperatureK + rate * spanS * s.temperatureSlope;
}

function feedDemand(state: VesselState): number {
  const p = state.parameters;
  const ahead = p.feedForward * (state.steamKgS / p.feedKgS - 0.5);
  return Math.max(0, Math.min(0.5 + ahead - state.levelM / p.feedBandM, 1));
}

function heldWater(p: VesselParameters, waterM3: number): number {
  const least = LEAST_WATER_SHARE * p.totalVolumeM3;
  const most = MOST_WATER_SHARE * p.totalVolumeM3;
  return waterM3 < least ? least : Math.min(waterM3, most);
}
