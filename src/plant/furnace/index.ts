export {
  createFurnace,
  fillFurnace,
  restartAirChanges,
  restartPuff,
} from './create-furnace.ts';
export {
  describeFuel,
  equivalenceOf,
  type FuelProperties,
  METHANE,
  type MixtureFigures,
  productsMolarMass,
} from './fuel-properties.ts';
export { type FurnaceFeed, putBy, stepFurnace } from './furnace.ts';
export {
  type FurnaceParameters,
  type FurnaceState,
  furnaceParameters,
  prepareFurnace,
} from './furnace-state.ts';
export { meanSpecificHeat, passTable, readPassTable } from './heat.ts';
export { burnableShare, stepVentedPressure } from './puff.ts';
export { createTank, type SpeciesAmounts, stepTank, type TankState, tankMass } from './tank.ts';
