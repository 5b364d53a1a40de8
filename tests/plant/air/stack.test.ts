import { expect, it } from 'vitest';
import { gasDensity, stackDraught } from '../../../src/plant/air/index.ts';

// Hydrostatic draught, flue gas of 27.7 g/mol, air of 15 °C at 101.325 kPa; to 1e-4.
it.each([
  [10, 120, 35.928],
  [10, 180, 47.077],
  [10, 240, 55.619],
  [20, 120, 71.856],
  [20, 240, 111.238],
])('a stack of %d m with gas of %d °C pulls %d Pa', (heightM, gasC, draughtPa) => {
  const gas = gasDensity(101325, gasC + 273.15, 0.0277);
  expect(Math.abs(stackDraught(heightM, 1.22499, gas) / draughtPa - 1)).toBeLessThan(1e-4);
});
