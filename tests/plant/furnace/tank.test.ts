import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createTank,
  stepTank,
  type TankState,
  tankMass,
} from '../../../src/plant/furnace/index.ts';

const AMOUNTS = { fuelMolKg: 1 / 0.01604, airMolKg: 1 / 0.02896, productMolKg: 1 / 0.02774 };
const CAPACITY_MOL = 250;
const STEP_S = 0.01;

function filled(fuelShare: number, bypassShare: number): TankState {
  const tank = createTank();
  tank.fuelKg = (fuelShare * CAPACITY_MOL) / AMOUNTS.fuelMolKg;
  tank.airKg = ((1 - fuelShare) * CAPACITY_MOL) / AMOUNTS.airMolKg;
  tank.capacityMol = CAPACITY_MOL;
  tank.bypassShare = bypassShare;
  return tank;
}

function purge(tank: TankState, changes: number, changesPerS: number): void {
  const steps = Math.round(changes / (changesPerS * STEP_S));
  tank.inAirKg = (changesPerS * STEP_S * CAPACITY_MOL) / AMOUNTS.airMolKg;
  for (let i = 0; i < steps; i++) stepTank(tank, AMOUNTS);
}

describe('stirred tank', () => {
  // exp(−N), and exp(−0.8 N) with a fifth passing by; the trapezoidal rule is off by N·a²/12
  // of the value, below 1e-5 here.
  it.each([
    [1, 0.367879, 0.449329],
    [2, 0.135335, 0.201897],
    [4, 0.0183156, 0.0407622],
    [5, 0.00673795, 0.0183156],
    [8, 0.000335463, 0.00166156],
    [10, 4.53999e-5, 0.000335463],
  ])(
    'after %d air changes keeps %d of its gas, with a fifth by-passed %d',
    (changes, all, some) => {
      for (const [bypass, left] of [
        [0, all],
        [0.2, some],
      ] as const) {
        const tank = filled(0.095, bypass);
        const before = tank.fuelKg;
        purge(tank, changes, 0.2);
        expect(Math.abs(tank.fuelKg / before / left - 1)).toBeLessThan(2e-5);
      }
    },
  );

  // Volume, flow, changes, time and what is left of a stoichiometric mixture, in per cent.
  it.each([
    [6, 1.2, 4, 20, 0.174],
    [6, 0.84, 4, 28.571, 0.174],
    [20, 1.5, 8, 106.667, 0.00319],
    [20, 1.5, 5, 66.667, 0.06401],
  ])(
    'of %d m³ with %d m³/s has %d changes in %d s and keeps %d %%',
    (volume, flow, changes, time, left) => {
      const tank = filled(0.095, 0);
      tank.inAirKg = ((flow / volume) * STEP_S * CAPACITY_MOL) / AMOUNTS.airMolKg;
      for (let i = 0; i < Math.round(time / STEP_S); i++) stepTank(tank, AMOUNTS);
      expect(Math.round(time / STEP_S) * STEP_S * (flow / volume)).toBeCloseTo(changes, 2);
      const share = (100 * tank.fuelKg * AMOUNTS.fuelMolKg) / CAPACITY_MOL;
      // Three digits in the table.
      expect(Math.abs(share / left - 1)).toBeLessThan(2e-3);
    },
  );

  it('conserves each species and keeps to its capacity, whatever comes in', () => {
    const kg = fc.double({ min: 0, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(
        kg,
        kg,
        kg,
        fc.double({ min: 0, max: 0.5, noNaN: true }),
        fc.double({ min: 50, max: 400, noNaN: true }),
        (fuel, air, product, bypass, capacity) => {
          const tank = filled(0.3, bypass);
          tank.productKg = 1;
          const before = { ...tank };
          tank.inFuelKg = fuel;
          tank.inAirKg = air;
          tank.inProductKg = product;
          tank.capacityMol = capacity;
          stepTank(tank, AMOUNTS);
          expect(tank.fuelKg + tank.outFuelKg).toBeCloseTo(before.fuelKg + fuel, 12);
          expect(tank.airKg + tank.outAirKg).toBeCloseTo(before.airKg + air, 12);
          expect(tank.productKg + tank.outProductKg).toBeCloseTo(before.productKg + product, 12);
          expect(Math.min(tank.fuelKg, tank.airKg, tank.productKg)).toBeGreaterThanOrEqual(0);
          const held =
            tank.fuelKg * AMOUNTS.fuelMolKg +
            tank.airKg * AMOUNTS.airMolKg +
            tank.productKg * AMOUNTS.productMolKg;
          expect(held + tank.lackMol).toBeCloseTo(capacity, 9);
          expect(tankMass(tank)).toBeGreaterThan(0);
        },
      ),
      { seed: 31 },
    );
  });
});
