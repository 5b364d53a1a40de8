import { describe, expect, it } from 'vitest';
import {
  adiabaticTemperature,
  atomsOf,
  type BurnableGas,
  buildGasHeatTable,
  equilibrateAt,
  formationHeat,
  readGasHeat,
} from '../../../src/plant/combustion/index.ts';

const AIR_KG_MOL = 0.0289647;
const METHANE: BurnableGas = {
  carbonMol: 1,
  hydrogenMol: 4,
  oxygenMol: 0,
  nitrogenMol: 0,
  molarMassKgMol: 0.01604246,
  lowerHeatingJKg: 50.0265e6,
};
/** A fifth of hydrogen by volume in methane. */
const BLEND: BurnableGas = {
  carbonMol: 0.8,
  hydrogenMol: 3.6,
  oxygenMol: 0,
  nitrogenMol: 0,
  molarMassKgMol: 0.0132371,
  lowerHeatingJKg: (0.8 * 802560 + 0.2 * 241820) / 0.0132371,
};

describe.each([
  ['methane', METHANE],
  ['a hydrogen blend', BLEND],
] as const)('enthalpy of burnt gas of %s', (_name, fuel) => {
  const table = buildGasHeatTable(fuel, AIR_KG_MOL, 101325);
  const found = { heatJKg: 0, capacityJKgK: 0 };
  const air = (fuel.carbonMol + fuel.hydrogenMol / 4) / 0.20946;
  const productKg = fuel.molarMassKgMol + air * AIR_KG_MOL;

  it('is that of the solver between its points: within 1e-3 below 2000 K', () => {
    for (const kelvin of [1512.5, 1637.5, 1812.5, 2012.5, 2190]) {
      for (const share of [0.55, 0.7, 0.8, 0.9, 1]) {
        const fuelMol = share / productKg;
        const atoms = atomsOf(fuel, fuelMol, (1 - share) / AIR_KG_MOL + fuelMol * air);
        const formed = fuelMol * (formationHeat(fuel) - fuel.lowerHeatingJKg * fuel.molarMassKgMol);
        const exact = equilibrateAt(atoms, kelvin, 101325).enthalpyJ - formed;
        readGasHeat(table, kelvin, share, found);
        // Between eighths of burnt gas dissociation bends most just below pure burnt gas, above
        // 2000 K; a furnace is below 1600 K.
        const allowed = kelvin > 2000 && share > 0.875 ? 6e-3 : kelvin > 2000 ? 1.5e-3 : 1e-3;
        expect(Math.abs(found.heatJKg / exact - 1)).toBeLessThan(allowed);
      }
    }
  });

  it.each([
    [0.6, 2],
    [0.75, 2],
    [0.85, 4],
    [1, 2],
  ])('gives the adiabatic flame at φ = %d to %d K', (phi, allowedK) => {
    const share = (phi * productKg) / (phi * fuel.molarMassKgMol + air * AIR_KG_MOL);
    const released =
      (phi * fuel.molarMassKgMol * fuel.lowerHeatingJKg) /
      (phi * fuel.molarMassKgMol + air * AIR_KG_MOL);
    let kelvin = 2000;
    for (let i = 0; i < 30; i++) {
      readGasHeat(table, kelvin, share, found);
      kelvin += (released - found.heatJKg) / found.capacityJKgK;
    }
    expect(Math.abs(kelvin - adiabaticTemperature(fuel, phi, 101325))).toBeLessThan(allowedK);
  });
});
