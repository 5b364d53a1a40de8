import { expect, it } from 'vitest';
import {
  enthalpy,
  entropy,
  findSpecies,
  heatCapacity,
} from '../../../src/plant/combustion/index.ts';
import { ROWS, TEMPERATURES_K } from './thermo-rows.ts';

// The table's tolerance against another data set is 0.2 % and 150 J/mol; ours are the same
// polynomials but for butane, so a wrong digit shows at a tenth of it.
it.each(Object.entries(ROWS))('%s has the heat and entropy of the reference table', (name, row) => {
  const species = findSpecies(name);
  TEMPERATURES_K.forEach((kelvin, i) => {
    expect(Math.abs(heatCapacity(species, kelvin) / (row.cp[i] as number) - 1)).toBeLessThan(2e-4);
    expect(Math.abs(enthalpy(species, kelvin) - (row.h[i] as number))).toBeLessThan(2);
    expect(Math.abs(entropy(species, kelvin) / (row.s[i] as number) - 1)).toBeLessThan(2e-5);
  });
});

it('takes argon for a gas of atoms: 5/2 R at any temperature', () => {
  for (const kelvin of [298.15, 900, 2500]) {
    expect(heatCapacity(findSpecies('Ar'), kelvin) / 8.314462618).toBeCloseTo(2.5, 12);
  }
  expect(Math.abs(enthalpy(findSpecies('Ar'), 298.15))).toBeLessThan(1);
  // CODATA: 154.85 J/(mol·K) at 1 bar, 154.74 at 1 atm.
  expect(entropy(findSpecies('Ar'), 298.15)).toBeCloseTo(154.74, 1);
});
