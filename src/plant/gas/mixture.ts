import { number, type ParameterTable, type Values } from '../../quantity/index.ts';

/** Mole fractions of the fuel gas. They are scaled to a sum of 1 when read. */
export const mixtureParameters = {
  methane: number('1', 0, 1, 'mole fraction of CH4', 0),
  ethane: number('1', 0, 1, 'mole fraction of C2H6', 0),
  propane: number('1', 0, 1, 'mole fraction of C3H8', 0),
  butane: number('1', 0, 1, 'mole fraction of C4H10, reckoned as n-butane', 0),
  hydrogen: number('1', 0, 1, 'mole fraction of H2', 0),
  nitrogen: number('1', 0, 1, 'mole fraction of N2', 0),
  carbonDioxide: number('1', 0, 1, 'mole fraction of CO2', 0),
} as const satisfies ParameterTable;
export type MixtureParameters = Values<typeof mixtureParameters>;

/** What follows from a composition. Reference state: 288.15 K (15 °C) and 101325 Pa. */
export interface MixtureProperties {
  readonly molarMassKgMol: number;
  /** R / M, J/(kg·K). */
  readonly gasConstantJKgK: number;
  readonly densityKgM3: number;
  /** Density over that of dry air in the same state. */
  readonly relativeDensity: number;
  readonly higherHeatingValueJKg: number;
  readonly lowerHeatingValueJKg: number;
  /** Higher heating value per m³ over the root of the relative density. */
  readonly wobbeIndexJM3: number;
  /** kg of dry air for complete combustion of 1 kg. */
  readonly stoichiometricAirMassRatio: number;
  /** m³ of dry air for complete combustion of 1 m³. */
  readonly stoichiometricAirVolumeRatio: number;
  /** Volume fraction in air; 0 when nothing in the mixture burns. */
  readonly lowerFlammabilityLimit: number;
  readonly upperFlammabilityLimit: number;
  readonly heatCapacityRatio: number;
  /** Atoms in one mol of the mixture, its inert gas included. */
  readonly carbonMol: number;
  readonly hydrogenMol: number;
  readonly oxygenMol: number;
  readonly nitrogenMol: number;
  /** Highest laminar burning velocity in air of 25 °C, m/s; 0 when nothing burns. */
  readonly burningVelocityMS: number;
}

export const MOLAR_GAS_CONSTANT_J_MOL_K = 8.314462618;
export const REFERENCE_TEMPERATURE_K = 288.15;
export const REFERENCE_PRESSURE_PA = 101325;

/** Dry air, ISO 6976:2016; oxygen fraction of the 1976 standard atmosphere. */
const AIR_MOLAR_MASS_KG_MOL = 28.96546e-3;
const AIR_OXYGEN_FRACTION = 0.20946;
/** Enthalpy of vaporisation of water at 15 °C, ISO 6976:2016. */
const WATER_VAPORISATION_J_MOL = 44408;

interface Component {
  readonly molarMassKgMol: number;
  /** Gross, combustion at 15 °C. */
  readonly heatingValueJMol: number;
  readonly waterMol: number;
  readonly oxygenMol: number;
  readonly carbonMol: number;
  readonly boundOxygenMol: number;
  readonly nitrogenMol: number;
  /** In air, m/s; of an inert gas the share of a mixture's velocity that it takes, times its own share. */
  readonly burningVelocityMS: number;
  /** Ideal gas, 25 °C. */
  readonly heatCapacityJMolK: number;
  /** Volume fractions in air at room temperature; 1 for what does not burn. */
  readonly lowerLimit: number;
  readonly upperLimit: number;
}

/**
 * Molar mass and gross heating value: ISO 6976:2016 tables 1 and 3 (15 °C).
 * Heat capacity: NIST ideal-gas values at 25 °C. Limits and burning velocities: handbooks
 * (Zabetakis, Bulletin 627; Lewis and von Elbe).
 */
const COMPONENTS: Readonly<Record<keyof MixtureParameters, Component>> = {
  methane: fuel(16.04246e-3, 891510, 1, 2, 35.69, 0.05, 0.15, 0.37),
  ethane: fuel(30.06904e-3, 1562140, 2, 3, 52.49, 0.03, 0.125, 0.43),
  propane: fuel(44.09562e-3, 2221100, 3, 4, 73.6, 0.021, 0.095, 0.42),
  butane: fuel(58.1222e-3, 2879760, 4, 5, 98.49, 0.018, 0.084, 0.4),
  hydrogen: fuel(2.01588e-3, 286150, 0, 1, 28.84, 0.04, 0.75, 2.9),
  nitrogen: inert(28.0134e-3, 29.12, 0, 2, 0.35),
  carbonDioxide: inert(44.0095e-3, 37.13, 1, 0, 1),
};
const NAMES = Object.keys(COMPONENTS) as (keyof MixtureParameters)[];

