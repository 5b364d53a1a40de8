/** What combustion needs to know of a fuel gas. Mutable, because gas quality may change. */
export interface FuelProperties {
  molarMassKgMol: number;
  /** Lower heating value, J/kg. */
  lowerHeatingJKg: number;
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
const WATER_LATENT_J_MOL = 44408;
const CARBON_KG_MOL = 0.012011;
const HYDROGEN_KG_MOL = 0.001008;
const NITROGEN_KG_MOL = 0.0280134;

/**
 * Methane in dry air. Heating value ISO 6976 at 25 °C; limits Zabetakis, Bureau of Mines Bulletin
 * 627; burning velocity a handbook value, ± 0.03 m/s.
 */
export const METHANE: Readonly<FuelProperties> = {
  molarMassKgMol: 0.01604246,
  lowerHeatingJKg: 50.0265e6,
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
  readonly stoichiometricAirMassRatio: number;
  readonly stoichiometricAirVolumeRatio: number;
  readonly lowerFlammabilityLimit: number;
  readonly upperFlammabilityLimit: number;
}

/**
 * Combustion properties from the figures of a mixture.
 *
 * Equation: water from the gap between the heating values (44 408 J/mol at 15 °C), carbon dioxide
 *   from the oxygen left, inert gas from the mass left, reckoned as nitrogen.
 * Valid for: hydrocarbons and hydrogen with some inert gas; no oxygen in the fuel.
 * Source: atom balance; latent heat ISO 6976.
 *
 * @param burningVelocityMS highest laminar burning velocity: not a molar sum, so it must be given
 */
export function describeFuel(
  mixture: MixtureFigures,
  burningVelocityMS: number = METHANE.burningVelocityMS,
): FuelProperties {
  const molarMass = mixture.molarMassKgMol;
  const air = mixture.stoichiometricAirVolumeRatio;
  const latent = mixture.higherHeatingValueJKg - mixture.lowerHeatingValueJKg;
  const water = (latent * molarMass) / WATER_LATENT_J_MOL;
  const carbon = OXYGEN_IN_AIR * air - water / 2;
  const inertMass = molarMass - carbon * CARBON_KG_MOL - 2 * water * HYDROGEN_KG_MOL;
  const inert = Math.max(0, inertMass / NITROGEN_KG_MOL);
  const dry = (1 - OXYGEN_IN_AIR) * air + carbon + inert;
  return {
    molarMassKgMol: molarMass,
    lowerHeatingJKg: mixture.lowerHeatingValueJKg,
    airPerFuelKgKg: mixture.stoichiometricAirMassRatio,
    airPerFuelMol: air,
    productsPerFuelMol: dry + water,
    dryProductsPerFuelMol: dry,
    lowerLimit: mixture.lowerFlammabilityLimit,
    upperLimit: mixture.upperFlammabilityLimit,
    burningVelocityMS,
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
