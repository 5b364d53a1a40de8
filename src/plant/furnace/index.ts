export { stepAnalyser } from './analyser.ts';
export { type AnalyserState, analyserParameters } from './analyser-state.ts';
export {
  createFurnace,
  fillFurnace,
  restartAirChanges,
  restartPuff,
} from './create-furnace.ts';
export { monoxideLoss, stackLoss } from './efficiency.ts';
export {
  describeFuel,
  equivalenceOf,
  type FuelProperties,
  METHANE,
  type MixtureFigures,
  productsMolarMass,
} from './fuel-properties.ts';
export { putBy, stepFurnace } from './furnace.ts';
export type { FurnaceFeed } from './furnace-feed.ts';
export {
  type FurnaceParameters,
  type FurnaceState,
  furnaceParameters,
  prepareFurnace,
} from './furnace-state.ts';
export { passTable, readPassTable } from './heat.ts';
export { type HeatBalance, readHeatBalance } from './heat-balance.ts';
export type { HeatTotals } from './heat-totals.ts';
export { burnableShare, stepVentedPressure } from './puff.ts';
export { createTank, type SpeciesAmounts, stepTank, type TankState, tankMass } from './tank.ts';
