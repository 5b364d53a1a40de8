import { describe, expect, it } from 'vitest';
import { createToolState, readTool, type ToolUse } from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { earlier, toyRun } from './toy-run.ts';

const on = (place: string, range: string, other = ''): ToolUse => ({
  tool: 'manometer',
  place,
  range,
  other,
});
/** A run whose gas behind the regulator stands at `pa`. */
const steady = (pa: number, frames: number) =>
  toyRun({ channels: { 'gas.regulated.pressure': () => pa }, frames });

describe('a manometer', () => {
  it('follows a step by the lag of its hose, as 1 − e^(−t/τ)', () => {
    const use = on('regulated', 'mid');
    const run = steady(10000, 100);
    for (const frames of [1, 3, 6, 20]) {
      const { value } = readTool(earlier(run, frames), use, createToolState(use, 0));
      // τ = 0.3 s. Its zero has wandered by less than 25 Pa · 2 s / 600 s by then.
      expect(Math.abs((value ?? 0) - 10000 * (1 - Math.exp((-0.1 * frames) / 0.3)))).toBeLessThan(
        0.09,
      );
    }
  });

  it('is unsettled while the hose fills and steady after', () => {
    const use = on('regulated', 'mid');
    const run = steady(10000, 100);
    const readAfter = (frames: number) =>
      readTool(earlier(run, frames), use, createToolState(use, 0));
    expect(readAfter(5)).toMatchObject({ steady: false, flags: ['settling'] });
    // 10 000 · e^(−t/0.3) is under a digit of 10 Pa from 2.1 s on, and must stand for a second.
    expect(readAfter(40)).toMatchObject({ steady: true, flags: [], shown: '100.0', unit: 'mbar' });
  });

  it.each([
    ['low', 2490, '24.90', []],
    ['low', 2600, 'OL', ['over range']],
    ['low', 10000, 'OL', ['over range']],
    ['mid', 10000, '100.0', []],
    ['high', 10000, '100', []],
  ])('on range %s at %i Pa shows %s', (range, pa, shown, flags) => {
    const use = on('regulated', range);
    const reading = readTool(steady(pa, 60), use, createToolState(use, 0));
    expect([reading.shown, reading.flags]).toEqual([shown, flags]);
    expect(reading.value === null).toBe(shown === 'OL');
  });

  it('keeps the shift of an overload until it is connected anew', () => {
    const use = on('regulated', 'low');
    const run = toyRun({
      channels: { 'gas.regulated.pressure': (k) => (k < 50 ? 20000 : 0) },
      frames: 150,
    });
    const strained = readTool(run, use, createToolState(use, 0));
    expect(strained.flags).toEqual(['overloaded', 'needs zero']);
    // 40 Pa of shift, a tenth of a pascal of drift in 15 s.
    expect(Math.abs((strained.value ?? 0) - 40)).toBeLessThan(0.2);
    const anew = readTool(run, use, createToolState(use, 10));
    expect(anew.flags).toEqual([]);
    expect(Math.abs(anew.value ?? 1)).toBeLessThan(0.1);
  });

  it('wants a new zero after a quarter of an hour, and is off by no more than its drift', () => {
    const use = on('regulated', 'low');
    const reading = readTool(steady(0, 9100), use, createToolState(use, 0));
    expect(reading.flags).toEqual(['needs zero']);
    expect(Math.abs(reading.value ?? 99)).toBeLessThan(5);
    expect(Math.abs(reading.value ?? 0)).toBeGreaterThan(0);
  });

  it('shows suction in the flue below zero', () => {
    const use = on('flue', 'low');
    const run = toyRun({ channels: { 'stack.draught': () => 20 }, frames: 60 });
    expect(readTool(run, use, createToolState(use, 0)).shown).toBe('-0.20');
  });

  it('begins anew when the run has been taken back', () => {
    const use = on('regulated', 'mid');
    const run = toyRun({ channels: { 'gas.regulated.pressure': (k) => 10 * k }, frames: 300 });
    const state = createToolState(use, 0);
    readTool(run, use, state);
    const back = readTool(earlier(run, 100), use, state);
    expect(back).toEqual(readTool(earlier(run, 100), use, createToolState(use, 0)));
  });
});

describe('a manometer on the laundry', () => {
  const setup = shippedSetup('laundry-healthy-start');
  const rest = createRun({ ...setup, actions: [] });
  const run = createRun(setup);
  rest.advanceTo(5);
  const atRest = (use: ToolUse) => readTool(rest, use, createToolState(use, 0));

  it('finds the supply’s 100 mbar at rest, and behind the main valves the furnace’s draught', () => {
    // Its drop is for flow, so at rest all of it stands there; a digit is 0.1 mbar.
    expect(Math.abs((atRest(on('inlet', 'mid')).value ?? 0) - 10000)).toBeLessThan(15);
    expect(atRest(on('inlet', 'low')).shown).toBe('OL');
    const furnace = atRest(on('furnace', 'low')).value ?? 0;
    expect(furnace).toBeLessThan(-5);
    expect(Math.abs((atRest(on('manifold', 'low')).value ?? 99) - furnace)).toBeLessThan(1);
  });

  it('finds across the head, with two hoses, what the head takes in purge', () => {
    const use = on('windbox', 'low', 'furnace');
    run.advanceTo(65);
    const reading = readTool(run, use, createToolState(use, 60));
    const at = run.channels.findIndex(({ id }) => id === 'air.head.differential');
    const head = run.frame(run.frameCount() - 1)[at] as number;
    expect(run.status().step).toBe('purge');
    expect(head).toBeGreaterThan(500);
    // One digit of 1 Pa and as much of drift and lag.
    expect(Math.abs((reading.value ?? 0) - head)).toBeLessThan(3);
  });
});
