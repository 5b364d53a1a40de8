import { describe, expect, it } from 'vitest';
import {
  createToolState,
  readTool,
  type ToolReading,
  type ToolUse,
} from '../../../src/bench/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { earlier, toyRun } from './toy-run.ts';

const probe = (range: string): ToolUse => ({ tool: 'flue-gas analyser', place: 'flue', range });
const lineOf = (reading: ToolReading, what: string) =>
  reading.lines?.find(({ what: { code } }) => code === `bench.line.${what}`);
/** Flue gas of 3.5 % oxygen that burns clean, or as told. */
const firing = (frames: number, changed: Record<string, number> = {}, scenario?: string) => {
  const still: Record<string, number> = {
    'analyser.oxygen': 0.035,
    'analyser.carbon-dioxide': 0.098,
    'analyser.carbon-monoxide': 20e-6,
    'analyser.nitric-oxide': 60e-6,
    'analyser.temperature': 493.15,
    'efficiency.net': 0.91,
    'efficiency.gross': 0.82,
    ...changed,
  };
  return toyRun({
    channels: Object.fromEntries(Object.entries(still).map(([id, value]) => [id, () => value])),
    frames,
    ...(scenario !== undefined && { scenario }),
  });
};
const read = (frames: number, range = 'long', changed = {}, scenario?: string) =>
  readTool(firing(frames, changed, scenario), probe(range), createToolState(probe(range), 0));

describe('a flue-gas analyser', () => {
  it('shows fresh air and asks for its zero until a minute has passed', () => {
    const early = read(300);
    expect(early.flags).toEqual(['needs zero', 'settling']);
    expect(early.note).toEqual({ code: 'bench.note.fresh-air' });
    // Cold by e^(−30/15) of 0.6 % still.
    expect(Math.abs((early.value ?? 0) - (0.2095 - 0.006 * Math.exp(-29.9 / 15)))).toBeLessThan(
      1e-9,
    );
    expect(Number(lineOf(read(20), 'carbon-monoxide')?.shown)).toBeGreaterThan(30);
  });

  it('then comes to the flue gas by hose and cell, and settles', () => {
    // Zero 60 s, hose 4 s, one time constant of the oxygen cell.
    const gone = read(691).value ?? 0;
    expect(Math.abs(gone - (0.2095 + (0.035 - 0.2095) * (1 - Math.exp(-1))))).toBeLessThan(1e-4);
    const settled = read(1800);
    expect(settled).toMatchObject({ shown: '3.5', unit: '%', flags: [], steady: true });
    expect(lineOf(settled, 'carbon-monoxide')?.shown).toBe('20');
    expect(lineOf(settled, 'efficiency-net')?.shown).toBe('91.0');
    expect(lineOf(settled, 'temperature')).toMatchObject({ shown: '220', unit: '°C' });
  });

  it('is over range above 2000 ppm of CO', () => {
    const sooty = read(1800, 'long', { 'analyser.carbon-monoxide': 2500e-6 });
    expect(sooty.flags).toContain('over range');
    expect(lineOf(sooty, 'carbon-monoxide')).toMatchObject({ shown: 'OL', value: null });
    expect(lineOf(sooty, 'oxygen')?.shown).toBe('3.5');
  });

  it('draws air along the wall of a wide flue with the short probe, and reads too good a CO', () => {
    const short = read(1800, 'short');
    expect(short.flags).toContain('probe too short');
    expect(short.value).toBeGreaterThan(0.06);
    expect(lineOf(short, 'carbon-monoxide')?.value).toBeLessThan(17e-6);
    expect(lineOf(short, 'temperature')?.value).toBeLessThan(470);
  });

  it('needs no long probe in the narrow flue of the school', () => {
    const short = read(1800, 'short', {}, 'school-healthy-start');
    expect([short.shown, short.flags]).toEqual(['3.5', []]);
  });

  it('fills its trap in wet gas, which then washes CO and NO out', () => {
    const washed = read(16000);
    expect(washed.flags).toEqual(['condensate']);
    expect(Math.abs((lineOf(washed, 'nitric-oxide')?.value ?? 0) / 60e-6 - 0.85)).toBeLessThan(
      1e-3,
    );
    // In fresh air there is nothing to condense.
    expect(read(16000, 'long', { 'analyser.oxygen': 0.2095 }).flags).toEqual([]);
  });

  it('shows no efficiency without a fire', () => {
    expect(lineOf(read(1800, 'long', { 'analyser.oxygen': 0.2 }), 'efficiency-net')).toMatchObject({
      value: null,
      shown: '',
    });
  });

  it('agrees on the firing laundry with what is recorded of the flue', () => {
    const run = createRun(shippedSetup('laundry-healthy-start'));
    run.advanceTo(400);
    const reading = readTool(run, probe('long'), createToolState(probe('long'), 150));
    const last = run.frame(run.frameCount() - 1);
    const recorded = (id: string) => last[run.channels.findIndex((one) => one.id === id)] as number;
    expect(recorded('analyser.oxygen')).toBeLessThan(0.08);
    // The hose was filled with flue gas three minutes ago: nothing of the air is left.
    expect(Math.abs((reading.value ?? 0) - recorded('analyser.oxygen'))).toBeLessThan(1e-6);
    const net = lineOf(reading, 'efficiency-net')?.value ?? 0;
    expect(Math.abs(net - recorded('efficiency.net'))).toBeLessThan(1e-6);
    expect(reading.flags).not.toContain('needs zero');
  });

  it('is connected anew with a new zero and an empty trap', () => {
    const run = firing(16000);
    const anew = readTool(run, probe('long'), createToolState(probe('long'), 1400));
    expect(anew.flags).toEqual([]);
    expect(
      readTool(earlier(run, 14100), probe('long'), createToolState(probe('long'), 1400)).flags,
    ).toContain('needs zero');
  });
});
