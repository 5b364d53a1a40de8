import { exactLog } from '../../numeric/index.ts';
import { BURNT_SPECIES, SPECIES, type SpeciesData } from './species-data.ts';

export const MOLAR_GAS_CONSTANT = 8.314462618;
export const STANDARD_K = 298.15;
export const STANDARD_PA = 101325;
const MIDDLE_K = 1000;

/** Heat capacity at constant pressure, J/(mol·K). */
export function heatCapacity(species: SpeciesData, temperatureK: number): number {
  return MOLAR_GAS_CONSTANT * capacityShare(coefficients(species, temperatureK), temperatureK);
}

/** Enthalpy with that of formation, J/mol. */
export function enthalpy(species: SpeciesData, temperatureK: number): number {
  const share = enthalpyShare(coefficients(species, temperatureK), temperatureK);
  return MOLAR_GAS_CONSTANT * temperatureK * share;
}

/** Entropy at 101325 Pa, J/(mol·K). */
export function entropy(species: SpeciesData, temperatureK: number): number {
  const a = coefficients(species, temperatureK);
  return MOLAR_GAS_CONSTANT * entropyShare(a, temperatureK, exactLog(temperatureK));
}

/** Enthalpy above that at 25 °C, J/mol. */
export function sensibleHeat(species: SpeciesData, temperatureK: number): number {
  return enthalpy(species, temperatureK) - enthalpy(species, STANDARD_K);
}

export function findSpecies(name: string): SpeciesData {
  const found = SPECIES.find((species) => species.name === name);
  if (found === undefined) throw new RangeError(`no data of species ${name}`);
  return found;
}

export interface SpeciesShares {
  /** cp/R, h/(RT) and s/R of each burnt species. */
  readonly capacity: Float64Array;
  readonly enthalpy: Float64Array;
  readonly entropy: Float64Array;
}

export function createShares(): SpeciesShares {
  return {
    capacity: new Float64Array(BURNT_SPECIES),
    enthalpy: new Float64Array(BURNT_SPECIES),
    entropy: new Float64Array(BURNT_SPECIES),
  };
}

/** Fills in the dimensionless properties of all burnt species at one temperature. */
export function fillShares(shares: SpeciesShares, temperatureK: number): void {
  const t = temperatureK;
  const logK = exactLog(t);
  const first = t > MIDDLE_K ? COEFFICIENTS : 0;
  for (let j = 0; j < BURNT_SPECIES; j++) {
    const k = 2 * COEFFICIENTS * j + first;
    const a1 = PACKED[k] as number;
    const a2 = PACKED[k + 1] as number;
    const a3 = PACKED[k + 2] as number;
    const a4 = PACKED[k + 3] as number;
    const a5 = PACKED[k + 4] as number;
    shares.capacity[j] = a1 + t * (a2 + t * (a3 + t * (a4 + t * a5)));
    shares.enthalpy[j] =
      a1 +
      t * (a2 / 2 + t * (a3 / 3 + t * (a4 / 4 + (t * a5) / 5))) +
      (PACKED[k + 5] as number) / t;
    shares.entropy[j] =
      a1 * logK + t * (a2 + t * (a3 / 2 + t * (a4 / 3 + (t * a5) / 4))) + (PACKED[k + 6] as number);
  }
}

const COEFFICIENTS = 7;
/** Coefficients of the burnt species, low and high range in turn. */
const PACKED = new Float64Array(2 * COEFFICIENTS * BURNT_SPECIES);
for (let j = 0; j < BURNT_SPECIES; j++) {
  const { low, high } = SPECIES[j] as SpeciesData;
  PACKED.set(low, 2 * COEFFICIENTS * j);
  PACKED.set(high, 2 * COEFFICIENTS * j + COEFFICIENTS);
}

function coefficients(species: SpeciesData, temperatureK: number): readonly number[] {
  return temperatureK > MIDDLE_K ? species.high : species.low;
}

function capacityShare(a: readonly number[], t: number): number {
  const [a1 = 0, a2 = 0, a3 = 0, a4 = 0, a5 = 0] = a;
  return a1 + t * (a2 + t * (a3 + t * (a4 + t * a5)));
}

function enthalpyShare(a: readonly number[], t: number): number {
  const [a1 = 0, a2 = 0, a3 = 0, a4 = 0, a5 = 0, a6 = 0] = a;
  return a1 + t * (a2 / 2 + t * (a3 / 3 + t * (a4 / 4 + (t * a5) / 5))) + a6 / t;
}

function entropyShare(a: readonly number[], t: number, logT: number): number {
  const [a1 = 0, a2 = 0, a3 = 0, a4 = 0, a5 = 0, , a7 = 0] = a;
  return a1 * logT + t * (a2 + t * (a3 / 2 + t * (a4 / 3 + (t * a5) / 4))) + a7;
}
