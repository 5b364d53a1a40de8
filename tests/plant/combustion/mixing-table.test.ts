import { describe, expect, it } from 'vitest';
import {
  type BurnableGas,
  buildMixingTable,
  burnPocket,
  type FlameZone,
  readMixingTable,
} from '../../../src/plant/combustion/index.ts';

const METHANE: BurnableGas = {
  carbonMol: 1,
  hydrogenMol: 4,
  oxygenMol: 0,
  nitrogenMol: 0,
  molarMassKgMol: 0.01604246,
  lowerHeatingJKg: 50.0265e6,
};
const PROPANE: BurnableGas = {
  carbonMol: 3,
  hydrogenMol: 8,
  oxygenMol: 0,
  nitrogenMol: 0,
  molarMassKgMol: 0.04409562,
  lowerHeatingJKg: 46.3335e6,
};
const HYDROGEN: BurnableGas = {
  carbonMol: 0,
  hydrogenMol: 2,
  oxygenMol: 0,
  nitrogenMol: 0,
  molarMassKgMol: 0.00201588,
  lowerHeatingJKg: 119.9546e6,
};
const ZONE: FlameZone = { intakeK: 293.15, pressurePa: 101325, heatLossShare: 0.045, timeS: 0.05 };

const methane = buildMixingTable(METHANE, ZONE);
const products = { unfinishedShare: 0, nitricMolKg: 0 };

/** CO in dry flue gas, and NO at 3 % O₂, in ppm, of methane with so much air over just enough. */
function flueOf(air: number, spread: number): { monoxide: number; nitric: number } {
  readMixingTable(methane, 1 / air, spread, products);
  const dry = 8.5484 + (air - 1) * 9.5484;
  const oxygen = (2 * (air - 1)) / dry;
  const nitric = (1e6 * products.nitricMolKg * 0.01604246) / dry;
  return {
    monoxide: (1e6 * products.unfinishedShare * 4 * methane.monoxideShare) / dry,
    nitric: (nitric * (0.20946 - 0.03)) / (0.20946 - oxygen),
  };
}

describe('averages over the pockets', () => {
  // Simpson's rule over 400 pockets that the solver burns one by one.
  it.each([
    [0.8467, 0.0512],
    [0.9113, 0.0637],
    [0.9731, 0.0463],
    [1.0379, 0.0788],
  ])('at φ = %d and a spread of %d are those of the solver', (phi, spread) => {
    const count = 400;
    let weights = 0;
    let unfinished = 0;
    let nitric = 0;
    let near = burnPocket(METHANE, phi * (1 - 4 * spread), ZONE);
    for (let i = 0; i <= count; i++) {
      const z = -4 + (8 * i) / count;
      const weight = (i % 2 === 0 ? 2 : 4) * Math.exp(-0.5 * z * z);
      const equivalence = phi * (1 + spread * z);
      near = burnPocket(METHANE, equivalence, ZONE, near);
      weights += weight;
      unfinished += weight * equivalence * near.flame.unfinished;
      nitric += weight * near.flame.nitricOxide;
    }
    const share = unfinished / weights / phi - Math.max(0, 1 - 1 / phi);
    readMixingTable(methane, phi, spread, products);
    // 4 % of itself and 2 ppm of CO (one ppm is 3e-6 of the fuel).
    expect(Math.abs(products.unfinishedShare - share)).toBeLessThan(0.04 * share + 6e-6);
    const molKg = (nitric / weights / phi) * (2 / 0.20946 / 0.01604246);
    expect(Math.abs(products.nitricMolKg / molKg - 1)).toBeLessThan(0.02);
  });
});

describe('carbon monoxide', () => {
  it('has a knee: some ten ppm with plenty of air, hundreds below a tenth more than enough', () => {
    const ppm = (air: number) => flueOf(air, 0.05).monoxide;
    expect(ppm(1.2)).toBeLessThan(20);
    expect(ppm(1.15)).toBeLessThan(40);
    expect(ppm(1.1)).toBeGreaterThan(60);
    expect(ppm(1.05)).toBeGreaterThan(600);
    expect(ppm(1)).toBeGreaterThan(3000);
    for (let air = 1; air < 1.2; air += 0.01) expect(ppm(air + 0.01)).toBeLessThan(ppm(air));
  });

  it('comes earlier the worse the mixing', () => {
    for (const air of [1.05, 1.1, 1.15, 1.2]) {
      expect(flueOf(air, 0.08).monoxide).toBeGreaterThan(flueOf(air, 0.05).monoxide);
    }
    expect(flueOf(1.15, 0.12).monoxide).toBeGreaterThan(500);
  });

  it('comes back where lean pockets quench', () => {
    expect(flueOf(2.4, 0.06).monoxide).toBeGreaterThan(20 * flueOf(1.5, 0.06).monoxide);
  });

  it('is none from hydrogen', () => {
    expect(buildMixingTable(HYDROGEN, ZONE).monoxideShare).toBe(0);
  });
});

describe('nitric oxide', () => {
  it('is that of a packaged burner, 20 to 120 ppm at 3 % O₂, from a tenth to a quarter more air', () => {
    for (const air of [1.1, 1.15, 1.2]) {
      for (const spread of [0.05, 0.08]) {
        const { nitric } = flueOf(air, spread);
        expect(nitric).toBeGreaterThan(20);
        expect(nitric).toBeLessThan(120);
      }
    }
  });

  it('is more with warmer air, and from fuels whose flame is hotter', () => {
    const at = (fuel: BurnableGas, zone: FlameZone) => {
      const table = buildMixingTable(fuel, zone);
      readMixingTable(table, 0.85, 0.05, products);
      return (products.nitricMolKg / fuel.lowerHeatingJKg) * 1e12;
    };
    const cold = at(METHANE, ZONE);
    expect(at(METHANE, { ...ZONE, intakeK: 473.15 })).toBeGreaterThan(1.5 * cold);
    expect(at(PROPANE, ZONE)).toBeGreaterThan(cold);
  });
});
