import { describe, expect, it } from 'vitest';
import { STEPS } from '../../machines/burner/index.ts';
import { createRun } from '../../src/engine/index.ts';
import { library, shippedSetup } from '../support/library.ts';

const run = createRun(shippedSetup('healthy-start'));
run.advanceTo(320);
const steps = run.events().flatMap((event) => (event.type === 'step' ? [event] : []));
const at = (id: string): number => run.channels.findIndex((channel) => channel.id === id);
const frameAtS = (t: number): Float64Array => run.frame(Math.round(t / run.frameS));
const enteredS = (step: string): number => steps.find((one) => one.step === step)?.t ?? Number.NaN;

describe('a healthy start of the dairy', () => {
  it('passes every step up to modulation, once and in order', () => {
    const upToModulation = STEPS.slice(0, STEPS.indexOf('modulation') + 1);
    expect(steps.map(({ step }) => step)).toEqual(upToModulation);
  });

  it('takes between 90 and 240 simulated seconds', () => {
    expect(enteredS('modulation')).toBeGreaterThan(90);
    expect(enteredS('modulation')).toBeLessThan(240);
  });

  it('has swept the furnace clean before any spark: less than a thousandth of the lower limit', () => {
    expect(frameAtS(enteredS('spark check'))[at('furnace.combustible')]).toBeLessThan(1e-3);
  });

  it('counts the air changes that really went through, to 5 %', () => {
    // 20 m³ at 2.05 m³/s: eight changes in 78 s, by division.
    const purgeS = enteredS('drive to light-off') - enteredS('purge');
    expect(Math.abs(purgeS - 78)).toBeLessThan(0.05 * 78);
  });

  it('makes no puff worth the name: under a twentieth of what the casing stands', () => {
    expect(frameAtS(300)[at('puff.index')]).toBeLessThan(0.05);
  });

  it('burns with 2 to 6 % of oxygen in the dry flue gas once it fires up', () => {
    for (const t of [240, 260, 280, 300]) {
      const oxygen = frameAtS(t)[at('flue.oxygen')] as number;
      expect(oxygen).toBeGreaterThan(0.02);
      expect(oxygen).toBeLessThan(0.06);
    }
  });
});

describe('with fifty other seeds', () => {
  it('the start goes through just the same', () => {
    for (let seed = 100; seed < 150; seed++) {
      const other = createRun(shippedSetup('healthy-start', { seed }), { keep: 'hash only' });
      other.advanceTo(260);
      expect({ seed, step: other.status().step }).toEqual({ seed, step: 'modulation' });
    }
  }, 60_000);
});

describe('the three practice profiles', () => {
  it.each(library.profiles.map((profile) => [profile.id, profile] as const))(
    '%s takes the dairy to modulation',
    (_id, profile) => {
      const other = createRun({ ...shippedSetup('healthy-start'), profile });
      other.advanceTo(420);
      expect(other.status().step).toBe('modulation');
    },
  );
});
