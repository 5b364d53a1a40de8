import { type AmbientState, GAS_CONSTANT } from '../air/index.ts';
import { type CombustionTables, readGasHeat } from '../combustion/index.ts';
import { createAnalyser } from './analyser-state.ts';
import { readFlue } from './flue.ts';
import type { FuelProperties } from './fuel-properties.ts';
import { readCombustible, readHeldPuff } from './furnace-readings.ts';
import { type FurnaceParameters, type FurnaceState, prepareFurnace } from './furnace-state.ts';
import { restartBalance } from './heat-balance.ts';
import { createHeatTotals } from './heat-totals.ts';
import { createTank, type SpeciesAmounts, type TankState, tankMass } from './tank.ts';

/** Until prepareFurnace looks up those of this fuel. */
const NO_TABLES: CombustionTables = {
  gasHeat: new Float64Array(0),
  mixing: { values: new Float64Array(0), monoxideShare: 0 },
  stackHeat: new Float64Array(0),
};

export function createFurnace(
  parameters: FurnaceParameters,
  fuel: FuelProperties,
  ambient: AmbientState,
): FurnaceState {
  const state: FurnaceState = {
    parameters,
    fuel,
    ambient,
    furnace: createTank(),
    passes: createTank(),
    gasTemperatureK: ambient.temperatureK,
    refractoryTemperatureK: ambient.temperatureK,
    flueTemperatureK: ambient.temperatureK,
    heatToWaterW: 0,
    heatReleaseW: 0,
    furnaceCombustible: 0,
    passCombustible: 0,
    combustible: 0,
    furnaceFuelShare: 0,
    airChanges: 0,
    flueOxygen: 0,
    flueCarbonDioxide: 0,
    flueCarbonMonoxide: 0,
    flueNitricOxide: 0,
    productShare: 0,
    outflowKgS: 0,
    leftKg: 0,
    pulsePa: 0,
    puffIndex: 0,
    puffPeakIndex: 0,
    heldPuffIndex: 0,
    flash: 0,
    amounts: { fuelMolKg: 0, airMolKg: 0, productMolKg: 0 },
    passSurvival: new Float64Array(0),
    furnaceMolK: 0,
    passMolK: 0,
    volumePerMolK: 0,
    burnS: 1,
    selfIgnitionK: 0,
    wallIgnitionK: 0,
    specificHeat: 1005,
    gasHeatJ: 0,
    specificEnthalpy: 0,
    intakeEnthalpy: 0,
    tables: NO_TABLES,
    found: { heatJKg: 0, capacityJKgK: 0 },
    flameProducts: { unfinishedShare: 0, nitricMolKg: 0 },
    spread: 0,
    unfinishedHeatJKg: 0,
    reducedPerFuelMol: 0,
    monoxideShare: 0,
    fuelMolPerProductKg: 0,
    furnaceNitricMol: 0,
    passNitricMol: 0,
    totals: createHeatTotals(),
    analyser: createAnalyser(parameters),
    gasConductanceWK: 0,
    slowCount: 0,
    slowS: 0,
    gatheredAirKg: 0,
    gatheredGasKg: 0,
    gatheredS: 0,
    gatheredSteps: 0,
  };
  prepareFurnace(state);
  fillFurnace(state, 0);
  return state;
}

/** Fills both volumes with air of the surroundings that holds the given share of fuel by volume. */
export function fillFurnace(state: FurnaceState, fuelShare: number): void {
  const { ambient, amounts } = state;
  state.gasTemperatureK = ambient.temperatureK;
  state.flueTemperatureK = ambient.temperatureK;
  const perVolume = ambient.pressurePa / (GAS_CONSTANT * ambient.temperatureK);
  fillTank(state.furnace, perVolume, fuelShare, amounts);
  fillTank(state.passes, perVolume, fuelShare, amounts);
  readCombustible(state);
  const { found } = state;
  readGasHeat(state.tables.gasHeat, ambient.temperatureK, 0, found);
  state.specificHeat = found.capacityJKgK;
  state.specificEnthalpy = found.heatJKg;
  state.gasHeatJ = found.heatJKg * tankMass(state.furnace);
  state.furnaceNitricMol = 0;
  state.passNitricMol = 0;
  restartBalance(state);
  readFlue(state);
  readHeldPuff(state);
}

export function restartAirChanges(state: FurnaceState): void {
  state.airChanges = 0;
}

export function restartPuff(state: FurnaceState): void {
  state.puffPeakIndex = 0;
}

function fillTank(
  tank: TankState,
  amountPerVolume: number,
  fuelShare: number,
  amounts: SpeciesAmounts,
): void {
  const amount = amountPerVolume * tank.volumeM3;
  tank.fuelKg = (fuelShare * amount) / amounts.fuelMolKg;
  tank.airKg = ((1 - fuelShare) * amount) / amounts.airMolKg;
  tank.productKg = 0;
  tank.unfinishedKg = 0;
  tank.amountMol = amount;
}
