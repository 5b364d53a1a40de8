import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axesOf, TREND_STROKES, tickDigits } from '../../../src/view/trends/axes.ts';
import { createSampledRun } from '../../../src/view/trends/sampled-columns.ts';
import { siDisplay } from '../../../src/view/trends/si-display.ts';
import { channels } from '../frames.ts';

const FRAME_S = 0.1;

function runOf(values: readonly number[]) {
  const run = createSampledRun(FRAME_S);
  run.append(
    values.map((value) => Float64Array.of(value)),
    0,
  );
  return run;
}

describe('a run sampled for the trends', () => {
  it('keeps its extremes however few points are asked for', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 1, maxLength: 300 }),
        fc.integer({ min: 1, max: 40 }),
        (values, buckets) => {
          const { times, values: columns } = runOf(values).columns([0], 0, 1e6, buckets);
          expect(columns[0]).toHaveLength(times.length);
          expect(times.length).toBeLessThanOrEqual(2 * buckets + 2);
          expect(Math.min(...columns[0])).toBe(Math.min(...values));
          expect(Math.max(...columns[0])).toBe(Math.max(...values));
        },
      ),
      { seed: 12 },
    );
  });

  it('gives times that never go back', () => {
    const { times } = runOf(Array.from({ length: 1000 }, (_none, i) => i % 7)).columns(
      [0],
      0,
      100,
      33,
    );
    times.slice(1).forEach((time, i) => {
      expect(time).toBeGreaterThanOrEqual(times[i]);
    });
  });

  it('zoomed in gives every frame as it was', () => {
    const run = runOf([5, 6, 7, 8, 9]);
    const { times, values } = run.columns([0], 0.1, 0.3, 100);
    expect(values[0]).toEqual([6, 7, 8]);
    expect(times[0]).toBeCloseTo(0.1, 9);
  });

  it('is replaced from a moment in its past on', () => {
    const run = runOf([1, 2, 3, 4]);
    run.append([Float64Array.of(9)], 0.2);
    expect([run.count, run.valueAt(0, 0.2), run.valueAt(0, 0.3)]).toEqual([3, 9, null]);
  });
});

describe('the axes of the trends', () => {
  const displayOf = siDisplay(channels);

  it('are shared by quantities shown in one unit, and not by pressures of gas and steam', () => {
    const axes = axesOf(
      channels,
      ['gas.inlet.pressure', 'air.windbox.pressure', 'vessel.pressure', 'fan.speed'],
      displayOf,
    );
    expect(axes.map(({ symbol, channelIds }) => [symbol, channelIds.length])).toEqual([
      ['mbar', 2],
      ['bar', 1],
      ['rpm', 1],
    ]);
  });

  it('leave out what is not recorded', () => {
    expect(axesOf(channels, ['no.such.channel'], displayOf)).toEqual([]);
  });

  it('have ticks with as many decimals as tell them apart', () => {
    expect([20, 1, 0.5, 0.05].map(tickDigits)).toEqual([0, 0, 1, 2]);
  });

  it('tell lines apart by dash as well as by colour', () => {
    const dashes = TREND_STROKES.map(({ dash }) => dash.join(' '));
    expect(new Set(dashes).size).toBe(TREND_STROKES.length);
  });
});
