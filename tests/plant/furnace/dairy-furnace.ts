import { createAmbient } from '../../../src/plant/air/index.ts';
import {
  createFurnace,
  type FurnaceFeed,
  type FurnaceParameters,
  type FurnaceState,
  METHANE,
  stepFurnace,
} from '../../../src/plant/furnace/index.ts';

/** Furnace and passes of a 6 MW water-tube boiler; 20 °C and sea level around it. */
export function dairyFurnace(change: Partial<FurnaceParameters> = {}): FurnaceState {
  const parameters: FurnaceParameters = {
    furnaceVolumeM3: 9,
    passVolumeM3: 5,
    bypassShare: 0.05,
    radiantAreaM2: 15,
    ratedFlueFlowKgS: 2.5,
    passUnits: 3,
    fouling: 0,
    passLagS: 15,
    refractoryHeatJK: 400000,
    refractoryConductanceWK: 900,
    tileToWaterWK: 500,
    casingConductanceWK: 40,
    ventAreaM2: 0.35,
    casingStrengthPa: 8700,
    flameSpreadMS: 5,
    selfIgnitionC: 600,
    wallIgnitionC: 760,
    mixingSpread: 0.05,
    mixingHeadPa: 1600,
    flameZoneS: 0.05,
    flameLossShare: 0.045,
    probeDelayS: 4,
    oxygenCellS: 5,
    traceCellS: 12,
    thermocoupleS: 6,
    probeFalseAir: 0,
    shellLossShare: 0.01,
    ...change,
  };
  const ambient = createAmbient({ altitudeM: 0, temperatureC: 20 });
  return createFurnace(parameters, { ...METHANE }, ambient);
}

/** What goes in, with the head pressure that a dairy's burner has at so much air. */
export function feedOf(
  airKgS: number,
  gasKgS: number,
  burntKgS: number,
  igniter: number,
  waterTemperatureK = 465,
  diffuserShift = 0,
): FurnaceFeed {
  const share = airKgS / 2.4;
  const headDifferentialPa = 1620 * share * Math.abs(share);
  return {
    airKgS,
    gasKgS,
    burntKgS,
    igniter,
    waterTemperatureK,
    headDifferentialPa,
    diffuserShift,
  };
}

/** Air, gas and what burns of it in a flame, for some seconds. */
export function runFurnace(
  furnace: FurnaceState,
  seconds: number,
  flows: { air: number; gas?: number; burnt?: number; igniter?: number; waterK?: number },
): FurnaceState {
  const { air, gas = 0, burnt = 0, igniter = 0, waterK = 465 } = flows;
  for (let i = 0; i < Math.round(seconds * 100); i++) {
    stepFurnace(furnace, feedOf(air, gas, burnt, igniter, waterK), 0.01);
  }
  return furnace;
}

export function massInside(furnace: FurnaceState): number {
  const { furnace: first, passes } = furnace;
  return (
    first.fuelKg +
    first.airKg +
    first.productKg +
    first.unfinishedKg +
    passes.fuelKg +
    passes.airKg +
    passes.productKg +
    passes.unfinishedKg +
    furnace.gatheredAirKg +
    furnace.gatheredGasKg
  );
}

/** Fuel atoms inside, as kilograms of the fuel they came in as. */
export function fuelInside(furnace: FurnaceState): number {
  const { furnace: first, passes, fuel } = furnace;
  const burnt = (first.productKg + passes.productKg) / (1 + fuel.airPerFuelKgKg);
  return first.fuelKg + first.unfinishedKg + passes.fuelKg + passes.unfinishedKg + burnt;
}
