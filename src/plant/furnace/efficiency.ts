import { AIR_OXYGEN, type CombustionTables, readStackHeat } from '../combustion/index.ts';
import type { FuelProperties } from './fuel-properties.ts';

export interface FlueSample {
  /** By volume in dry gas. */
  oxygen: number;
  carbonMonoxide: number;
  temperatureK: number;
  intakeK: number;
}

const MONOXIDE_J_MOL = 282980;

/**
 * Share of the lower heating value that goes up the stack as hot gas.
 *
 * Equation: excess air from dry oxygen x, n = x·D / (0.20946 − x) mol per mol of fuel, D the dry
 *   products of just complete burning; loss = Σ n Δh(T_flue, T_air) / H_i from ideal-gas data.
 * Valid for: gas above its dew point.
 * Source: indirect method, as in EN 12952-15 and ASME PTC 4; thermodynamic data as in SPECIES.
 */
export function stackLoss(
  sample: FlueSample,
  fuel: FuelProperties,
  tables: CombustionTables,
): number {
  const excessMol = excessAir(sample.oxygen, fuel);
  const { stackHeat } = tables;
  const heat =
    readStackHeat(stackHeat, sample.temperatureK, excessMol) -
    readStackHeat(stackHeat, sample.intakeK, excessMol);
  return heat / (fuel.lowerHeatingJKg * fuel.molarMassKgMol);
}

/** Share of the lower heating value that leaves as carbon monoxide. */
export function monoxideLoss(sample: FlueSample, fuel: FuelProperties): number {
  const dryMol = fuel.dryProductsPerFuelMol + excessAir(sample.oxygen, fuel);
  const heat = fuel.lowerHeatingJKg * fuel.molarMassKgMol;
  return (sample.carbonMonoxide * dryMol * MONOXIDE_J_MOL) / heat;
}

/** Air beyond what the fuel needs, mol per mol of fuel. */
function excessAir(oxygen: number, fuel: FuelProperties): number {
  return (oxygen * fuel.dryProductsPerFuelMol) / (AIR_OXYGEN - oxygen);
}
