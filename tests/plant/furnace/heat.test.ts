import { expect, it } from 'vitest';
import { passTable, readPassTable } from '../../../src/plant/furnace/index.ts';

it('passes let through more of the temperature the more gas they carry and the fouler they are', () => {
  const clean = passTable(3, 0);
  expect(readPassTable(clean, 1)).toBeCloseTo(Math.exp(-3), 9);
  expect(readPassTable(clean, 0.3)).toBeLessThan(readPassTable(clean, 0.9));
  expect(readPassTable(passTable(3, 0.3), 1)).toBeCloseTo(Math.exp(-2.1), 9);
  expect(readPassTable(clean, 9)).toBe(readPassTable(clean, 1.5));
});
