import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBalance, type VesselState } from '../../../src/plant/vessel/index.ts';
import { drumBoiler, heatingBoiler, run, shellBoiler } from './boilers.ts';

const act = fc.record({
  heatW: fc.double({ min: -2e5, max: 6e6, noNaN: true }),
  load: fc.double({ min: 0, max: 1, noNaN: true }),
  feedDemand: fc.double({ min: 0, max: 1, noNaN: true }),
  pumpFed: fc.boolean(),
  seconds: fc.integer({ min: 1, max: 300 }),
});

const kinds: readonly (readonly [string, () => VesselState, number])[] = [
  ['water-tube', () => drumBoiler({ waterLossKgS: 0.1, safetyValveLeak: 0.02 }), 1],
  ['fire-tube', () => shellBoiler({ heatLagS: 8, heatLossW: 15000, accumulatorM3: 5 }), 0.5],
  ['hot water', () => heatingBoiler(), 0.08],
];

describe.each(kinds)('a vessel of kind %s', (_kind, create, size) => {
  it('holds what it took less what it gave, of water and energy, whatever is done to it', () => {
    fc.assert(
      fc.property(fc.array(act, { minLength: 1, maxLength: 12 }), (acts) => {
        const state = create();
        const before = readBalance(state);
        for (const { seconds, heatW, ...feed } of acts) {
          run(state, seconds, { ...feed, heatW: size * heatW });
        }
        const after = readBalance(state);
        const kg = after.massInKg - after.massOutKg - (after.massKg - before.massKg);
        const joule = after.energyInJ - after.energyOutJ - (after.energyJ - before.energyJ);
        // What is left is the end of Newton's method, 1e-7 K, and rounding.
        expect(Math.abs(kg)).toBeLessThan(1e-9 * (after.massKg + after.massInKg));
        expect(Math.abs(joule)).toBeLessThan(1e-7 * (after.energyJ + Math.abs(after.energyInJ)));
      }),
      { seed: 3, numRuns: 25 },
    );
  });

  it('keeps every reading finite and within what is possible', () => {
    fc.assert(
      fc.property(fc.array(act, { minLength: 1, maxLength: 12 }), (acts) => {
        const state = create();
        for (const { seconds, heatW, ...feed } of acts) {
          run(state, seconds, { ...feed, heatW: size * heatW });
          for (const value of Object.values(state)) {
            if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
          }
          expect(state.gaugePa).toBeGreaterThanOrEqual(0);
          expect(state.bubbleM3).toBeGreaterThanOrEqual(0);
          expect(state.steamKgS).toBeGreaterThanOrEqual(0);
          expect(state.feedKgS).toBeGreaterThanOrEqual(0);
          expect(state.waterTemperatureK).toBeGreaterThan(273);
          expect(state.waterTemperatureK).toBeLessThan(622);
          expect(state.riserQuality).toBeGreaterThanOrEqual(0);
          expect(state.riserQuality).toBeLessThan(1);
        }
      }),
      { seed: 4, numRuns: 25 },
    );
  });

  it('comes to the same with steps half as long', () => {
    const whole = create();
    const half = create();
    for (const state of [whole, half]) {
      const stepS = state === whole ? 0.1 : 0.05;
      const full = size * 5e6;
      run(state, 300, { heatW: full, load: 0.5, feedDemand: 0.3 }, stepS);
      run(state, 20, { heatW: full, load: 0.9, feedDemand: 0.4 }, stepS);
      run(state, 20, { heatW: 0, load: 0.2, feedDemand: 0.1 }, stepS);
    }
    const near = (key: keyof VesselState, scale: number) => {
      expect(Math.abs((whole[key] as number) - (half[key] as number))).toBeLessThan(scale);
    };
    // 0.5 % of what each moves here: a bar, 10 K, 100 mm, 2 kg/s.
    near('gaugePa', 200);
    near('waterTemperatureK', 0.02);
    near('levelM', 5e-4);
    near('steamKgS', 2e-3);
    near('feedKgS', 0.01);
    near('circulationKgS', 1);
  });
});
