import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeMixture, type MixtureParameters } from '../../../src/plant/gas/index.ts';

const SEED = 20270;
const EMPTY: MixtureParameters = {
  methane: 0,
  ethane: 0,
  propane: 0,
  butane: 0,
  hydrogen: 0,
  nitrogen: 0,
  carbonDioxide: 0,
};

/**
 * Reference rows: combustion.json, fuels (ISO 6976 and own computation). Its molar heating values are
 * for combustion at 25 °C; ours are for 15 °C.
 */
const FUELS = [
  {
    name: 'methane',
    M: 16.04246,
    air: 9.5484,
    airMass: 17.2396,
    hhv: 55.5139,
    lhv: 50.0265,
    d: 0.5539,
    wobbe: 50.61,
    limits: [0.05, 0.15],
  },
  {
    name: 'ethane',
    M: 30.06904,
    air: 16.7096,
    airMass: 16.0959,
    hhv: 51.9036,
    lhv: 47.5121,
    d: 1.0381,
    wobbe: 64.782,
    limits: [0.03, 0.125],
  },
  {
    name: 'propane',
    M: 44.09562,
    air: 23.8709,
    airMass: 15.6799,
    hhv: 50.3263,
    lhv: 46.3335,
    d: 1.5224,
    wobbe: 76.066,
    limits: [0.021, 0.095],
  },
  {
    name: 'butane',
    M: 58.1222,
    air: 31.0322,
    airMass: 15.4646,
    hhv: 49.506,
    lhv: 45.7195,
    d: 2.0067,
    wobbe: 85.907,
    limits: [0.018, 0.084],
  },
  {
    name: 'hydrogen',
    M: 2.01588,
    air: 2.3871,
    airMass: 34.2984,
    hhv: 141.7892,
    lhv: 119.9546,
    d: 0.0696,
    wobbe: 45.822,
    limits: [0.04, 0.75],
  },
] as const;

