/** Direct volts are made of the mains: who isolates the panel has isolated the loops as well. */
import { expect, it } from 'vitest';
import { createRun, type Run } from '../../../src/engine/index.ts';
import { findFault } from '../../../src/faults/index.ts';
import { soundSetup, withFault } from '../../faults/exercises.ts';

const setup = soundSetup('dairy');

function volts(run: Run, from: string): number {
  return run.meter({ kind: 'volts', from, to: 'earth' })?.value ?? Number.NaN;
}

it('isolated, neither loops nor tracks have volts, and both come back with the mains', () => {
  const run = createRun(setup);
  run.advanceTo(3);
  const before = ['P24', 'P24F', 'P5'].map((wire) => volts(run, wire));
  expect(before[0]).toBeGreaterThan(23);
  expect(before[2]).toBeGreaterThan(4.9);
  run.act({ type: 'supply', on: false });
  run.advanceTo(4);
  for (const wire of ['P24', 'P24F', 'P5']) expect(volts(run, wire)).toBeLessThan(1e-6);
  run.act({ type: 'supply', on: true });
  run.advanceTo(5);
  // Noise of the transmitters' signals, and a start that has gone on meanwhile: hundredths of a volt.
  ['P24', 'P24F', 'P5'].forEach((wire, i) => {
    expect(Math.abs(volts(run, wire) - (before[i] as number))).toBeLessThan(0.05);
  });
});

it.each([
  ['damper feedback open circuit', 'damper.wiper', 1],
  ['loop supply fuse blown', 'loop-fuse', 0.05],
])('%s: isolated, ohms across %s tell it from a sound one', (name, element, soundOhm) => {
  const fault = findFault(name);
  if (fault === undefined) throw new Error(`no ${name}`);
  const ohms = (run: Run) => {
    run.act({ type: 'supply', on: false });
    run.advanceTo(5);
    return run.meter({ kind: 'ohms', from: `${element}:1`, to: `${element}:2` });
  };
  const sound = ohms(createRun(setup));
  expect(sound?.live).toBe(false);
  // Within a hundredth: what is beside it is a million times as much.
  expect(Math.abs((sound?.value ?? 0) / soundOhm - 1)).toBeLessThan(0.01);
  const broken = ohms(createRun(withFault(setup, fault, 1)));
  expect(broken?.live).toBe(false);
  expect(broken?.value).toBeGreaterThan(1000 * soundOhm);
});
