/** What combustion needs to know of a fuel gas. Mutable, because gas quality may change. */
export interface FuelProperties {
  molarMassKgMol: number;
  /** Heating values, J/kg. */
  lowerHeatingJKg: number;
  higherHeatingJKg: number;
  /** Atoms in one mol. */
  carbonMol: number;
  hydrogenMol: number;
  oxygenMol: number;
  nitrogenMol: number;
  /** Air for just complete burning, kg/kg and mol/mol. */
  airPerFuelKgKg: number;
  airPerFuelMol: number;
  /** Products of that, wet and dry, mol per mol of fuel. */
  productsPerFuelMol: number;
  dryProductsPerFuelMol: number;
  /** Flammability limits in air, by volume. */
  lowerLimit: number;
  upperLimit: number;
  /** Highest laminar burning velocity in air of 25 °C, m/s. */
  burningVelocityMS: number;
}

const OXYGEN_IN_AIR = 0.20946;

/**
 * Methane in dry air. Heating values ISO 6976 at 25 °C; limits Zabetakis, Bureau of Mines Bulletin
 * 627; burning velocity a handbook value, ± 0.03 m/s.
 */
export const METHANE: Readonly<FuelProperties> = {
  molarMassKgMol: 0.01604246,
  lowerHeatingJKg: 50.0265e6,
  higherHeatingJKg: 55.5139e6,
  carbonMol: 1,
  hydrogenMol: 4,
  oxygenMol: 0,
  nitrogenMol: 0,
  airPerFuelKgKg: 17.2396,
  airPerFuelMol: 9.5484,
  productsPerFuelMol: 10.5484,
  dryProductsPerFuelMol: 8.5484,
  lowerLimit: 0.05,
  upperLimit: 0.15,
  burningVelocityMS: 0.37,
};

/** What a description of a gas mixture must say for describeFuel. */
export interface MixtureFigures {
  readonly molarMassKgMol: number;
  readonly higherHeatingValueJKg: number;
  readonly lowerHeatingValueJKg: number;
  readonly carbonMol: number;
  readonly hydrogenMol: number;
  readonly oxygenMol: number;
  readonly nitrogenMol: number;
  readonly stoichiometricAirMassRatio: number;
  readonly stoichiometricAirVolumeRatio: number;
  readonly lowerFlammabilityLimit: number;
  readonly upperFlammabilityLimit: number;
  readonly burningVelocityMS: number;
}

/** Combustion properties from the figures of a mixture; products by the balance of its atoms. */
export function describeFuel(mixture: MixtureFigures): FuelProperties {
  const { carbonMol, hydrogenMol, oxygenMol, nitrogenMol } = mixture;
  const air = mixture.stoichiometricAirVolumeRatio;
  const dry = (1 - OXYGEN_IN_AIR) * air + carbonMol + nitrogenMol / 2;
  return {
    molarMassKgMol: mixture.molarMassKgMol,
    lowerHeatingJKg: mixture.lowerHeatingValueJKg,
    higherHeatingJKg: mixture.higherHeatingValueJKg,
    carbonMol,
    hydrogenMol,
    oxygenMol,
    nitrogenMol,
    airPerFuelKgKg: mixture.stoichiometricAirMassRatio,
    airPerFuelMol: air,
    productsPerFuelMol: dry + hydrogenMol / 2,
    dryProductsPerFuelMol: dry,
    lowerLimit: mixture.lowerFlammabilityLimit,
    upperLimit: mixture.upperFlammabilityLimit,
    burningVelocityMS: mixture.burningVelocityMS,
  };
}

/** Molar mass of the products of just complete burning, kg/mol. */
export function productsMolarMass(fuel: FuelProperties): number {
  return (fuel.molarMassKgMol * (1 + fuel.airPerFuelKgKg)) / fuel.productsPerFuelMol;
}

/** Equivalence ratio of a mixture with the given share of fuel by volume. */
export function equivalenceOf(volumeShare: number, fuel: FuelProperties): number {
  return (volumeShare / (1 - volumeShare)) * fuel.airPerFuelMol;
}
