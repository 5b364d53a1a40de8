import { AIR_OXYGEN, type BurnableGas, oxygenDemand } from './fuel-atoms.ts';
import { findSpecies, sensibleHeat } from './thermodynamics.ts';

/** Molar heats of what an efficiency test reckons with, products and air in turn, by temperature. */
export type StackHeatTable = Float64Array;

const COLDEST_K = 200;
const STEP_K = 25;
const ROWS = 45;

const OXYGEN = findSpecies('O2');
const NITROGEN = findSpecies('N2');
const CARBON_DIOXIDE = findSpecies('CO2');
const WATER = findSpecies('H2O');

/**
 * Enthalpy over that at 25 °C of the products of one mol of fuel with just enough air, and of one
 * mol of air, J.
 *
 * Valid for: 200 to 1300 K; straight lines of 25 K.
 * Left out: argon, which counts as nitrogen as efficiency tests have it ("atmospheric nitrogen"):
 *   0.23 % of a stack loss.
 */
export function buildStackHeat(fuel: BurnableGas): StackHeatTable {
  const table = new Float64Array(2 * ROWS);
  const airMol = oxygenDemand(fuel) / AIR_OXYGEN;
  const nitrogenMol = fuel.nitrogenMol / 2 + (1 - AIR_OXYGEN) * airMol;
  for (let row = 0; row < ROWS; row++) {
    const temperatureK = COLDEST_K + row * STEP_K;
    const nitrogen = sensibleHeat(NITROGEN, temperatureK);
    table[2 * row] =
      fuel.carbonMol * sensibleHeat(CARBON_DIOXIDE, temperatureK) +
      (fuel.hydrogenMol / 2) * sensibleHeat(WATER, temperatureK) +
      nitrogenMol * nitrogen;
    table[2 * row + 1] =
      AIR_OXYGEN * sensibleHeat(OXYGEN, temperatureK) + (1 - AIR_OXYGEN) * nitrogen;
  }
  return table;
}

/** Heat of the products of a mol of fuel with so many mol of air besides, J. */
export function readStackHeat(
  table: StackHeatTable,
  temperatureK: number,
  excessAirMol: number,
): number {
  const place = (temperatureK - COLDEST_K) / STEP_K;
  const row = Math.min(Math.max(Math.floor(place), 0), ROWS - 2);
  const at = 2 * row;
  const low = (table[at] as number) + excessAirMol * (table[at + 1] as number);
  const high = (table[at + 2] as number) + excessAirMol * (table[at + 3] as number);
  return low + (high - low) * (place - row);
}
