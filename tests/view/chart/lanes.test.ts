import { describe, expect, it } from 'vitest';
import { message } from '../../../src/i18n/index.ts';
import { fitScale, shareOf } from '../../../src/view/chart/expected-run.ts';
import { chartGeometry, laneInside, PROVED_PX } from '../../../src/view/chart/geometry.ts';
import { laneReading, widestLaneReading } from '../../../src/view/chart/lane-reading.ts';
import { lanesOf } from '../../../src/view/chart/lanes.ts';
import { siReading } from '../../../src/view/reading.ts';
import { channels } from '../frames.ts';
import { dairy, fireTube, hotWater } from '../plants.ts';

const lanes = lanesOf(channels, dairy);

describe('the lanes of the start chart', () => {
  it('are those of the plant, in the order of a start', () => {
    expect(lanes.map(({ id }) => id)).toEqual([
      'fan',
      'damper',
      'airflow',
      'vent-valve',
      'upstream-valve',
      'downstream-valve',
      'interspace',
      'pilot-spark',
      'fuel-valve',
      'flame',
      'vessel-pressure',
    ]);
  });

  it('with one servo and direct spark: one position, spark by itself, temperature for pressure', () => {
    expect(lanesOf(channels, hotWater).map(({ id }) => id)).toEqual([
      'fan',
      'position',
      'airflow',
      'upstream-valve',
      'downstream-valve',
      'interspace',
      'spark',
      'flame',
      'flow-temperature',
    ]);
  });

  it('without valve proving have no lane for the space between the valves, vent or not', () => {
    const ids = lanesOf(channels, fireTube).map(({ id }) => id);
    expect(ids).toContain('vent-valve');
    expect(ids).not.toContain('interspace');
  });

  it('hold a fan to a speed, and claim its proof, only where its speed is controlled', () => {
    const fixed = lanesOf(channels, fireTube)[0];
    expect(fixed).toMatchObject({ id: 'fan', line: { tolerance: null }, proved: [] });
    expect(lanes[0]).toMatchObject({ line: { tolerance: 0.05 } });
    expect(lanes[0].proved).not.toEqual([]);
  });

  it('claim no proof of closure where the valves have none', () => {
    const valve = lanesOf(channels, fireTube).find(({ id }) => id === 'upstream-valve');
    expect(valve?.proved).toEqual([]);
  });

  it('fit a scale that does not begin at zero to the expected run as well', () => {
    const line = lanesOf(channels, hotWater).find(({ id }) => id === 'flow-temperature')?.line;
    const fitted = fitScale(line ?? null, Float64Array.of(300, 355));
    expect(fitted?.min).toBeCloseTo(273.15, 9);
    expect(fitted?.max).toBeGreaterThan(360);
    expect(fitted?.max).toBeLessThan(370);
  });

  it('tell what a valve was told, did and proved', () => {
    expect(lanes.find(({ id }) => id === 'upstream-valve')).toMatchObject({
      line: { channel: 'gas.upstream-valve.opening' },
      commanded: ['upstreamValve'],
      proved: ['upstreamValveClosed'],
    });
  });

  it('have each a name', () => {
    for (const lane of lanes) expect(message(lane.name).length).toBeGreaterThan(2);
  });

  it('leave out what a run does not record', () => {
    const fewer = channels.filter(({ id }) => id !== 'flame.signal');
    expect(lanesOf(fewer, dairy).map(({ id }) => id)).not.toContain('flame');
  });

  it('follow the expected run with their scale, unless the device itself has a limit', () => {
    const fan = lanes[0].line;
    const damper = lanes[1].line;
    expect(fitScale(fan, Float64Array.of(0, 3600))?.max).toBeGreaterThan(3600);
    expect(fitScale(damper, Float64Array.of(0, 30))?.max).toBe(damper?.max);
  });

  it('stay inside their height whatever the value', () => {
    const line = lanes[1].line;
    if (line === null) throw new Error('the damper has a line');
    expect([shareOf(line, -50), shareOf(line, 500)]).toEqual([0, 1]);
  });

  it('read in words and units', () => {
    const read = (id: string, value: number): string => {
      const lane = lanes.find((entry) => entry.id === id);
      if (lane === undefined) throw new Error(id);
      return laneReading(lane, value, message, siReading);
    };
    expect(read('damper', 62)).toBe('62.0°');
    expect(read('upstream-valve', 1)).toBe(message('view.valve.open'));
    expect(read('flame', Number.NaN)).toBe('');
  });
});

describe('the room of the chart', () => {
  const names = lanes.map((lane) => message(lane.name));
  const widest = widestLaneReading(
    lanes,
    lanes.map((lane) => lane.line),
    message,
    siReading,
  );

  it.each([
    [1366, 267],
    [1920, 335],
    [820, 267],
  ])('at %i × %i holds all lanes without scrolling', (width, height) => {
    const g = chartGeometry(width, height, names, widest);
    expect(g.height).toBeLessThanOrEqual(height);
    expect(g.plotX + g.plotWidth).toBeLessThan(g.readingX);
    expect(g.plotWidth).toBeGreaterThan(width * 0.55);
  });

  it('keeps a row of times under the lanes of the plant that has most', () => {
    expect(chartGeometry(1366, 267, names, widest).footPx).toBeGreaterThan(0);
  });

  it('is scrolled rather than squeezed when it is too low', () => {
    const g = chartGeometry(1366, 90, names, widest);
    expect(g.height).toBeGreaterThan(90);
    expect(g.laneHeightPx).toBeGreaterThanOrEqual(18);
  });

  it('keeps line and proof of a lane apart from each other and from the next lane', () => {
    const g = chartGeometry(1366, 267, names, widest);
    for (let lane = 0; lane < lanes.length; lane += 1) {
      const { top, height, provedY } = laneInside(g, lane);
      expect(top).toBeGreaterThan(lane * g.laneHeightPx);
      expect(top + height).toBeLessThan(provedY);
      expect(provedY + PROVED_PX).toBeLessThan((lane + 1) * g.laneHeightPx);
    }
  });
});
