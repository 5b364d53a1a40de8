import type { Atoms } from './species-data.ts';
import { enthalpy, findSpecies, STANDARD_K, sensibleHeat } from './thermodynamics.ts';

/** Dry air by volume: 1976 standard atmosphere, carbon dioxide counted as argon. */
export const AIR_OXYGEN = 0.20946;
export const AIR_NITROGEN = 0.7812;
export const AIR_ARGON = 0.00934;

/** What combustion must know of a fuel gas: its atoms and its heat. */
export interface BurnableGas {
  readonly carbonMol: number;
  readonly hydrogenMol: number;
  readonly oxygenMol: number;
  readonly nitrogenMol: number;
  readonly molarMassKgMol: number;
  readonly lowerHeatingJKg: number;
}

/** Oxygen for complete combustion, mol per mol of fuel. */
export function oxygenDemand(fuel: BurnableGas): number {
  return fuel.carbonMol + fuel.hydrogenMol / 4 - fuel.oxygenMol / 2;
}

/** Atoms of so much fuel and so much dry air, mol. */
export function atomsOf(fuel: BurnableGas, fuelMol: number, airMol: number): Atoms {
  return [
    fuelMol * fuel.carbonMol,
    fuelMol * fuel.hydrogenMol,
    fuelMol * fuel.oxygenMol + 2 * AIR_OXYGEN * airMol,
    fuelMol * fuel.nitrogenMol + 2 * AIR_NITROGEN * airMol,
    AIR_ARGON * airMol,
  ];
}

/**
 * Enthalpy of formation that goes with the heating value, J/mol.
 *
 * Equation: Δh_f = H_i + n_CO₂ Δh_f(CO₂) + n_H₂O Δh_f(H₂O), so that what the equilibrium gives and
 *   what the furnace releases are the same heat.
 */
export function formationHeat(fuel: BurnableGas): number {
  const { carbonMol, hydrogenMol, lowerHeatingJKg, molarMassKgMol } = fuel;
  return (
    lowerHeatingJKg * molarMassKgMol + carbonMol * CARBON_DIOXIDE_J + (hydrogenMol / 2) * WATER_J
  );
}

/** Enthalpy of dry air over that at 25 °C, J/mol. */
export function airHeat(temperatureK: number): number {
  return (
    AIR_OXYGEN * sensibleHeat(OXYGEN, temperatureK) +
    AIR_NITROGEN * sensibleHeat(NITROGEN, temperatureK) +
    AIR_ARGON * sensibleHeat(ARGON, temperatureK)
  );
}

/** Enthalpy over that at 25 °C of what one mol of fuel makes with just enough air, J. */
export function productHeat(fuel: BurnableGas, temperatureK: number): number {
  const air = oxygenDemand(fuel) / AIR_OXYGEN;
  return (
    fuel.carbonMol * sensibleHeat(CARBON_DIOXIDE, temperatureK) +
    (fuel.hydrogenMol / 2) * sensibleHeat(WATER, temperatureK) +
    (fuel.nitrogenMol / 2 + AIR_NITROGEN * air) * sensibleHeat(NITROGEN, temperatureK) +
    AIR_ARGON * air * sensibleHeat(ARGON, temperatureK)
  );
}

const OXYGEN = findSpecies('O2');
const NITROGEN = findSpecies('N2');
const ARGON = findSpecies('Ar');
const CARBON_DIOXIDE = findSpecies('CO2');
const WATER = findSpecies('H2O');
const CARBON_DIOXIDE_J = enthalpy(CARBON_DIOXIDE, STANDARD_K);
const WATER_J = enthalpy(WATER, STANDARD_K);
