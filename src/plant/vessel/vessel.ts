import type { AmbientState } from '../air/index.ts';
import { liquidWater, readSaturation, saturationTemperature } from '../steam/index.ts';
import { prepareFeedWater } from './feed-water.ts';
import { settleFireTube, showFireTube, stepFireTube } from './fire-tube.ts';
import { prepareHotWater, settleHotWater, stepHotWater } from './hot-water.ts';
import type { SteamParameters, VesselParameters } from './vessel-parameters.ts';
import { createVesselState, type VesselFeed, type VesselState } from './vessel-state.ts';
import { settleWaterTube, showWaterTube, stepWaterTube } from './water-tube.ts';

const ZERO_C = 273.15;
const GLASS_S = 1;

/** How a vessel stands before a run. */
export interface VesselStart {
  /** Steam kinds; the pressure of a heating system follows from its filling. */
  readonly gaugePa: number;
  readonly levelM: number;
  /** null: boiling at that pressure, or a heating system at its rated temperature. */
  readonly waterTemperatureK: number | null;
}

/** @param parameters kept, not copied: after a change in place call `prepareVessel` */
export function createVessel(parameters: VesselParameters, ambient: AmbientState): VesselState {
  const state = createVesselState(parameters, ambient);
  prepareVessel(state);
  settleVessel(state, { gaugePa: 0, levelM: 0, waterTemperatureK: ambient.temperatureK });
  return state;
}

/** Derived constants, after a change of a parameter or of the ambient air; what is held stays. */
export function prepareVessel(state: VesselState): void {
  const { parameters: p } = state;
  if (p.kind === 'hot water') prepareHotWater(state, p);
  else prepareSteam(state, p);
}

/** At rest without fire; every sum of the balance begins again. */
export function settleVessel(state: VesselState, start: VesselStart): void {
  const { parameters: p, ambient } = state;
  const { gaugePa, levelM, waterTemperatureK } = start;
  state.safetyValveOpen = false;
  state.safetyValveKgS = 0;
  state.steamKgS = 0;
  state.heatDeliveredW = 0;
  state.feedKgS = 0;
  state.feedOpening = 0;
  state.circulationKgS = 0;
  state.heatW = 0;
  state.surfaceHeatJ = 0;
  state.massInKg = 0;
  state.massOutKg = 0;
  state.energyInJ = 0;
  state.energyOutJ = 0;
  if (p.kind === 'hot water') {
    settleHotWater(state, p, waterTemperatureK ?? p.ratedFlowC + ZERO_C);
    return;
  }
  const boilingK = saturationTemperature(gaugePa + ambient.pressurePa);
  const kelvin = Math.min(waterTemperatureK ?? boilingK, boilingK);
  if (p.kind === 'water-tube') settleWaterTube(state, p, kelvin, levelM);
  else settleFireTube(state, p, kelvin, levelM);
  state.gaugeGlassM = state.levelM;
}

/** What follows from the states of a steam vessel, after these were set from outside. */
export function showVessel(state: VesselState): void {
  const { parameters: p } = state;
  if (p.kind === 'water-tube') showWaterTube(state, p);
  else if (p.kind === 'fire-tube') showFireTube(state, p);
}

/** One step of a vessel, a tenth of a second or so. */
export function stepVessel(state: VesselState, feed: VesselFeed, spanS: number): void {
  const { parameters: p } = state;
  if (p.kind === 'hot water') {
    stepHotWater(state, p, feed, spanS);
    return;
  }
  if (p.kind === 'water-tube') stepWaterTube(state, p, feed, spanS);
  else stepFireTube(state, p, feed, spanS);
  if (!p.gaugeGlassCockShut) {
    state.gaugeGlassM += ((state.levelM - state.gaugeGlassM) * spanS) / (GLASS_S + spanS);
  }
}

function prepareSteam(state: VesselState, p: SteamParameters): void {
  const { prepared, ambient, middle: s } = state;
  const metalKg =
    p.kind === 'water-tube' ? p.riserMetalKg + p.drumMetalKg + p.otherMetalKg : p.metalKg;
  prepared.metalJK = metalKg * p.metalHeatJKgK;
  prepared.volumeM3 =
    p.kind === 'water-tube'
      ? p.drumVolumeM3 + p.riserVolumeM3 + p.downcomerVolumeM3
      : p.shellVolumeM3;
  prepared.boilingK = saturationTemperature(ambient.pressurePa);
  readSaturation(s, prepared.boilingK);
  prepared.boilingEnergyJKg = s.waterEnthalpy - s.pressurePa / s.waterDensity;
  const normalPa = p.normalPressurePa + ambient.pressurePa;
  readSaturation(s, saturationTemperature(normalPa));
  prepared.loadFactor = p.steamKgS / Math.sqrt(p.normalPressurePa * s.steamDensity);
  prepared.leakFactor = p.waterLossKgS / Math.sqrt(p.normalPressurePa * s.waterDensity);
  prepared.lossWK = p.heatLossW / (s.temperatureK - ambient.temperatureK);
  prepared.feedEnthalpyJKg = liquidWater(p.feedTemperatureC + ZERO_C, normalPa).enthalpyJKg;
  prepareFeedWater(state, p);
}
