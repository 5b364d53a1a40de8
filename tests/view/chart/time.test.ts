import { describe, expect, it } from 'vitest';
import { movedCursor, moveOfKey } from '../../../src/view/chart/cursor-slider.ts';
import { gridText, gridTimes, lengthFor } from '../../../src/view/chart/time-scale.ts';

describe('the time axis', () => {
  it('holds the expected run, and stays while the run is within it', () => {
    const length = lengthFor(0, 0, 200);
    expect(length).toBeGreaterThanOrEqual(200);
    for (let now = 0; now <= 200; now += 10) expect(lengthFor(length, now, 200)).toBe(length);
  });

  it('grows in strides as the run outgrows it: a handful of times in an hour', () => {
    let length = lengthFor(0, 0, 200);
    let grown = 0;
    for (let now = 0; now <= 3600; now += 1) {
      const next = lengthFor(length, now, 200);
      if (next !== length) grown += 1;
      expect(next).toBeGreaterThanOrEqual(now);
      length = next;
    }
    expect(grown).toBeLessThan(20);
  });

  it('shrinks again when a run starts over', () => {
    expect(lengthFor(3600, 0, 200)).toBeLessThan(300);
  });

  it('has round times no closer than asked', () => {
    const times = gridTimes({ lengthS: 300, pxPerS: 4 }, 90);
    expect(times.slice(0, 3)).toEqual([0, 30, 60]);
  });

  it.each([
    [0, '0:00'],
    [67, '1:07'],
    [3727, '1:02:07'],
  ])('writes %i s as %s', (seconds, text) => {
    expect(gridText(seconds)).toBe(text);
  });
});

describe('the cursor of the chart', () => {
  const steps = [0, 10, 25];
  const press = (key: string, at: number, shift = false): number => {
    const move = moveOfKey(key, shift);
    if (move === null) throw new Error(`${key} does nothing`);
    return movedCursor(move, at, 40, steps);
  };

  it.each([
    ['a second back', 'ArrowLeft', 20, 19],
    ['a second on', 'ArrowRight', 20, 21],
    ['to the start', 'Home', 20, 0],
    ['to the present', 'End', 20, 40],
    ['to the step before', 'PageDown', 20, 10],
    ['to the step before that', 'PageDown', 10, 0],
    ['to the next step', 'PageUp', 20, 25],
    ['to the present, after the last step', 'PageUp', 30, 40],
    ['never before the start', 'ArrowLeft', 0.3, 0],
    ['never past the present', 'ArrowRight', 39.8, 40],
  ])('moves %s', (_title, key, from, to) => {
    expect(press(key, from)).toBeCloseTo(to, 9);
  });

  it('moves by tenths with shift, and leaves other keys alone', () => {
    expect(press('ArrowRight', 20, true)).toBeCloseTo(20.1, 9);
    expect(moveOfKey('Tab', false)).toBeNull();
  });
});
