import { expect, it } from 'vitest';
import {
  equilibrateAt,
  growNitricOxide,
  type NitricSurroundings,
  nitricOxideRate,
  SPECIES,
} from '../../../src/plant/combustion/index.ts';
import { NITRIC_GROWTH, NITRIC_RATES } from './flame-rows.ts';
import { reactants } from './reactants.ts';

function surroundings(phi: number, kelvin: number): NitricSurroundings {
  const gas = equilibrateAt(reactants('CH4', phi, '3.76', 298.15).atoms, kelvin, 101325);
  const share = (name: string) =>
    (gas.mol[SPECIES.findIndex((species) => species.name === name)] as number) / gas.totalMol;
  return {
    temperatureK: kelvin,
    pressurePa: 101325,
    oxygenAtom: share('O'),
    oxygen: share('O2'),
    nitrogen: share('N2'),
    hydroxyl: share('OH'),
    nitricOxide: share('NO'),
  };
}

it.each(NITRIC_RATES)('starts to form at the reference rate at φ = $phi', (row) => {
  const rate = 1e6 * nitricOxideRate(surroundings(row.phi, row.kelvin), 0);
  // The rate constants are the same; 1e-3 is the rounding of the temperature.
  expect(Math.abs(rate / row.ppmPerS - 1)).toBeLessThan(1e-3);
});

// Stated tolerance: 10 %. The reference steps further past equilibrium than ours lets it.
it.each(NITRIC_GROWTH)('grows as in the reference at φ = $phi and $kelvin K', (row) => {
  const at = surroundings(row.phi, row.kelvin);
  row.seconds.forEach((seconds, i) => {
    const ppm = 1e6 * growNitricOxide(at, seconds);
    expect(Math.abs(ppm / (row.ppm[i] as number) - 1)).toBeLessThan(0.1);
  });
});

it('comes to equilibrium and no further', () => {
  const at = surroundings(0.9, 2133.15);
  expect(growNitricOxide(at, 20) / at.nitricOxide).toBeCloseTo(1, 3);
  expect(growNitricOxide(at, 0)).toBe(0);
});
