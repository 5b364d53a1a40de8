import { describe, expect, it } from 'vitest';
import {
  blendInto,
  isContinuous,
  moveTime,
  wholeNumberPlaces,
} from '../../../src/view/schematic/frame-view.ts';

const ids = ['fan.speed', 'logic.commands'];

describe('a moment between two frames', () => {
  it('has readings in between, and packed words as they were until the later frame', () => {
    const out = new Float64Array(2);
    const whole = wholeNumberPlaces(ids);
    const [from, to] = [Float64Array.of(100, 5), Float64Array.of(200, 8)];
    blendInto(out, from, to, 0.25, whole);
    expect([...out]).toEqual([125, 5]);
    blendInto(out, from, to, 1, whole);
    expect([...out]).toEqual([200, 8]);
  });

  it('moves things on with the clock, never back and never in a leap', () => {
    expect(moveTime(null, 5000)).toBe(0);
    expect(moveTime(1000, 1016)).toBeCloseTo(0.016, 9);
    expect(moveTime(1000, 900)).toBe(0);
    expect(moveTime(1000, 1000)).toBe(0);
    expect(moveTime(1000, 9000)).toBe(0.05);
  });

  it('goes on from the one before at twenty-fold speed, but not after a look back', () => {
    expect(isContinuous(10_000, 10_000 + (1000 / 60) * 20)).toBe(true);
    expect(isContinuous(10_000, 4_000)).toBe(false);
    expect(isContinuous(10_000, 30_000)).toBe(false);
    expect(isContinuous(null, 0)).toBe(false);
  });
});
