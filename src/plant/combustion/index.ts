export { type CombustionTables, combustionTables } from './combustion-tables.ts';
export { burnAdiabatic, type Equilibrium, equilibrateAt } from './equilibrium.ts';
export {
  AIR_OXYGEN,
  atomsOf,
  type BurnableGas,
  formationHeat,
  oxygenDemand,
} from './fuel-atoms.ts';
export {
  adiabaticTemperature,
  buildGasHeatTable,
  type GasHeat,
  type GasHeatTable,
  readGasHeat,
} from './gas-heat-table.ts';
export { type BurntPocket, burnPocket, type FlameZone, type LocalFlame } from './local-flame.ts';
export {
  buildMixingTable,
  type FlameProducts,
  LEAST_SPREAD,
  type MixingTable,
  readMixingTable,
  WIDEST_SPREAD,
} from './mixing-table.ts';
export { growNitricOxide, type NitricSurroundings, nitricOxideRate } from './nitric-oxide.ts';
export { type Atoms, SPECIES, type SpeciesData } from './species-data.ts';
export { readStackHeat } from './stack-heat.ts';
export { enthalpy, entropy, findSpecies, heatCapacity } from './thermodynamics.ts';
