import { describe, expect, it } from 'vitest';
import { createToolState, readTool, type ToolUse } from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { toyRun } from './toy-run.ts';

const at = (place: string, range: string): ToolUse => ({ tool: 'thermometer', place, range });
const CHANNELS = { 'flue.temperature': () => 493.15, 'vessel.temperature': () => 443.15 };

describe('a thermometer', () => {
  it('warms from the room’s 20 °C with a lag of eight seconds', () => {
    const use = at('flue', 'pocket');
    const { value } = readTool(
      toyRun({ channels: CHANNELS, frames: 80 }),
      use,
      createToolState(use, 0),
    );
    // 200 K of rise, a hundredth of it led away by the stem.
    expect(Math.abs((value ?? 0) - (293.15 + 198 * (1 - Math.exp(-1))))).toBeLessThan(1e-6);
  });

  it('reads the wall of a flue far below its gas, and says that it is a surface', () => {
    const run = toyRun({ channels: CHANNELS, frames: 1200 });
    const pocket = readTool(run, at('flue', 'pocket'), createToolState(at('flue', 'pocket'), 0));
    const wall = readTool(run, at('flue', 'surface'), createToolState(at('flue', 'surface'), 0));
    expect(pocket).toMatchObject({ shown: '218.0', unit: '°C', steady: true });
    expect(pocket.warn).toBeUndefined();
    expect(Number(wall.shown)).toBeLessThan(140);
    expect(wall.warn).toEqual({ code: 'bench.warn.surface' });
  });

  it('finds the laundry’s water at what 7 bar boils at, and a warm casing', () => {
    const setup = shippedSetup('laundry-healthy-start');
    const run = createRun({ ...setup, actions: [] });
    run.advanceTo(90);
    const water = readTool(run, at('water', 'pocket'), createToolState(at('water', 'pocket'), 0));
    const place = run.channels.findIndex(({ id }) => id === 'vessel.temperature');
    const waterK = run.frame(run.frameCount() - 1)[place] as number;
    // A hundredth of the way to the room is some 1.5 K.
    expect(waterK - (water.value ?? 0)).toBeGreaterThan(1);
    expect(waterK - (water.value ?? 0)).toBeLessThan(2);
    const casing = at('casing', 'surface');
    const warm = Number(readTool(run, casing, createToolState(casing, 0)).shown);
    expect(warm).toBeGreaterThan(30);
    expect(warm).toBeLessThan(50);
  });
});
