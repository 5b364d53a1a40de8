import { describe, expect, it } from 'vitest';
import { createToolState, readTool, type ToolUse } from '../../../src/bench/index.ts';
import { createRun, type Run, type RunSetup } from '../../../src/engine/index.ts';
import { shippedSetup } from '../../support/library.ts';

const meter = (range: string, place: string, other = ''): ToolUse => ({
  tool: 'multimeter',
  range,
  place,
  other,
});
const soundSetup = () => shippedSetup('laundry-healthy-start');

/** Connected half a second before the run's head, so that its display has settled. */
function read(run: Run, use: ToolUse) {
  return readTool(run, use, createToolState(use, run.timeS() - 0.5));
}
function runTo(step: string, setup: RunSetup = soundSetup()): Run {
  const run = createRun(setup);
  for (let t = 0; t < 200 && run.status().step !== step; t += 0.5) run.advanceTo(t);
  run.advanceTo(run.timeS() + 0.5);
  expect(run.status().step).toBe(step);
  return run;
}

describe('a multimeter on the laundry', () => {
  const rest = createRun({ ...soundSetup(), actions: [] });
  rest.advanceTo(5);
  const purge = runTo('purge');

  it('shows mains on the control wire and none behind a relay at rest', () => {
    const mains = read(rest, meter('volts', 'L1', 'N'));
    expect(mains).toMatchObject({
      unit: 'V',
      steady: true,
      note: { code: 'bench.note.alternating' },
    });
    // 120 V less what 0.4 Ω drops under less than 3 A.
    expect(mains.value).toBeGreaterThan(118.5);
    expect(mains.value).toBeLessThan(120.001);
    expect(mains.shown).toMatch(/^1(18|19|20)\.\d$/);
    expect(read(rest, meter('volts', '56', 'N')).value).toBeLessThan(0.01);
  });

  it('shows volts at the fan contactor in purge, and still none at the main valves', () => {
    expect(read(purge, meter('volts', '56', 'N')).value).toBeGreaterThan(117);
    expect(read(purge, meter('volts', 'upstream-valve:1', 'N')).value).toBeLessThan(0.01);
  });

  it('shows a loop as direct volts with their sign', () => {
    const loop = read(rest, meter('volts', 'P24', 'M24'));
    expect(loop.note).toEqual({ code: 'bench.note.direct' });
    expect(loop.shown).toMatch(/^2[34]\.\d\d$/);
    expect(read(rest, meter('volts', 'M24', 'P24')).shown).toBe(`-${loop.shown}`);
  });

  it('reads a dead coil by its ohms: 120²/30', () => {
    const coil = read(rest, meter('ohms', 'upstream-valve:1', 'upstream-valve:2'));
    expect(coil).toMatchObject({ shown: '480.0', unit: 'Ω', flags: [], steady: true });
    expect(read(rest, meter('continuity', 'upstream-valve:2', 'N')).note).toEqual({
      code: 'bench.note.beeps',
    });
  });

  it('says that ohms mean nothing on a live circuit, and warns', () => {
    const live = read(purge, meter('ohms', '56', 'N'));
    expect(live.flags).toContain('live circuit');
    expect(live.steady).toBe(false);
    expect(live.warn).toEqual({ code: 'bench.warn.live-circuit' });
    // The contactor's coil as it would be read dead is nowhere near.
    expect(live.value ?? Number.POSITIVE_INFINITY).toBeGreaterThan(1e6);
  });

  it('clamps a hundredth of an ampere: the contactor’s coil, and the motor by its lead', () => {
    const amps = read(purge, meter('amps', 'fan.contactor:1'));
    const nominal = purge.meter({ kind: 'amps', from: 'fan.contactor:1', to: '' })?.value ?? 0;
    expect(nominal).toBeGreaterThan(0.02);
    expect(Math.abs(Number(amps.shown) - nominal)).toBeLessThan(0.00501);
    const lead = readTool(
      purge,
      meter('amps', 'fan-motor-lead'),
      createToolState(meter('amps', 'fan-motor-lead'), purge.timeS() - 5),
    );
    expect(lead.value).toBeGreaterThan(4.5);
    expect(lead.shown).toMatch(/^\d+\.\d\d$/);
  });

  it('is unsettled for the display’s 0.3 s after a contact has moved', () => {
    const run = runTo('purge');
    const use = meter('volts', '56', 'N');
    const state = createToolState(use, run.timeS() - 2);
    run.advanceTo(Math.ceil(run.timeS() * 10) / 10);
    expect(readTool(run, use, state).flags).toEqual([]);
    run.act({ type: 'emergency-stop', pressed: true });
    run.advanceTo(run.timeS() + 0.2);
    expect(readTool(run, use, state)).toMatchObject({ flags: ['settling'], steady: false });
    run.advanceTo(run.timeS() + 3);
    expect(readTool(run, use, state)).toMatchObject({ flags: [], steady: true });
  });
});

describe('a wire that hangs on nothing', () => {
  /** The laundry with the wire off the upstream valve. */
  function withoutValve(): RunSetup {
    const setup = soundSetup();
    const wiring = {
      ...setup.plant.wiring,
      joints: [{ terminal: 'upstream-valve:1', ohm: 1e12 }],
    };
    return { ...setup, plant: { ...setup.plant, wiring } };
  }

  it('shows ghost volts beside live wires, which the valve’s coil would take down', () => {
    const ghost = read(runTo('pilot trial', withoutValve()), meter('volts', '53', 'N')).value ?? 0;
    const loaded = read(runTo('pilot trial'), meter('volts', '53', 'N')).value ?? 0;
    // 18 m of 60 pF/m to two live cores, to a dead one and to earth: a good part of the mains, not all.
    expect(ghost).toBeGreaterThan(20);
    expect(ghost).toBeLessThan(110);
    expect(loaded).toBeLessThan(0.1);
  });
});
