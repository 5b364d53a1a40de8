import { burnAdiabatic, type Equilibrium, equilibrateAt } from './equilibrium.ts';
import {
  AIR_OXYGEN,
  airHeat,
  atomsOf,
  type BurnableGas,
  formationHeat,
  oxygenDemand,
  productHeat,
} from './fuel-atoms.ts';
import type { Atoms } from './species-data.ts';
import { STANDARD_K } from './thermodynamics.ts';

/** Enthalpy of mixtures of air and burnt gas over that at 25 °C, J/kg: rows by temperature. */
export type GasHeatTable = Float64Array;

const COLDEST_K = 200;
const STEP_K = 25;
const ROWS = 105;
const COLUMNS = 9;
const LAST_COLUMN = COLUMNS - 1;
/** Dissociation is faded in between these, so that nothing jumps. */
const SOUND_BELOW_K = 1300;
const EQUILIBRIUM_FROM_K = 1500;

/** Enthalpy and heat capacity that a look-up found. */
export interface GasHeat {
  heatJKg: number;
  capacityJKgK: number;
}

/**
 * Enthalpy of gas that holds so much burnt gas (products of just complete burning) in air.
 *
 * Equation: up to 1300 K the sum over the species of complete combustion; from 1500 K what the
 *   equilibrium mixture holds, dissociation included, solved every 50 K and a cubic in between.
 * Valid for: 200 to 2800 K; straight lines of 25 K and of eighths of burnt gas.
 * Left out: dissociation where less than half is burnt gas, which does not get hot enough; unburnt
 *   fuel counts as air; moisture of the air.
 */
export function buildGasHeatTable(
  fuel: BurnableGas,
  airMolarMassKgMol: number,
  pressurePa: number,
): GasHeatTable {
  const table = new Float64Array(ROWS * COLUMNS);
  const airPerFuelMol = oxygenDemand(fuel) / AIR_OXYGEN;
  const productKg = fuel.molarMassKgMol + airPerFuelMol * airMolarMassKgMol;
  const airJMol = new Float64Array(ROWS);
  const productJMol = new Float64Array(ROWS);
  for (let row = 0; row < ROWS; row++) {
    airJMol[row] = airHeat(COLDEST_K + row * STEP_K);
    productJMol[row] = productHeat(fuel, COLDEST_K + row * STEP_K);
  }
  for (let column = 0; column < COLUMNS; column++) {
    const share = column / LAST_COLUMN;
    const fuelMol = share / productKg;
    const freshMol = (1 - share) / airMolarMassKgMol;
    for (let row = 0; row < ROWS; row++) {
      table[row * COLUMNS + column] =
        freshMol * (airJMol[row] as number) + fuelMol * (productJMol[row] as number);
    }
    if (2 * column < LAST_COLUMN) continue;
    const atoms = atomsOf(fuel, fuelMol, freshMol + fuelMol * airPerFuelMol);
    addDissociation(table, column, atoms, fuelMol * formedHeat(fuel), pressurePa);
  }
  return table;
}

/** Enthalpy at 25 °C of what a mol of fuel burns to, J. */
function formedHeat(fuel: BurnableGas): number {
  return formationHeat(fuel) - fuel.lowerHeatingJKg * fuel.molarMassKgMol;
}

/** Adds to one column what equilibrium holds more than complete combustion. */
function addDissociation(
  table: GasHeatTable,
  column: number,
  atoms: Atoms,
  formedJ: number,
  pressurePa: number,
): void {
  const first = (SOUND_BELOW_K - COLDEST_K) / STEP_K;
  const more = new Float64Array(ROWS);
  let near: Equilibrium | undefined;
  for (let row = first; row < ROWS; row += 2) {
    near = equilibrateAt(atoms, COLDEST_K + row * STEP_K, pressurePa, near);
    more[row] = near.enthalpyJ - formedJ - (table[row * COLUMNS + column] as number);
  }
  for (let row = first + 1; row < ROWS; row += 2) more[row] = middle(more, row, first);
  for (let row = first; row < ROWS; row++) {
    const part = ((row - first) * STEP_K) / (EQUILIBRIUM_FROM_K - SOUND_BELOW_K);
    const at = row * COLUMNS + column;
    table[at] = (table[at] as number) + Math.min(1, part) * (more[row] as number);
  }
}

/** A cubic through the four neighbours that were solved; a straight line at the ends. */
function middle(values: Float64Array, row: number, first: number): number {
  const near = (values[row - 1] as number) + (values[row + 1] as number);
  if (row - 3 < first || row + 3 >= ROWS) return near / 2;
  return (9 * near - (values[row - 3] as number) - (values[row + 3] as number)) / 16;
}

/** Refills `into` with enthalpy and heat capacity at a temperature and share of burnt gas. */
export function readGasHeat(
  table: GasHeatTable,
  temperatureK: number,
  productShare: number,
  into: GasHeat,
): void {
  const y = (temperatureK - COLDEST_K) * (1 / STEP_K);
  let row = Math.floor(y);
  if (!(row > 0)) row = 0;
  else if (row > ROWS - 2) row = ROWS - 2;
  const x = productShare * LAST_COLUMN;
  let column = Math.floor(x);
  if (!(column > 0)) column = 0;
  else if (column > LAST_COLUMN - 1) column = LAST_COLUMN - 1;
  const right = x - column;
  const at = row * COLUMNS + column;
  const a = table[at] as number;
  const b = table[at + COLUMNS] as number;
  const low = a + right * ((table[at + 1] as number) - a);
  const high = b + right * ((table[at + COLUMNS + 1] as number) - b);
  const rise = high - low;
  into.heatJKg = low + rise * (y - row);
  into.capacityJKgK = rise * (1 / STEP_K);
}

/** Adiabatic flame temperature of fuel and air that both come at 25 °C, in dry air. */
export function adiabaticTemperature(
  fuel: BurnableGas,
  equivalence: number,
  pressurePa: number,
  intakeK: number = STANDARD_K,
): number {
  const airMol = oxygenDemand(fuel) / AIR_OXYGEN;
  const heat = equivalence * formationHeat(fuel) + airMol * airHeat(intakeK);
  return burnAdiabatic(atomsOf(fuel, equivalence, airMol), heat, pressurePa).temperatureK;
}
