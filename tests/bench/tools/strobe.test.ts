import { describe, expect, it } from 'vitest';
import { createToolState, readTool, type ToolUse } from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { toyRun } from './toy-run.ts';

const at = (place: string, range: string): ToolUse => ({ tool: 'strobe', place, range });
const turning = (rpm: number, slip = 0) =>
  toyRun({
    channels: {
      'fan.speed': () => rpm,
      'fan.belt-slip': () => slip,
      'fan.frequency': () => 60,
    },
    frames: 200,
  });
const read = (rpm: number, use: ToolUse, slip = 0) =>
  readTool(turning(rpm, slip), use, createToolState(use, 0));

describe('a strobe', () => {
  it('finds the speed with quick flashes, and half of it with slow ones, saying nothing', () => {
    expect(read(2800, at('fan-shaft', 'high'))).toMatchObject({ shown: '2800', flags: [] });
    expect(read(2800, at('fan-shaft', 'low'))).toMatchObject({ shown: '1400', flags: [] });
    expect(read(1450, at('fan-shaft', 'low')).shown).toBe('1450');
  });

  it('cannot tell which way it turns', () => {
    expect(read(-2800, at('fan-shaft', 'high')).shown).toBe('2800');
  });

  it('finds nothing on a shaft that stands or turns slower than it flashes', () => {
    expect(read(0, at('fan-shaft', 'low'))).toMatchObject({ value: null, flags: ['no signal'] });
    expect(read(700, at('fan-shaft', 'high'))).toMatchObject({ value: null, shown: '' });
  });

  it('shows belt slip by the speeds of both pulleys', () => {
    // The laundry's belt is to make 1.6 of the motor's speed; a tenth of it slips.
    const fan = read(2520, at('fan-shaft', 'high'), 0.1).value ?? 0;
    const motor = read(2520, at('motor-shaft', 'high'), 0.1).value ?? 0;
    expect(Math.abs(fan / (1.6 * motor) - 0.9)).toBeLessThan(1e-6);
  });

  it('finds the motor’s own speed where the belt is off', () => {
    const motor = read(0, at('motor-shaft', 'high'), 1);
    expect(motor.shown).toBe('1800');
  });

  it('finds a fan of 2800 rpm on the laundry, and its motor 1.6 times slower', () => {
    const run = createRun(shippedSetup('laundry-healthy-start'));
    run.advanceTo(80);
    const fan = at('fan-shaft', 'high');
    const motor = at('motor-shaft', 'high');
    const fanRpm = readTool(run, fan, createToolState(fan, 60)).value ?? 0;
    const motorRpm = readTool(run, motor, createToolState(motor, 60)).value ?? 0;
    // Four poles at 60 Hz, 40 rpm of slip at full load.
    expect(motorRpm).toBeGreaterThan(1755);
    expect(motorRpm).toBeLessThan(1800);
    expect(Math.abs(fanRpm - 1.6 * motorRpm)).toBeLessThan(1);
  });
});
