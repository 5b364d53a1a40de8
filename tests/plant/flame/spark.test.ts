import { expect, it } from 'vitest';
import { gapTransfer, jumpShare } from '../../../src/plant/flame/index.ts';
import { dairyFlame } from './dairy-flame.ts';

const at = (electrodeGapMm: number) => ({ ...dairyFlame().ignition, electrodeGapMm });

it('a gap below the quenching distance wastes the spark, a gap too wide is not jumped', () => {
  expect(gapTransfer(at(0.5))).toBe(0);
  expect(gapTransfer(at(1.25))).toBeCloseTo(0.5, 12);
  expect(gapTransfer(at(3))).toBe(1);
  expect(gapTransfer(at(6))).toBeLessThan(0.5);
  expect(gapTransfer(at(7))).toBe(0);
});

it('a narrow gap is still jumped: the spark is there, only the kernel dies in it', () => {
  expect(jumpShare(at(0.5))).toBe(1);
  expect(jumpShare(at(9))).toBe(0);
});
