import { describe, expect, it } from 'vitest';
import { createRun } from '../../../src/engine/index.ts';
import { createContactBoard } from '../../../src/field/contact.ts';
import type { FieldParameters } from '../../../src/field/index.ts';
import { createWiring, readMeter, solveWiring } from '../../../src/field/wiring/index.ts';
import { shippedSetup } from '../../support/library.ts';
import { dairyField } from '../dairy-field.ts';

/** One wire beside a live one over a length of cable, hanging on nothing. */
function hangingWire(lengthM: number, earthPfM: number): FieldParameters {
  const { field, control, wiring } = dairyField();
  return {
    control,
    field: {
      ...field,
      supply: { ...field.supply, mainsVolts: 230, nominalVolts: 230, mainsHz: 50 },
    },
    wiring: {
      ...wiring,
      sources: [
        {
          id: 'mains',
          kind: 'alternating',
          volts: 0,
          live: 'L',
          neutral: 'N',
          seriesOhm: 0.01,
          bonded: true,
        },
      ],
      contacts: [],
      rungs: [['L', 'burner-switch', 'hanging', 'reset-button', 'N']],
      cables: [
        {
          id: 'cable',
          lengthM,
          coreToCorePfM: 60,
          coreToEarthPfM: earthPfM,
          wires: ['L', 'hanging'],
        },
      ],
    },
  };
}

function ghostVolts(lengthM: number, earthPfM: number, meterOhm: number): number {
  const none = new Map<string, never>();
  const parameters = hangingWire(lengthM, earthPfM);
  const w = createWiring(parameters, none, none, none, createContactBoard());
  solveWiring(w);
  const question = { kind: 'volts', from: 'hanging', to: 'N' } as const;
  return readMeter(w, question, meterOhm)?.value ?? Number.NaN;
}

describe('ghost volts on a hanging wire', () => {
  // Capacitive divider at 230 V 50 Hz, 60 pF/m: own computation, to 1e-3 (sensing_electrical).
  it.each([
    [5, 0, 1e7, 157.749],
    [5, 0, 1e6, 21.581],
    [5, 0, 3000, 0.065],
    [5, 60, 1e7, 101.589],
    [5, 60, 3000, 0.065],
    [20, 0, 1e7, 222.312],
    [20, 0, 1e6, 81.134],
    [20, 0, 3000, 0.26],
    [20, 60, 1e7, 114.002],
    [20, 60, 3000, 0.26],
    [50, 0, 1e7, 228.716],
    [50, 0, 1e6, 157.749],
    [50, 0, 3000, 0.65],
    [50, 60, 1e7, 114.839],
    [50, 60, 3000, 0.65],
  ])('%i m of cable, %i pF/m to earth, a meter of %d Ω', (lengthM, earthPfM, meterOhm, volts) => {
    const read = ghostVolts(lengthM, earthPfM, meterOhm);
    // The table has three decimals, so its small rows are good to half of the last.
    expect(Math.abs(read - volts)).toBeLessThan(Math.max(1e-3 * volts, 5.1e-4));
  });
});

describe('a meter on a run', () => {
  it('leaves the run bit for bit as it was', () => {
    const measured = createRun(shippedSetup('healthy-start'));
    const left = createRun(shippedSetup('healthy-start'));
    const kinds = ['volts', 'ohms', 'continuity', 'amps'] as const;
    for (let t = 5; t <= 100; t += 5) {
      measured.advanceTo(t);
      for (const kind of kinds) measured.meter({ kind, from: 'upstream-valve:1', to: 'N' });
    }
    left.advanceTo(100);
    expect(measured.hash()).toBe(left.hash());
  });

  const run = createRun(shippedSetup('healthy-start'));
  run.advanceTo(100);
  const read = (kind: 'volts' | 'ohms' | 'continuity' | 'amps', from: string, to = 'N') =>
    run.meter({ kind, from, to });

  it('shows mains, a loop and a track as they are', () => {
    expect(read('volts', 'L1')?.alternating).toBeGreaterThan(118);
    // 12 bar of 16 on 4–20 mA over 250 Ω: 1 V + 4 V · 0.55 and more; a few mV of cross-talk.
    const loop = read('volts', '72', 'M24')?.direct ?? 0;
    expect(loop).toBeGreaterThan(1);
    expect(Math.abs((read('amps', 'vessel.loop:1')?.direct ?? 0) - loop / 250)).toBeLessThan(1e-5);
    // Damper at 90°: the wiper at the top of the 5 V track.
    expect(Math.abs((read('volts', '82', 'M24')?.direct ?? 0) - 5)).toBeLessThan(0.02);
  });

  it('reads the current of a load by its power', () => {
    // 15 W at 120 V: 0.125 A, less what the source drops.
    const amps = read('amps', 'fan.contactor:1')?.value ?? 0;
    expect(Math.abs(amps - 0.125)).toBeLessThan(0.002);
    expect(read('amps', 'upstream-valve:1')?.value).toBeLessThan(1e-9);
  });

  it('reads a coil by its ohms when dead, and says when it is not', () => {
    // 120²/45 Ω, with nothing else on that wire.
    const coil = read('ohms', 'upstream-valve:1', 'upstream-valve:2');
    expect(Math.abs((coil?.value ?? 0) - 320)).toBeLessThan(0.5);
    expect([coil?.live, coil?.overload]).toEqual([false, false]);
    expect(read('ohms', 'L1')?.live).toBe(true);
    expect(read('continuity', 'upstream-valve:2', 'N')?.beeps).toBe(true);
    expect(read('continuity', '54', 'N')?.beeps).toBe(false);
    expect(read('ohms', '54', '50')?.live).toBe(true);
  });

  it('knows only places of this plant', () => {
    expect(read('volts', 'nowhere')).toBeNull();
    expect(read('volts', 'L1', 'nowhere')).toBeNull();
    expect(read('amps', 'L1')).toBeNull();
  });
});
