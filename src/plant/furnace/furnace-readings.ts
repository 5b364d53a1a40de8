import type { FurnaceState } from './furnace-state.ts';
import { meanSpecificHeat, radiantConductance, readPassTable } from './heat.ts';
import { estimatePuff, releasableFuel } from './puff.ts';
import { tankMass } from './tank.ts';

const OXYGEN_IN_AIR = 0.20946;

/** Fuel by volume over the lower limit, of both volumes. */
export function readCombustible(state: FurnaceState): void {
  const { furnace, passes, amounts, fuel } = state;
  const scale = amounts.fuelMolKg / fuel.lowerLimit;
  state.furnaceCombustible = (furnace.fuelKg * scale) / furnace.amountMol;
  state.passCombustible = (passes.fuelKg * scale) / passes.amountMol;
  state.furnaceFuelShare = state.furnaceCombustible * fuel.lowerLimit;
  state.combustible = Math.max(state.furnaceCombustible, state.passCombustible);
}

/**
 * What changes slowly: specific heat and conductance of the gas, refractory, flue temperature,
 * heat to the water, flue oxygen, what a puff would do.
 *
 * @param stepS 0 to read without moving on
 */
export function stepReadings(state: FurnaceState, waterK: number, stepS: number): void {
  const { parameters: p, ambient, furnace, passes, amounts, fuel } = state;
  const gasK = state.gasTemperatureK;
  const share = furnace.productKg / tankMass(furnace);
  state.specificHeat = meanSpecificHeat(ambient.temperatureK, gasK, share);
  state.gasConductanceWK = radiantConductance(p.radiantAreaM2, gasK, waterK);

  const tiles = p.refractoryConductanceWK;
  const toWater = p.tileToWaterWK;
  const casing = p.casingConductanceWK;
  if (stepS > 0) {
    const store = p.refractoryHeatJK / stepS;
    state.refractoryTemperatureK =
      (store * state.refractoryTemperatureK +
        tiles * gasK +
        toWater * waterK +
        casing * ambient.temperatureK) /
      (store + tiles + toWater + casing);
  }

  const out = Math.max(state.outflowKgS, 0);
  const survival = readPassTable(state.passSurvival, out / p.ratedFlueFlowKgS);
  const target = waterK + (gasK - waterK) * survival;
  state.flueTemperatureK += ((target - state.flueTemperatureK) * stepS) / (p.passLagS + stepS);
  state.heatToWaterW =
    state.gasConductanceWK * (gasK - waterK) +
    toWater * (state.refractoryTemperatureK - waterK) +
    out * meanSpecificHeat(state.flueTemperatureK, gasK, share) * (gasK - state.flueTemperatureK);

  const airMol = passes.airKg * amounts.airMolKg;
  const dryProducts =
    (passes.productKg * amounts.productMolKg * fuel.dryProductsPerFuelMol) /
    fuel.productsPerFuelMol;
  const dry = airMol + dryProducts + passes.fuelKg * amounts.fuelMolKg;
  state.flueOxygen = (OXYGEN_IN_AIR * airMol) / dry;
  state.productShare = passes.productKg / tankMass(passes);

  const held = releasableFuel(furnace, state.furnaceCombustible, fuel);
  const mass = tankMass(furnace);
  state.heldPuffIndex =
    held > 0
      ? estimatePuff(
          held * fuel.lowerHeatingJKg,
          state.burnS,
          furnace.volumeM3,
          p.ventAreaM2,
          mass / furnace.volumeM3,
          gasK,
          mass * state.specificHeat,
          ambient.pressurePa,
        ) / p.casingStrengthPa
      : 0;
}
