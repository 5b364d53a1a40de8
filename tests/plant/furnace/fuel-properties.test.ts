import { expect, it } from 'vitest';
import {
  describeFuel,
  equivalenceOf,
  METHANE,
  productsMolarMass,
} from '../../../src/plant/furnace/index.ts';

it('describes methane from the figures of a mixture', () => {
  const fuel = describeFuel({
    molarMassKgMol: 0.01604246,
    higherHeatingValueJKg: 891510 / 0.01604246,
    lowerHeatingValueJKg: (891510 - 2 * 44408) / 0.01604246,
    stoichiometricAirMassRatio: 17.2396,
    stoichiometricAirVolumeRatio: 9.5484,
    lowerFlammabilityLimit: 0.05,
    upperFlammabilityLimit: 0.15,
    carbonMol: 1,
    hydrogenMol: 4,
    oxygenMol: 0,
    nitrogenMol: 0,
    burningVelocityMS: 0.37,
  });
  // Wet and dry flue gas of methane, own computation from the atom balance; 1e-3 relative.
  expect(Math.abs(fuel.productsPerFuelMol / 10.5484 - 1)).toBeLessThan(1e-3);
  expect(Math.abs(fuel.dryProductsPerFuelMol / 8.5484 - 1)).toBeLessThan(1e-3);
  expect(fuel.burningVelocityMS).toBe(METHANE.burningVelocityMS);
});

it('counts inert gas in a mixture into the flue', () => {
  // Half methane, half nitrogen by volume, per mol of mixture.
  const molarMass = (0.01604246 + 0.0280134) / 2;
  const fuel = describeFuel({
    molarMassKgMol: molarMass,
    higherHeatingValueJKg: 891510 / 2 / molarMass,
    lowerHeatingValueJKg: (891510 - 2 * 44408) / 2 / molarMass,
    stoichiometricAirMassRatio: (17.2396 * 0.01604246) / 2 / molarMass,
    stoichiometricAirVolumeRatio: 9.5484 / 2,
    lowerFlammabilityLimit: 0.1,
    upperFlammabilityLimit: 0.3,
    carbonMol: 0.5,
    hydrogenMol: 2,
    oxygenMol: 0,
    nitrogenMol: 1,
    burningVelocityMS: 0.3,
  });
  expect(fuel.dryProductsPerFuelMol).toBeCloseTo(8.5484 / 2 + 0.5, 2);
});

it('puts the limits of methane at their equivalence ratios', () => {
  expect(equivalenceOf(0.05, METHANE)).toBeCloseTo(0.5025, 3);
  expect(equivalenceOf(0.15, METHANE)).toBeCloseTo(1.685, 3);
  // Burnt methane: 292.6 g of reactants in 10.548 mol.
  expect(productsMolarMass(METHANE)).toBeCloseTo(0.02774, 5);
});
