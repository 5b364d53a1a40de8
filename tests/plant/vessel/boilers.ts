import { createAmbient } from '../../../src/plant/air/index.ts';
import {
  createVessel,
  settleVessel,
  stepVessel,
  type VesselParameters,
  type VesselState,
} from '../../../src/plant/vessel/index.ts';

const AMBIENT = { altitudeM: 0, temperatureC: 20 };

/** Drum of a 6 MW water-tube boiler with a steam accumulator on its header, at 12 bar. */
export function dairyVessel(change: Partial<VesselParameters> = {}): VesselState {
  const parameters: VesselParameters = {
    totalVolumeM3: 15,
    waterVolumeM3: 10,
    surfaceM2: 7,
    metalKg: 20000,
    metalHeatJKgK: 500,
    bubbleS: 1.5,
    accumulatorM3: 32,
    heatLagS: 8,
    heatLossW: 25000,
    normalPressurePa: 12e5,
    steamKgS: 2.3,
    feedTemperatureC: 105,
    feedKgS: 4,
    feedBandM: 0.2,
    feedForward: 1,
    feedValveS: 5,
    feedPumpRuns: true,
    feedValveStuck: false,
    safetyValvePa: 14e5,
    safetyValveKgS: 2.8,
    ...change,
  };
  const state = createVessel(parameters, createAmbient(AMBIENT));
  settleVessel(state, 12e5, 0);
  return state;
}

/** The shell boiler of the reference table: 5 t/h at 11 bar absolute, feed valve held. */
export function shellBoiler(feedKgS: number): VesselState {
  const state = dairyVessel({
    totalVolumeM3: 11.5,
    waterVolumeM3: 8.7,
    surfaceM2: 7.5,
    metalKg: 10500,
    bubbleS: 3,
    accumulatorM3: 0,
    heatLagS: 0.1,
    heatLossW: 0,
    steamKgS: 5,
    feedTemperatureC: 441011.224 / 4190,
    feedKgS: 5,
    feedValveStuck: true,
    safetyValvePa: 2e6,
  });
  settleVessel(state, 11e5 - state.ambient.pressurePa, 0);
  state.waterM3 = 8.7;
  state.bubbleM3 = 0.739316;
  state.feedOpening = feedKgS / 5;
  return state;
}

export function runVessel(state: VesselState, seconds: number, heatW: number, load: number): void {
  for (let i = 0; i < Math.round(seconds * 100); i++) stepVessel(state, heatW, load, 0.01);
}

/** Runs with the steam flow held, by setting the load for it every 0.1 s. */
export function runWithSteam(
  state: VesselState,
  seconds: number,
  heatW: number,
  steamKgS: number,
): void {
  for (let i = 0; i < Math.round(seconds * 10); i++) {
    const root = Math.sqrt(state.gaugePa * state.saturation.steamDensity);
    const load = (steamKgS * state.normalRoot) / (state.parameters.steamKgS * root);
    runVessel(state, 0.1, heatW, load);
  }
}