describe('describeMixture', () => {
  it.each(FUELS)('gives the reference properties of pure $name', (row) => {
    const gas = describeMixture({ ...EMPTY, [row.name]: 1 });
    const relative = (value: number, truth: number) => Math.abs(value / truth - 1);
    expect(relative(gas.molarMassKgMol * 1000, row.M)).toBeLessThan(1e-6);
    // Reference tolerance 1e-3; the table's rounding of 0.0696 is 7e-4.
    expect(relative(gas.relativeDensity, row.d)).toBeLessThan(1e-3);
    expect(relative(gas.stoichiometricAirVolumeRatio, row.air)).toBeLessThan(1e-4);
    expect(relative(gas.stoichiometricAirMassRatio, row.airMass)).toBeLessThan(1e-4);
    expect(relative(gas.lowerHeatingValueJKg / 1e6, row.lhv)).toBeLessThan(1e-3);
    // The gross value rises by up to 1.2e-3 from 25 °C to 15 °C (Kirchhoff, water condenses).
    expect(relative(gas.higherHeatingValueJKg / 1e6, row.hhv)).toBeLessThan(1.3e-3);
    expect(relative(gas.wobbeIndexJM3 / 1e6, row.wobbe)).toBeLessThan(1.5e-3);
    expect(gas.lowerFlammabilityLimit).toBeCloseTo(row.limits[0], 12);
    expect(gas.upperFlammabilityLimit).toBeCloseTo(row.limits[1], 12);
  });

  it.each([
    ['methane', 1.304],
    ['propane', 1.13],
  ] as const)(
    'gives the heat capacity ratio of %s (gas_train.json, critical_ratio)',
    (name, gamma) => {
      // The reference is rounded to three or four figures.
      expect(
        Math.abs(describeMixture({ ...EMPTY, [name]: 1 }).heatCapacityRatio - gamma),
      ).toBeLessThan(3e-3);
    },
  );

  it('gives methane 9.4289 kWh/m³ net at 15 °C (gas_train.json, valve_proving)', () => {
    const gas = describeMixture({ ...EMPTY, methane: 1 });
    expect((gas.lowerHeatingValueJKg * gas.densityKgM3) / 3.6e6 / 9.4289).toBeCloseTo(1, 3);
  });

  it('adds inert gas as dilution: limits and heating value per volume fall and rise as they should', () => {
    const pure = describeMixture({ ...EMPTY, methane: 1 });
    const lean = describeMixture({ ...EMPTY, methane: 0.8, nitrogen: 0.2 });
    expect(lean.lowerFlammabilityLimit).toBeCloseTo(pure.lowerFlammabilityLimit / 0.8, 12);
    expect(lean.stoichiometricAirVolumeRatio).toBeCloseTo(
      0.8 * pure.stoichiometricAirVolumeRatio,
      12,
    );
    expect(lean.wobbeIndexJM3).toBeLessThan(0.8 * pure.wobbeIndexJM3);
  });

  it('counts the atoms of fuels and of inert gas', () => {
    const gas = describeMixture({
      ...EMPTY,
      methane: 0.5,
      propane: 0.2,
      hydrogen: 0.1,
      nitrogen: 0.1,
      carbonDioxide: 0.1,
    });
    expect(gas.carbonMol).toBeCloseTo(0.5 + 3 * 0.2 + 0.1, 12);
    expect(gas.hydrogenMol).toBeCloseTo(4 * 0.5 + 8 * 0.2 + 2 * 0.1, 12);
    expect(gas.oxygenMol).toBeCloseTo(0.2, 12);
    expect(gas.nitrogenMol).toBeCloseTo(0.2, 12);
    const mass =
      12.0107 * gas.carbonMol +
      1.00794 * gas.hydrogenMol +
      15.9994 * gas.oxygenMol +
      14.0067 * gas.nitrogenMol;
    expect(Math.abs(mass / (1000 * gas.molarMassKgMol) - 1)).toBeLessThan(1e-4);
  });

  it('burns faster with hydrogen and slower with inert gas', () => {
    // Handbook, combustion.json: 0.37 m/s and 2.9 m/s at their best mixtures.
    const velocity = (hydrogen: number, carbonDioxide = 0) =>
      describeMixture({ ...EMPTY, methane: 1 - hydrogen - carbonDioxide, hydrogen, carbonDioxide })
        .burningVelocityMS;
    expect(velocity(0)).toBeCloseTo(0.37, 12);
    expect(velocity(1)).toBeCloseTo(2.9, 12);
    // Blends stay near methane for long: measured 0.42 to 0.46 m/s with a fifth of hydrogen.
    expect(velocity(0.2)).toBeGreaterThan(0.42);
    expect(velocity(0.2)).toBeLessThan(0.46);
    expect(velocity(0, 0.4)).toBeLessThan(0.7 * velocity(0));
    expect(describeMixture({ ...EMPTY, nitrogen: 1 }).burningVelocityMS).toBe(0);
  });

  it('does not mind fractions in per cent, and refuses a mixture of nothing', () => {
    const gas = { ...EMPTY, methane: 0.9, propane: 0.06, carbonDioxide: 0.04 };
    const inPerCent = { ...EMPTY, methane: 90, propane: 6, carbonDioxide: 4 };
    expect(describeMixture(inPerCent).wobbeIndexJM3).toBeCloseTo(
      describeMixture(gas).wobbeIndexJM3,
      3,
    );
    expect(() => describeMixture(EMPTY)).toThrow(RangeError);
    expect(describeMixture({ ...EMPTY, nitrogen: 1 }).lowerFlammabilityLimit).toBe(0);
  });

  it('keeps every property between those of its parts', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(share, share, share, (methane, propane, hydrogen) => {
        if (methane + propane + hydrogen < 1e-6) return;
        const gas = describeMixture({ ...EMPTY, methane, propane, hydrogen });
        const parts = (['methane', 'propane', 'hydrogen'] as const).map((name) =>
          describeMixture({ ...EMPTY, [name]: 1 }),
        );
        for (const key of [
          'molarMassKgMol',
          'lowerHeatingValueJKg',
          'lowerFlammabilityLimit',
          'upperFlammabilityLimit',
          'heatCapacityRatio',
          'stoichiometricAirMassRatio',
        ] as const) {
          const values = parts.map((part) => part[key]);
          expect(gas[key]).toBeGreaterThanOrEqual(Math.min(...values) * (1 - 1e-12));
          expect(gas[key]).toBeLessThanOrEqual(Math.max(...values) * (1 + 1e-12));
        }
      }),
      { seed: SEED },
    );
  });
});
