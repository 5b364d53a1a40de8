import { keyName } from '../../../diagnosis/index.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import type { QuizPlant } from '../../item/maker.ts';

/** How far from an edge of its band a number has to be, as a share of the band. */
const OFF_THE_EDGE = 0.5;
const OFF_THE_EDGE_INSIDE = 0.05;

/** A word is clear; a number is where it does not hang by a hair in which bin it falls. */
export function isClear({ atlas }: QuizPlant, { sample }: SeededPlant, key: number): boolean {
  const at = atlas.keys[key];
  const band = at?.band ?? null;
  if (at === undefined || band === null) return at !== undefined;
  const value = sample.get(keyName(at.check, at.moment, at.aspect));
  if (typeof value !== 'number') return true;
  const { low, high } = band;
  const inside = value >= low && value <= high;
  const off = Math.min(Math.abs(value - low), Math.abs(value - high));
  return off >= (inside ? OFF_THE_EDGE_INSIDE : OFF_THE_EDGE) * (high - low);
}
