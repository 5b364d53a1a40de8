import { expect, it } from 'vitest';
import { meanSpecificHeat, passTable, readPassTable } from '../../../src/plant/furnace/index.ts';

// Stack loss of methane over its lower heating value, exact, by air ratio and flue temperature;
// air of 20 °C. The straight line in temperature is good to 2 %.
it.each([
  [1.05, 80, 2.538, 19.1015],
  [1.05, 240, 9.4714, 19.1015],
  [1.15, 120, 4.5968, 20.8255],
  [1.15, 180, 7.4019, 20.8255],
  [1.2, 180, 7.6816, 21.6875],
])('the stack loss at an air ratio of %d and %d °C is %d %%', (ratio, flueC, percent, flueKgKg) => {
  const share = 18.2396 / flueKgKg;
  const heat = meanSpecificHeat(293.15, flueC + 273.15, share);
  const loss = (100 * flueKgKg * heat * (flueC - 20)) / 50.0265e6;
  expect(ratio).toBeGreaterThan(1);
  expect(Math.abs(loss / percent - 1)).toBeLessThan(0.02);
});

it('passes let through more of the temperature the more gas they carry and the fouler they are', () => {
  const clean = passTable(3, 0);
  expect(readPassTable(clean, 1)).toBeCloseTo(Math.exp(-3), 9);
  expect(readPassTable(clean, 0.3)).toBeLessThan(readPassTable(clean, 0.9));
  expect(readPassTable(passTable(3, 0.3), 1)).toBeCloseTo(Math.exp(-2.1), 9);
  expect(readPassTable(clean, 9)).toBe(readPassTable(clean, 1.5));
});
