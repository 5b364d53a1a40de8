import { exactPow } from '../../numeric/index.ts';
import { number, type ParameterTable, type Values } from '../../quantity/index.ts';
import { AIR_MOLAR_MASS, type AmbientState, GAS_CONSTANT } from '../air/index.ts';
import {
  type CombustionTables,
  combustionTables,
  type FlameProducts,
  type GasHeat,
  AIR_OXYGEN as OXYGEN_IN_AIR,
  readGasHeat,
} from '../combustion/index.ts';
import { type AnalyserState, analyserParameters } from './analyser-state.ts';
import { type FuelProperties, productsMolarMass } from './fuel-properties.ts';
import { passTable } from './heat.ts';
import type { HeatTotals } from './heat-totals.ts';
import type { SpeciesAmounts, TankState } from './tank.ts';

export const furnaceParameters = {
  furnaceVolumeM3: number('m³', 0.05, 500, 'volume of the furnace'),
  passVolumeM3: number('m³', 0.01, 500, 'volume of the passes up to the boiler outlet'),
  bypassShare: number('1', 0, 0.5, 'share of the flow that leaves each volume unmixed', 0.05),
  radiantAreaM2: number('m²', 0.05, 500, 'wall area that takes radiation, times exchange factor'),
  ratedFlueFlowKgS: number(
    'kg/s',
    0.01,
    60,
    'flue gas at full fire, for which passUnits is stated',
  ),
  passUnits: number('1', 0.2, 8, 'transfer units of the clean passes at rated flow', 3),
  fouling: number('1', 0, 0.9, 'share of the transfer of the passes lost to soot', 0),
  passLagS: number('s', 0.5, 300, 'lag of the flue temperature by the metal it meets', 15),
  refractoryHeatJK: number('J/K', 1e3, 1e8, 'heat capacity of throat and tiles', 4e5),
  refractoryConductanceWK: number('W/K', 1, 1e5, 'heat transfer from gas to throat and tiles', 900),
  tileToWaterWK: number(
    'W/K',
    0,
    1e5,
    'heat transfer from throat and tiles to the water walls',
    400,
  ),
  casingConductanceWK: number('W/K', 0, 1e4, 'heat lost through the casing', 40),
  ventAreaM2: number('m²', 0.005, 50, 'free area by which expanding gas gets out, doors included'),
  casingStrengthPa: number(
    'Pa',
    500,
    50000,
    'overpressure the casing is built for; puffs are counted in it (training value)',
    8700,
  ),
  flameSpreadMS: number('m/s', 1, 20, 'speed of a flame through a stagnant mixture', 5),
  selfIgnitionC: number('°C', 400, 900, 'temperature at which fuel in hot gas burns unlit', 600),
  wallIgnitionC: number('°C', 500, 1200, 'temperature at which hot tiles light fresh gas', 760),
  mixingSpread: number(
    '1',
    0.02,
    0.25,
    'spread of the local fuel–air ratio about its mean, at the head pressure below',
    0.05,
  ),
  mixingHeadPa: number('Pa', 50, 10000, 'head pressure drop for which the spread is stated', 1600),
  flameZoneS: number('s', 0.005, 0.5, 'time that gas spends in the hot flame zone', 0.05),
  flameLossShare: number(
    '1',
    0,
    0.4,
    'share of its temperature rise that the flame zone radiates',
    0.045,
  ),
  ...analyserParameters,
} as const satisfies ParameterTable;
export type FurnaceParameters = Values<typeof furnaceParameters>;

/** Two stirred volumes in series, their gas and their heat. */
export interface FurnaceState {
  parameters: FurnaceParameters;
  fuel: FuelProperties;
  ambient: AmbientState;
  furnace: TankState;
  passes: TankState;

  gasTemperatureK: number;
  refractoryTemperatureK: number;
  flueTemperatureK: number;
  heatToWaterW: number;
  /** Heat released in the furnace, by the flames and by stray fuel. */
  heatReleaseW: number;

  /** Fuel by volume over the lower flammability limit, in each volume, and the greater of both. */
  furnaceCombustible: number;
  passCombustible: number;
  combustible: number;
  /** Fuel share by volume in the furnace. */
  furnaceFuelShare: number;
  /** Volumes of furnace and passes that have gone through since restartAirChanges. */
  airChanges: number;
  /** By volume in dry gas at the boiler outlet. */
  flueOxygen: number;
  flueCarbonDioxide: number;
  flueCarbonMonoxide: number;
  flueNitricOxide: number;
  /** Burnt gas by mass at the boiler outlet. */
  productShare: number;

