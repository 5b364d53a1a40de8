import { describe, expect, it } from 'vitest';
import {
  alignedAtS,
  commonSpan,
  curveOf,
  type RecordedRun,
  valueAtS,
} from '../../../src/app/teach-class/compare-lanes.ts';
import { pathsOf } from '../../../src/app/teach-class/compare-paths.ts';

function runOf(values: readonly number[]): RecordedRun {
  return {
    count: values.length,
    frameS: 0.1,
    frame: (k) => Float64Array.of(values[k] ?? 0),
  };
}

describe('two runs on one clock', () => {
  it('are laid on each other at the first call for heat, or at their starts', () => {
    const events = [
      { t: 0, type: 'step' },
      { t: 4, type: 'action', action: { type: 'call-for-heat', on: false } },
      { t: 6.5, type: 'action', action: { type: 'call-for-heat', on: true } },
      { t: 9, type: 'action', action: { type: 'call-for-heat', on: true } },
    ];
    expect(alignedAtS(events, 'call for heat')).toBe(6.5);
    expect(alignedAtS(events, 'run start')).toBe(0);
    expect(alignedAtS([], 'call for heat')).toBe(0);
  });

  it('show at a moment what each of them read then, and nothing outside of a run', () => {
    const curve = { run: runOf([10, 11, 12, 13, 14]), zeroS: 0.2 };
    expect(valueAtS(curve, 0, 0)).toBe(12);
    expect(valueAtS(curve, 0, -0.2)).toBe(10);
    expect(valueAtS(curve, 0, -0.3)).toBeNull();
    expect(valueAtS(curve, 0, 0.3)).toBeNull();
  });

  it('span from the earlier start to the later end', () => {
    const short = { run: runOf([0, 0, 0]), zeroS: 0.1 };
    const long = { run: runOf(Array.from({ length: 31 }, () => 0)), zeroS: 2 };
    const { fromS, toS } = commonSpan([short, long]);
    expect(fromS).toBeCloseTo(-2, 9);
    expect(toS).toBeCloseTo(1, 9);
  });

  it('lose no spike of a long run', () => {
    const values = Array.from({ length: 36_000 }, (_, k) => (k === 17_777 ? 99 : k % 2));
    const points = curveOf({ run: runOf(values), zeroS: 0 }, 0);
    expect(points.length).toBeLessThanOrEqual(1000);
    const most = points.reduce((best, point) => (point[1] > best[1] ? point : best));
    expect(most[1]).toBe(99);
    expect(most[0]).toBeCloseTo(1777.7, 6);
    expect(points.every(([xS], at) => at === 0 || xS > (points[at - 1]?.[0] ?? 0))).toBe(true);
  });

  it('are drawn to one scale, the higher value higher', () => {
    const [low = '', high = ''] = pathsOf(
      [
        [
          [0, 2],
          [10, 2],
        ],
        [
          [0, 8],
          [10, 8],
        ],
      ],
      { min: 0, max: 100 },
      { fromS: 0, toS: 10 },
    );
    const yOf = (path: string) => Number(/^M[\d.]+ ([\d.]+)/.exec(path)?.[1]);
    expect(yOf(high)).toBeLessThan(yOf(low));
    expect(yOf(high)).toBeGreaterThan(0);
    expect(low).toContain('L1000.0');
  });
});
