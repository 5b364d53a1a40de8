/** A winding that has failed is open: to a meter across it, and to a clamp round its wire. */
import { describe, expect, it } from 'vitest';
import { createRun, type Run, type RunSetup } from '../../../src/engine/index.ts';
import { findFault } from '../../../src/faults/index.ts';
import { soundSetup, withFault } from '../../faults/exercises.ts';

const setup = soundSetup('dairy');

function withDead(name: string): RunSetup {
  const fault = findFault(name);
  if (fault === undefined) throw new Error(`no ${name}`);
  return withFault(setup, fault, fault.severity.high);
}

function read(run: Run, kind: 'ohms' | 'amps', element: string) {
  const reading = run.meter({ kind, from: `${element}:1`, to: `${element}:2` });
  if (reading === null) throw new Error(`no reading at ${element}`);
  return reading;
}

function ranTo(s: RunSetup, untilS: number): Run {
  const run = createRun(s);
  run.advanceTo(untilS);
  return run;
}

function isolated(s: RunSetup): Run {
  const run = createRun(s);
  run.act({ type: 'supply', on: false });
  run.advanceTo(5);
  return run;
}

it.each([
  ['ignition transformer dead', 'ignition-transformer'],
  ['fan contactor coil open', 'fan.contactor'],
  ['upstream valve coil open', 'upstream-valve'],
])('%s: isolated, %s reads ohms when sound and open when not', (name, element) => {
  const sound = read(isolated(setup), 'ohms', element);
  expect(sound).toMatchObject({ live: false, overload: false });
  // A winding of 15 to 100 W at 120 V.
  expect(sound.value).toBeGreaterThan(100);
  expect(sound.value).toBeLessThan(1000);
  expect(read(isolated(withDead(name)), 'ohms', element)).toMatchObject({
    live: false,
    overload: true,
  });
});

describe.each([
  ['damper servo motor dead', 'damper.motor'],
  ['fuel valve servo motor dead', 'fuel-valve.motor'],
])('%s', (name, element) => {
  it('takes no current with volts on it; a sound one its 12 W', () => {
    expect(Math.abs(read(ranTo(setup, 5), 'amps', element).value - 0.1)).toBeLessThan(0.005);
    expect(read(ranTo(withDead(name), 5), 'amps', element).value).toBe(0);
  });

  it('isolated, leaves more ohms on the wire of the panel that it hangs on', () => {
    const sound = read(isolated(setup), 'ohms', element).value;
    const dead = read(isolated(withDead(name)), 'ohms', element).value;
    // 1200 Ω taken away from about 210 Ω: 1/(1/210 − 1/1200) is a fifth more.
    expect(Math.abs(dead / sound - 1.2)).toBeLessThan(0.05);
  });
});