  /** Mass that left for the stack during the last step; negative when the stack was drawn on. */
  outflowKgS: number;
  /** All mass that has left for the stack since the start. */
  leftKg: number;
  /** Pressure made by gas that is expanding or shrinking just now. */
  pulsePa: number;
  /** Overpressure of the moment, and the greatest since restartPuff, in strengths of the casing. */
  puffIndex: number;
  puffPeakIndex: number;
  /** What the fuel that has gathered would make if it were lit now, in the same measure. */
  heldPuffIndex: number;
  /** How far a flame has crossed the gathered mixture, 0 to 1. */
  flash: number;

  amounts: SpeciesAmounts;
  passSurvival: Float64Array;
  /** p·V / R of each volume, and R / p. */
  furnaceMolK: number;
  passMolK: number;
  volumePerMolK: number;
  burnS: number;
  selfIgnitionK: number;
  wallIgnitionK: number;
  specificHeat: number;
  /** Enthalpy of the furnace gas over that at 25 °C, in all and per kilogram. */
  gasHeatJ: number;
  specificEnthalpy: number;
  intakeEnthalpy: number;
  tables: CombustionTables;
  found: GasHeat;
  /** What the flame makes at its mean mixture and spread. */
  flameProducts: FlameProducts;
  spread: number;
  /** Heat that a kilogram of fuel still holds as carbon monoxide and hydrogen. */
  unfinishedHeatJKg: number;
  /** Of these two by volume, together over a mol of fuel, and the share of the monoxide. */
  reducedPerFuelMol: number;
  monoxideShare: number;
  fuelMolPerProductKg: number;
  furnaceNitricMol: number;
  passNitricMol: number;
  totals: HeatTotals;
  analyser: AnalyserState;
  gasConductanceWK: number;
  slowCount: number;
  slowS: number;
  /** What went in during quiet steps that were not taken yet. */
  gatheredAirKg: number;
  gatheredGasKg: number;
  gatheredS: number;
  gatheredSteps: number;
}

/** Bond heats of the two gases that an unfinished flame leaves, J/mol at 25 °C. */
const MONOXIDE_J_MOL = 282980;
const HYDROGEN_J_MOL = 241820;

/** Derived constants, after a change of a parameter, of the fuel or of the ambient air. */
export function prepareFurnace(state: FurnaceState): void {
  const { parameters: p, fuel, amounts, ambient } = state;
  state.furnace.volumeM3 = p.furnaceVolumeM3;
  state.passes.volumeM3 = p.passVolumeM3;
  state.furnace.bypassShare = p.bypassShare;
  state.passes.bypassShare = p.bypassShare;
  state.volumePerMolK = GAS_CONSTANT / ambient.pressurePa;
  state.furnaceMolK = p.furnaceVolumeM3 / state.volumePerMolK;
  state.passMolK = p.passVolumeM3 / state.volumePerMolK;
  amounts.fuelMolKg = 1 / fuel.molarMassKgMol;
  amounts.airMolKg = 1 / AIR_MOLAR_MASS;
  amounts.productMolKg = 1 / productsMolarMass(fuel);
  state.passSurvival = passTable(p.passUnits, p.fouling);
  state.burnS = exactPow(p.furnaceVolumeM3, 1 / 3) / p.flameSpreadMS;
  state.selfIgnitionK = p.selfIgnitionC + 273.15;
  state.wallIgnitionK = p.wallIgnitionC + 273.15;
  prepareCombustion(state);
}

function prepareCombustion(state: FurnaceState): void {
  const { parameters: p, fuel, ambient } = state;
  const tables = combustionTables(
    fuel,
    {
      intakeK: ambient.temperatureK,
      pressurePa: ambient.pressurePa,
      heatLossShare: p.flameLossShare,
      timeS: p.flameZoneS,
    },
    AIR_MOLAR_MASS,
  );
  state.tables = tables;
  const monoxide = tables.mixing.monoxideShare;
  state.monoxideShare = monoxide;
  state.reducedPerFuelMol = 2 * OXYGEN_IN_AIR * fuel.airPerFuelMol;
  state.unfinishedHeatJKg =
    (state.reducedPerFuelMol * (monoxide * MONOXIDE_J_MOL + (1 - monoxide) * HYDROGEN_J_MOL)) /
    fuel.molarMassKgMol;
  state.fuelMolPerProductKg = 1 / (fuel.molarMassKgMol * (1 + fuel.airPerFuelKgKg));
  readGasHeat(tables.gasHeat, ambient.temperatureK, 0, state.found);
  state.intakeEnthalpy = state.found.heatJKg;
}
