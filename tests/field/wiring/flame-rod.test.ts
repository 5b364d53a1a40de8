/** What a rod's insulation lets to earth: one resistance for the flame signal and for a meter. */
import { describe, expect, it } from 'vitest';
import { createRun, type Run } from '../../../src/engine/index.ts';
import { findFault } from '../../../src/faults/index.ts';
import { soundSetup, withFault } from '../../faults/exercises.ts';

const setup = soundSetup('school');
const rod = setup.plant.field.flameSensors.find(({ kind }) => kind === 'ionisation');
if (rod?.kind !== 'ionisation') throw new Error('the school has no flame rod');
const { id, sourceOhm } = rod;
const WET = 'flame rod insulator wet';
/** In modulation; a flame relay needs longer to let go than from here to the reading. */
const BURNS_S = 150;
const READ_S = 150.2;

function microamps(run: Run): number {
  const k = run.channels.findIndex((channel) => channel.id === 'flame.signal');
  return run.frame(run.frameCount() - 1)[k] as number;
}

function burning(fault: string | null, severity = 1): number {
  const run = createRun(setup);
  run.advanceTo(BURNS_S);
  if (fault !== null) run.act({ type: 'insert-fault', fault, severity });
  run.advanceTo(READ_S);
  return microamps(run);
}

function ohmsDead(fault: string | null, severity = 1) {
  const found = fault === null ? undefined : findFault(fault);
  const run = createRun(found === undefined ? setup : withFault(setup, found, severity));
  run.act({ type: 'supply', on: false });
  run.advanceTo(5);
  const read = run.meter({ kind: 'ohms', from: `${id}.signal:1`, to: `${id}.signal:2` });
  if (read === null) throw new Error('the rod is in no rung');
  return read;
}

describe('the insulation of a flame rod', () => {
  it('sound, leaves the amplifier alone between the wire and earth', () => {
    const { value, live } = ohmsDead(null);
    expect(live).toBe(false);
    // Beside it the sender's 1 GΩ and the rod's 10 GΩ: a thousandth.
    expect(Math.abs(value / sourceOhm - 1)).toBeLessThan(2e-3);
  });

  it.each([
    [WET, 0.2],
    [WET, 0.85],
    [WET, 0.98],
  ])(
    '%s by %d: the signal falls by that share, and the ohms of the wire to earth with it',
    (fault, share) => {
      // Re/(Re + Rs) is what is left of the volts, and of Rs for a meter: the same share.
      expect(Math.abs(burning(fault, share) / burning(null) - (1 - share))).toBeLessThan(2e-3);
      const { value, live } = ohmsDead(fault, share);
      expect(live).toBe(false);
      expect(Math.abs(value / sourceOhm - (1 - share))).toBeLessThan(2e-3);
    },
  );

  it('touching metal, or its cable chafed through, it gives no signal and a meter finds earth', () => {
    for (const [fault, severity, mostOhm] of [
      ['flame rod touches metal', 1, 10.1],
      ['earth fault on the flame sensor cable', 10, 23.1],
    ] as const) {
      expect(burning(fault, severity)).toBeLessThan(0.01);
      expect(ohmsDead(fault, severity).value).toBeLessThan(mostOhm);
    }
  });

  it('a wire that is off shows nothing of the amplifier, and no volts where none are made', () => {
    expect(ohmsDead('wire off at the flame sensor')).toMatchObject({ live: false, overload: true });
  });
});
