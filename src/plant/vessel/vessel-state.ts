import type { AmbientState } from '../air/index.ts';
import { createSaturation, type Saturation } from '../steam/index.ts';
import type { VesselParameters } from './vessel-parameters.ts';

/** What comes to a vessel from outside, for one step of it. */
export interface VesselFeed {
  /** From the gas to the heating surface, mean over the step; negative when cold air cools it. */
  heatW: number;
  /** Share of the rated steam or heat that the load asks for. */
  load: number;
  /** Opening asked of the feed valve, 0 to 1. */
  feedDemand: number;
  /** The motor of the feed pump, or of the circulating pump of a hot-water boiler, gets volts. */
  pumpFed: boolean;
}

/** A vessel of any kind. What a kind does not have stays zero. */
export interface VesselState {
  readonly parameters: VesselParameters;
  readonly ambient: AmbientState;

  gaugePa: number;
  /** Surface of water and bubbles above normal. */
  levelM: number;
  /** What the gauge glass shows. */
  gaugeGlassM: number;
  /** Boiling water, or the water leaving a hot-water boiler. */
  waterTemperatureK: number;
  /** Water coming back to a hot-water boiler, after the shunt. */
  returnTemperatureK: number;
  /** To the load. */
  steamKgS: number;
  /** To the load, above the feed water or the return. */
  heatDeliveredW: number;
  feedKgS: number;
  feedOpening: number;
  /** Down to the risers, or through a hot-water boiler. */
  circulationKgS: number;
  safetyValveOpen: boolean;
  safetyValveKgS: number;
  /** Heat into the water, after the lag of the heating surface. */
  heatW: number;

  /** Conserved: water and steam, and their energy with that of the metal. */
  massKg: number;
  energyJ: number;
  /** Heat on its way through the heating surface. */
  surfaceHeatJ: number;
  /** Sums since the vessel was settled, see `readBalance`. */
  massInKg: number;
  massOutKg: number;
  energyInJ: number;
  energyOutJ: number;

  /** Steam kinds: all water but the accumulator's, steam below the surface, its accumulator. */
  waterM3: number;
  bubbleM3: number;
  accumulatorKg: number;
  /** Water-tube: mass share of steam at the end of the risers, its volume share, the mass they hold. */
  riserQuality: number;
  riserShare: number;
  riserKg: number;
  /** Hot water: water and energy of pipes and emitters. */
  systemKg: number;
  systemEnergyJ: number;

  /** At the water's temperature; and half-way through a step. */
  readonly saturation: Saturation;
  readonly middle: Saturation;
  readonly prepared: PreparedVessel;
}

/** Derived from the parameters by `prepareVessel`. */
export interface PreparedVessel {
  /** Steam and water space. */
  volumeM3: number;
  metalJK: number;
  lossWK: number;
  /** Boiling water at the pressure of the surrounding air. */
  boilingK: number;
  boilingEnergyJKg: number;
  feedEnthalpyJKg: number;
  /** Flow over √(pressure · density) of the load wide open. */
  loadFactor: number;
  /** Flow over √(pressure · density) of a leak of water. */
  leakFactor: number;
  pumpDropFactor: number;
  valveDropFactor: number;
  /** Hot water: rated circulation, heat for a kelvin above the rooms, filling. */
  circulationKgS: number;
  emitterWK: number;
  roomK: number;
  boilerKg: number;
  fillVolumeM3: number;
}

export function createVesselState(
  parameters: VesselParameters,
  ambient: AmbientState,
): VesselState {
  return {
    parameters,
    ambient,
    gaugePa: 0,
    levelM: 0,
    gaugeGlassM: 0,
    waterTemperatureK: ambient.temperatureK,
    returnTemperatureK: ambient.temperatureK,
    steamKgS: 0,
    heatDeliveredW: 0,
    feedKgS: 0,
    feedOpening: 0,
    circulationKgS: 0,
    safetyValveOpen: false,
    safetyValveKgS: 0,
    heatW: 0,
    massKg: 0,
    energyJ: 0,
    surfaceHeatJ: 0,
    massInKg: 0,
    massOutKg: 0,
    energyInJ: 0,
    energyOutJ: 0,
    waterM3: 0,
    bubbleM3: 0,
    accumulatorKg: 0,
    riserQuality: 0,
    riserShare: 0,
    riserKg: 0,
    systemKg: 0,
    systemEnergyJ: 0,
    saturation: createSaturation(),
    middle: createSaturation(),
    prepared: {
      volumeM3: 0,
      metalJK: 0,
      lossWK: 0,
      boilingK: 0,
      boilingEnergyJKg: 0,
      feedEnthalpyJKg: 0,
      loadFactor: 0,
      leakFactor: 0,
      pumpDropFactor: 0,
      valveDropFactor: 0,
      circulationKgS: 0,
      emitterWK: 0,
      roomK: 0,
      boilerKg: 0,
      fillVolumeM3: 0,
    },
  };
}
