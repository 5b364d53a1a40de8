import { describe, expect, it } from 'vitest';
import { createToolState, readTool, type ToolUse } from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { toyRun } from './toy-run.ts';

const use: ToolUse = { tool: 'flame-signal meter', place: 'flame-sensor' };

describe('a flame-signal meter', () => {
  it('follows with a lag of a second and holds least and most', () => {
    // 8 µA for five seconds, then nothing for one.
    const run = toyRun({ channels: { 'flame.signal': (k) => (k < 50 ? 8 : 0) }, frames: 60 });
    const reading = readTool(run, use, createToolState(use, 0));
    const most = 8 * (1 - Math.exp(-5));
    expect(Math.abs((reading.value ?? 0) - most * Math.exp(-1))).toBeLessThan(1e-9);
    expect(reading.lines?.map(({ what, shown }) => [what.code, shown])).toEqual([
      // The first frame had taken it to 8 · (1 − e^(−0.1)).
      ['bench.line.least', '0.8'],
      ['bench.line.most', '7.9'],
    ]);
    expect(reading.steady).toBe(false);
  });

  it('shows the laundry’s sensor: nothing at rest, more than its relay needs once it fires', () => {
    const run = createRun(shippedSetup('laundry-healthy-start'));
    run.advanceTo(10);
    expect(readTool(run, use, createToolState(use, 0)).value).toBeLessThan(0.3);
    run.advanceTo(200);
    const reading = readTool(run, use, createToolState(use, 180));
    const { thresholdMicroamps } = run.setup.plant.field.flameRelays[0] ?? {};
    expect(reading.value).toBeGreaterThan(2 * (thresholdMicroamps ?? 99));
    expect(reading).toMatchObject({ unit: 'µA', steady: true, flags: [] });
    expect(reading.shown).toMatch(/^\d+\.\d$/);
  });
});