/**
 * Properties of a fuel gas from its composition.
 *
 * Equations: molar sums (molar mass, heating value, air demand, heat capacity);
 * limits by Le Chatelier, 1/L = Σ xᵢ/Lᵢ over what burns, xᵢ of the whole mixture; burning velocity
 * by the same rule over the fuels alone, less a share of it for each inert gas.
 * Valid for: natural gases, LPG, hydrogen blends near room temperature and pressure.
 * Left out: compression factor (0.2 % for methane at 15 °C), what inert gas does to the limits
 * beyond dilution, the change of heat capacity ratio with temperature.
 * Source: ISO 6976:2016, combustion and metering at 15 °C and 101325 Pa; Zabetakis for the limits;
 * burning velocity of blends with hydrogen after V. Di Sarli and A. Di Benedetto, Int. J. Hydrogen
 * Energy 32 (2007) 637, some 10 % at up to half hydrogen; what inert gas takes off is an allowance.
 */
export function describeMixture(mixture: MixtureParameters): MixtureProperties {
  let total = 0;
  for (const name of NAMES) total += mixture[name];
  if (!(total > 0)) throw new RangeError('a gas mixture needs at least one component');
  let molarMass = 0;
  let gross = 0;
  let water = 0;
  let oxygen = 0;
  let heatCapacity = 0;
  let lower = 0;
  let upper = 0;
  let carbon = 0;
  let boundOxygen = 0;
  let nitrogen = 0;
  let burning = 0;
  let slowness = 0;
  let damping = 0;
  for (const name of NAMES) {
    const fraction = mixture[name] / total;
    const component = COMPONENTS[name];
    molarMass += fraction * component.molarMassKgMol;
    gross += fraction * component.heatingValueJMol;
    water += fraction * component.waterMol;
    oxygen += fraction * component.oxygenMol;
    heatCapacity += fraction * component.heatCapacityJMolK;
    carbon += fraction * component.carbonMol;
    boundOxygen += fraction * component.boundOxygenMol;
    nitrogen += fraction * component.nitrogenMol;
    if (component.oxygenMol === 0) {
      damping += fraction * component.burningVelocityMS;
      continue;
    }
    burning += fraction;
    slowness += fraction / component.burningVelocityMS;
    lower += fraction / component.lowerLimit;
    upper += fraction / component.upperLimit;
  }
  const molarVolume =
    (MOLAR_GAS_CONSTANT_J_MOL_K * REFERENCE_TEMPERATURE_K) / REFERENCE_PRESSURE_PA;
  const relativeDensity = molarMass / AIR_MOLAR_MASS_KG_MOL;
  const airVolumeRatio = oxygen / AIR_OXYGEN_FRACTION;
  return {
    molarMassKgMol: molarMass,
    gasConstantJKgK: MOLAR_GAS_CONSTANT_J_MOL_K / molarMass,
    densityKgM3: molarMass / molarVolume,
    relativeDensity,
    higherHeatingValueJKg: gross / molarMass,
    lowerHeatingValueJKg: (gross - water * WATER_VAPORISATION_J_MOL) / molarMass,
    wobbeIndexJM3: gross / molarVolume / Math.sqrt(relativeDensity),
    stoichiometricAirMassRatio: airVolumeRatio / relativeDensity,
    stoichiometricAirVolumeRatio: airVolumeRatio,
    lowerFlammabilityLimit: lower > 0 ? Math.min(1, 1 / lower) : 0,
    upperFlammabilityLimit: upper > 0 ? Math.min(1, 1 / upper) : 0,
    heatCapacityRatio: heatCapacity / (heatCapacity - MOLAR_GAS_CONSTANT_J_MOL_K),
    carbonMol: carbon,
    hydrogenMol: 2 * water,
    oxygenMol: boundOxygen,
    nitrogenMol: nitrogen,
    burningVelocityMS: burning > 0 ? (burning / slowness) * (1 - damping) : 0,
  };
}

function fuel(
  molarMassKgMol: number,
  heatingValueJMol: number,
  carbonMol: number,
  waterMol: number,
  heatCapacityJMolK: number,
  lowerLimit: number,
  upperLimit: number,
  burningVelocityMS: number,
): Component {
  return {
    molarMassKgMol,
    heatingValueJMol,
    waterMol,
    oxygenMol: carbonMol + waterMol / 2,
    carbonMol,
    boundOxygenMol: 0,
    nitrogenMol: 0,
    burningVelocityMS,
    heatCapacityJMolK,
    lowerLimit,
    upperLimit,
  };
}

function inert(
  molarMassKgMol: number,
  heatCapacityJMolK: number,
  carbonMol: number,
  nitrogenMol: number,
  burningVelocityMS: number,
): Component {
  return {
    molarMassKgMol,
    heatingValueJMol: 0,
    waterMol: 0,
    oxygenMol: 0,
    carbonMol,
    boundOxygenMol: 2 * carbonMol,
    nitrogenMol,
    burningVelocityMS,
    heatCapacityJMolK,
    lowerLimit: 1,
    upperLimit: 1,
  };
}
