import { createAmbient } from '../../../src/plant/air/index.ts';
import { readSaturation, saturationTemperature } from '../../../src/plant/steam/index.ts';
import {
  createVessel,
  type FireTubeParameters,
  type HotWaterParameters,
  settleVessel,
  showVessel,
  stepVessel,
  type VesselFeed,
  type VesselParameters,
  type VesselState,
  vesselTables,
  type WaterTubeParameters,
} from '../../../src/plant/vessel/index.ts';
import type { ParameterTable } from '../../../src/quantity/index.ts';

const AMBIENT = { altitudeM: 0, temperatureC: 20 };
export const STEP_S = 0.1;

/** Defaults of a table filled in. */
function fill<P extends VesselParameters>(values: { kind: P['kind'] } & Partial<P>): P {
  const table: ParameterTable = vesselTables[values.kind];
  const defaults = Object.entries(table).flatMap(([key, parameter]) =>
    'default' in parameter && parameter.default !== undefined ? [[key, parameter.default]] : [],
  );
  return { ...Object.fromEntries(defaults), ...values } as P;
}

export function vesselOf(parameters: VesselParameters): VesselState {
  return createVessel(parameters, createAmbient(AMBIENT));
}

/** Drum of a 6 MW water-tube boiler with a steam accumulator on its header, at 12 bar. */
export function drumBoiler(change: Partial<WaterTubeParameters> = {}): VesselState {
  const state = vesselOf(
    fill<WaterTubeParameters>({
      kind: 'water-tube',
      drumVolumeM3: 9,
      drumNormalM3: 4.4,
      drumSurfaceM2: 7,
      riserVolumeM3: 0.9,
      downcomerVolumeM3: 5.1,
      riserMetalKg: 11000,
      drumMetalKg: 6000,
      otherMetalKg: 3000,
      downcomerAreaM2: 0.02,
      circulationFriction: 40,
      bubbleS: 2,
      bubbleM3: 0.25,
      bubbleSteamKgS: 0.5,
      heatLossW: 25000,
      normalPressurePa: 12e5,
      steamKgS: 2.3,
      accumulatorM3: 32,
      feedKgS: 4,
      feedShutOffPa: 18e5,
      safetyValvePa: 14e5,
      safetyValveKgS: 2.8,
      ...change,
    }),
  );
  settleVessel(state, { gaugePa: 12e5, levelM: 0, waterTemperatureK: null });
  return state;
}

/** The shell boiler of the reference table: 5 t/h at 11 bar absolute, no losses, no lag. */
export function shellBoiler(change: Partial<FireTubeParameters> = {}): VesselState {
  const state = vesselOf(
    fill<FireTubeParameters>({
      kind: 'fire-tube',
      shellVolumeM3: 11.5,
      shellNormalM3: 8.7,
      surfaceM2: 7.5,
      metalKg: 10500,
      bubbleS: 3,
      flashShare: 1,
      heatLagS: 0,
      heatLossW: 0,
      normalPressurePa: 11e5 - 101325,
      steamKgS: 5,
      feedKgS: 5,
      feedShutOffPa: 18e5,
      feedValveS: 0,
      safetyValvePa: 14e6,
      safetyValveKgS: 2,
      ...change,
    }),
  );
  settleVessel(state, { gaugePa: 11e5 - 101325, levelM: 0, waterTemperatureK: null });
  return state;
}

/** A 400 kW boiler for heating at 82 and 71 °C. */
export function heatingBoiler(change: Partial<HotWaterParameters> = {}): VesselState {
  return vesselOf(
    fill<HotWaterParameters>({
      kind: 'hot water',
      boilerWaterM3: 0.5,
      metalKg: 900,
      systemWaterM3: 3.5,
      ratedHeatW: 400_000,
      heatLossW: 4000,
      expansionVesselM3: 0.6,
      fillGaugePa: 1.2e5,
      safetyValvePa: 3e5,
      safetyValveKgS: 0.5,
      ...change,
    }),
  );
}

export function run(
  state: VesselState,
  seconds: number,
  feed: Partial<VesselFeed>,
  stepS = STEP_S,
): void {
  const each = { heatW: 0, load: 0, feedDemand: 0, pumpFed: true, ...feed };
  for (let i = Math.round(seconds / stepS); i > 0; i--) stepVessel(state, each, stepS);
}

/** Runs with steam and feed flows held, by setting load and demand for them at every step. */
export function runHeld(
  state: VesselState,
  seconds: number,
  heatW: number,
  steamKgS: number,
  feedKgS: number,
  stepS = STEP_S,
): void {
  const p = state.parameters;
  if (p.kind === 'hot water') throw new Error('no steam');
  const feed = { heatW, load: 0, feedDemand: 0, pumpFed: true };
  for (let i = Math.round(seconds / stepS); i > 0; i--) {
    const root = Math.sqrt(state.gaugePa * state.saturation.steamDensity);
    feed.load = steamKgS / (state.prepared.loadFactor * root);
    const { pumpDropFactor, valveDropFactor } = state.prepared;
    const drop = (p.feedShutOffPa - state.gaugePa) / (feedKgS * feedKgS) - pumpDropFactor;
    feed.feedDemand = feedKgS > 0 ? Math.sqrt(valveDropFactor / drop) : 0;
    stepVessel(state, feed, stepS);
  }
}

/** Puts a steam vessel where a reference table begins: pressure and all volumes. */
export function placeAt(
  state: VesselState,
  absolutePa: number,
  waterM3: number,
  bubbleM3: number,
  riserQuality = 0,
): void {
  const s = state.saturation;
  readSaturation(s, saturationTemperature(absolutePa));
  const { metalJK, volumeM3 } = state.prepared;
  const steamM3 = volumeM3 - waterM3;
  state.massKg = s.waterDensity * waterM3 + s.steamDensity * steamM3;
  state.energyJ =
    s.waterDensity * s.waterEnthalpy * waterM3 +
    s.steamDensity * s.steamEnthalpy * steamM3 -
    s.pressurePa * volumeM3 +
    metalJK * (s.temperatureK - 273.16);
  state.waterTemperatureK = s.temperatureK;
  state.gaugePa = absolutePa - state.ambient.pressurePa;
  state.waterM3 = waterM3;
  state.bubbleM3 = bubbleM3;
  state.riserQuality = riserQuality;
  showVessel(state);
}
