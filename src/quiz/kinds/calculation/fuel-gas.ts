/** What a sum about flue gas needs to know of the gas that is burnt. */
import type { PlantFile } from '../../../engine/index.ts';

/** Atoms of carbon and hydrogen in each molecule that burns; the rest goes through as it is. */
const BURNS = {
  methane: { carbon: 1, hydrogen: 4 },
  ethane: { carbon: 2, hydrogen: 6 },
  propane: { carbon: 3, hydrogen: 8 },
  butane: { carbon: 4, hydrogen: 10 },
  hydrogen: { carbon: 0, hydrogen: 2 },
} as const;
const AIR_OXYGEN = 0.2095;

/**
 * Dry flue gas for a volume of air, with just enough of it.
 *
 * Equation: each C takes one O₂ and gives one CO₂, each four H take one O₂; the nitrogen of that air goes
 *   through. For methane 0.895.
 * Source: stoichiometry; any book on combustion.
 */
export function dryGasShare({ gasTrain: { mixture } }: PlantFile): number {
  let oxygen = 0;
  let dry = mixture.nitrogen + mixture.carbonDioxide;
  for (const gas of ['methane', 'ethane', 'propane', 'butane', 'hydrogen'] as const) {
    const { carbon, hydrogen } = BURNS[gas];
    oxygen += mixture[gas] * (carbon + hydrogen / 4);
    dry += mixture[gas] * carbon;
  }
  const air = oxygen / AIR_OXYGEN;
  return (dry + air - oxygen) / air;
}
