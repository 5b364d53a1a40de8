import { mixFlame, stepFlue } from './flue.ts';
import type { FurnaceFeed } from './furnace-feed.ts';
import type { FurnaceState } from './furnace-state.ts';
import { radiantConductance, readPassTable } from './heat.ts';
import { settleHeat } from './heat-balance.ts';
import { estimatePuff, releasableFuel } from './puff.ts';
import { tankMass } from './tank.ts';

/** Fuel by volume over the lower limit, of both volumes. */
export function readCombustible(state: FurnaceState): void {
  const { furnace, passes, amounts, fuel } = state;
  const scale = amounts.fuelMolKg / fuel.lowerLimit;
  state.furnaceCombustible = (furnace.fuelKg * scale) / furnace.amountMol;
  state.passCombustible = (passes.fuelKg * scale) / passes.amountMol;
  state.furnaceFuelShare = state.furnaceCombustible * fuel.lowerLimit;
  state.combustible = Math.max(state.furnaceCombustible, state.passCombustible);
}

/** What changes slowly: conductance of the gas, refractory, flue, heat to the water, flue gas. */
export function stepReadings(state: FurnaceState, feed: FurnaceFeed, spanS: number): void {
  const { parameters: p, ambient, totals } = state;
  const { waterTemperatureK: waterK } = feed;
  const gasK = state.gasTemperatureK;
  state.gasConductanceWK = radiantConductance(p.radiantAreaM2, gasK, waterK);

  const toWater = p.tileToWaterWK;
  const casing = p.casingConductanceWK;
  const before = state.refractoryTemperatureK;
  const stored = p.refractoryHeatJK * before + totals.spanTileJ;
  const after =
    (stored + spanS * (toWater * waterK + casing * ambient.temperatureK)) /
    (p.refractoryHeatJK + spanS * (toWater + casing));
  state.refractoryTemperatureK = after;
  const tileToWaterJ = spanS * toWater * (after - waterK);
  const casingJ = spanS * casing * (after - ambient.temperatureK);

  const out = Math.max(state.outflowKgS, 0);
  const survival = readPassTable(state.passSurvival, out / p.ratedFlueFlowKgS);
  const target = waterK + (gasK - waterK) * survival;
  state.flueTemperatureK += ((target - state.flueTemperatureK) * spanS) / (p.passLagS + spanS);

  mixFlame(state, feed);
  stepFlue(state, feed.burntKgS, spanS);
  settleHeat(state, tileToWaterJ, casingJ, spanS);
  readHeldPuff(state);
}

/** What the fuel that has gathered would do if it were lit now. */
export function readHeldPuff(state: FurnaceState): void {
  const { parameters: p, ambient, furnace, fuel } = state;
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
          state.gasTemperatureK,
          mass * state.specificHeat,
          ambient.pressurePa,
        ) / p.casingStrengthPa
      : 0;
}
