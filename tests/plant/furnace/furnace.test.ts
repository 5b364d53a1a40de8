import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fillFurnace, restartAirChanges, stepFurnace } from '../../../src/plant/furnace/index.ts';
import { dairyFurnace, feedOf, fuelInside, massInside, runFurnace } from './dairy-furnace.ts';

const COLD_K = 293.15;

describe('purge', () => {
  it('follows the analytic curve of two tanks in series', () => {
    const state = dairyFurnace({ bypassShare: 0 });
    const air = 2.4;
    const flowM3S = air / state.ambient.densityKgM3;
    const first = flowM3S / 9;
    const second = flowM3S / 5;
    fillFurnace(state, 0.02);
    for (let second10 = 1; second10 <= 4; second10++) {
      runFurnace(state, 10, { air, waterK: COLD_K });
      // Once clean, the last steps may still wait to be taken together.
      const t = 10 * second10 - state.gatheredS;
      const one = Math.exp(-first * t);
      const two =
        Math.exp(-second * t) + (second / (second - first)) * (one - Math.exp(-second * t));
      // Both full of the same mixture at first. 2 % of fuel is lighter than the air that drives
      // it out, and the step is 10 ms: 1e-4.
      // A trace that nothing can light is followed in coarser steps: 1 % of the trace.
      const close = 0.4 * two > 2e-3 ? 1e-4 : 1e-2;
      expect(Math.abs(state.furnaceCombustible / (0.4 * one) - 1)).toBeLessThan(close);
      expect(Math.abs(state.passCombustible / (0.4 * two) - 1)).toBeLessThan(close);
      expect(state.combustible).toBe(state.passCombustible);
    }
  });

  it('counts one air change for each volume of cold air', () => {
    const state = runFurnace(dairyFurnace(), 5, { air: 2, waterK: COLD_K });
    restartAirChanges(state);
    runFurnace(state, 30, { air: 2, waterK: COLD_K });
    expect(state.airChanges).toBeCloseTo((30 * 2) / state.ambient.densityKgM3 / 14, 6);
  });

  it('leaves more behind where part of the air finds a short way out', () => {
    const through = dairyFurnace({ bypassShare: 0 });
    const short = dairyFurnace({ bypassShare: 0.2 });
    for (const state of [through, short]) {
      fillFurnace(state, 0.03);
      runFurnace(state, 30, { air: 2.4, waterK: COLD_K });
    }
    expect(short.combustible).toBeGreaterThan(2 * through.combustible);
  });
});

describe('balance', () => {
  it('conserves mass and fuel atoms to 1e-9, burning, gathering, puffing, reversing', () => {
    const leg = fc.record({
      air: fc.double({ min: -0.5, max: 2.5, noNaN: true }),
      gas: fc.double({ min: 0, max: 0.1, noNaN: true }),
      burntShare: fc.double({ min: 0, max: 1, noNaN: true }),
      igniter: fc.constantFrom(0, 1),
    });
    fc.assert(
      fc.property(fc.array(leg, { minLength: 1, maxLength: 5 }), (legs) => {
        const state = dairyFurnace();
        let balance = massInside(state);
        for (const { air, gas, burntShare, igniter } of legs) {
          // As the flame does, burn no more than the air that comes in allows.
          const burnt = Math.min(gas * burntShare, Math.max(0, air) / state.fuel.airPerFuelKgKg);
          for (let i = 0; i < 200; i++) {
            stepFurnace(state, feedOf(air, gas, burnt, igniter), 0.01);
            balance += (air + gas) * 0.01;
          }
        }
        expect(Math.abs(massInside(state) + state.leftKg - balance)).toBeLessThan(1e-9);
        const { furnace, passes } = state;
        expect(Math.min(furnace.fuelKg, furnace.airKg, furnace.productKg)).toBeGreaterThanOrEqual(
          0,
        );
        expect(Math.min(passes.fuelKg, passes.airKg, passes.productKg)).toBeGreaterThanOrEqual(0);
      }),
      { seed: 41, numRuns: 40 },
    );
  });

  it('keeps every fuel atom that does not leave', () => {
    const state = dairyFurnace({ bypassShare: 0 });
    let balance = 0;
    for (let i = 0; i < 3000; i++) {
      const burnt = i % 700 < 350 ? 0.02 : 0.005;
      stepFurnace(state, feedOf(0.5, 0.021, burnt, 1), 0.01);
      const { passes, fuel } = state;
      const left =
        passes.outFuelKg + passes.outUnfinishedKg + passes.outProductKg / (1 + fuel.airPerFuelKgKg);
      balance += 0.00021 - left;
    }
    expect(Math.abs(fuelInside(state) - balance)).toBeLessThan(1e-9);
  });

  it('shares the heat of the fuel between water, casing and stack', () => {
    const state = runFurnace(dairyFurnace(), 3600, { air: 2.4, gas: 0.12, burnt: 0.12 });
    const fired = 0.12 * state.fuel.lowerHeatingJKg;
    const casing = 40 * (state.refractoryTemperatureK - COLD_K);
    // Specific heat of the flue gas as in the loss table of methane: 1.11 kJ/(kg·K).
    const stack = 2.52 * 1112 * (state.flueTemperatureK - COLD_K);
    expect(Math.abs((state.heatToWaterW + casing + stack) / fired - 1)).toBeLessThan(0.003);
    expect(state.heatToWaterW / fired).toBeGreaterThan(0.85);
    expect(state.heatToWaterW / fired).toBeLessThan(0.92);
  });
});

describe('flue gas', () => {
  // Excess air and dry oxygen of methane, from its flue-gas table; 1e-3 and a step of bypass.
  it.each([
    [1.05, 1.1079],
    [1.15, 3.0058],
    [1.2, 3.8248],
    [1.3, 5.2572],
    [1.5, 7.5061],
    [1.75, 9.5483],
  ])('well mixed at an air ratio of $0, holds $1 % of oxygen when dry', (ratio, percent) => {
    const state = dairyFurnace({ mixingSpread: 0.02 });
    const gas = 0.08;
    runFurnace(state, 120, { air: ratio * gas * state.fuel.airPerFuelKgKg, gas, burnt: gas });
    expect(Math.abs((100 * state.flueOxygen) / percent - 1)).toBeLessThan(2e-3);
  });

  it('lags the fire by the volume it has to fill', () => {
    const state = runFurnace(dairyFurnace(), 1, { air: 0.5, gas: 0.021, burnt: 0.021 });
    expect(state.flueOxygen).toBeGreaterThan(0.2);
    runFurnace(state, 60, { air: 0.5, gas: 0.021, burnt: 0.021 });
    expect(state.flueOxygen).toBeLessThan(0.08);
  });

  it('is hotter with fouled passes and with more fire', () => {
    const flows = { air: 2.4, gas: 0.12, burnt: 0.12 };
    const clean = runFurnace(dairyFurnace(), 300, flows).flueTemperatureK;
    const fouled = runFurnace(dairyFurnace({ fouling: 0.4 }), 300, flows).flueTemperatureK;
    const low = runFurnace(dairyFurnace(), 300, { air: 0.5, gas: 0.024, burnt: 0.024 });
    expect(fouled).toBeGreaterThan(clean + 40);
    expect(low.flueTemperatureK).toBeLessThan(clean - 15);
    expect(clean).toBeGreaterThan(480);
    expect(clean).toBeLessThan(540);
  });
});
