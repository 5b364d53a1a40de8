import { describe, expect, it } from 'vitest';
import { settleVessel, type VesselState } from '../../../src/plant/vessel/index.ts';
import { placeAt, run, runHeld, shellBoiler } from './boilers.ts';

// Shell boiler of 5 t/h at 11 bar absolute: own derivation elsewhere, with IF97, share of flash
// steam that swells the water 1. 0.5 % of the change in each, and half of the last digit there.
const STEAM_KGS = 1.3888888888888888;
const HEAT_W = 3249522.127512237;
const absoluteBar = (state: VesselState) => (state.gaugePa + state.ambient.pressurePa) / 1e5;

function referenceBoiler(flashShare = 1): VesselState {
  // Its feed enthalpy, 441011.2 J/kg, is that of 105 °C at the pressure of a pump above the boiler's.
  const state = shellBoiler({ flashShare, feedTemperatureC: 105.01748 });
  placeAt(state, 11e5, 8.7, 0.739316);
  return state;
}

function near(found: number, expected: number, start: number, digit: number) {
  expect(Math.abs(found - expected)).toBeLessThan(0.005 * Math.abs(expected - start) + digit);
}

it('begins with the feed enthalpy of the reference', () => {
  expect(referenceBoiler().prepared.feedEnthalpyJKg / 441011.2240080586).toBeCloseTo(1, 6);
});

// s, bar, m³, m³, mm
describe('fire out, steam held, no feed', () => {
  it.each([
    [1, 10.9825, 8.697682, 0.739006, -0.35],
    [5, 10.91264, 8.688415, 0.740815, -1.345],
    [10, 10.82569, 8.676841, 0.745665, -2.241],
    [20, 10.65302, 8.653724, 0.756923, -3.823],
    [30, 10.48198, 8.630648, 0.768601, -5.342],
    [60, 9.97866, 8.561673, 0.805239, -9.654],
  ])('after %d s', (seconds, bar, water, bubble, mm) => {
    const state = referenceBoiler();
    const before = state.levelM;
    runHeld(state, seconds, 0, STEAM_KGS, 0);
    near(absoluteBar(state), bar, 11, 1e-5);
    near(state.waterM3, water, 8.7, 1e-6);
    near(state.bubbleM3, bubble, 0.739316, 5e-6);
    near(1e3 * (state.levelM - before), mm, 0, 2e-3);
  });
});

describe('a fifth more fire', () => {
  it.each([
    [1, 11.00407, 8.700171, 0.7397, 0.074],
    [5, 11.02037, 8.700854, 0.739856, 0.186],
    [10, 11.04077, 8.701708, 0.738897, 0.172],
    [30, 11.12262, 8.705128, 0.73378, -0.054],
    [60, 11.24617, 8.710266, 0.726072, -0.397],
  ])('after %d s', (seconds, bar, water, bubble, mm) => {
    const state = referenceBoiler();
    const before = state.levelM;
    runHeld(state, seconds, 1.2 * HEAT_W, STEAM_KGS, STEAM_KGS);
    near(absoluteBar(state), bar, 11, 1e-5);
    near(state.waterM3, water, 8.7, 1e-6);
    near(state.bubbleM3, bubble, 0.739316, 5e-6);
    near(1e3 * (state.levelM - before), mm, 0, 2e-3);
  });
});

describe('a megawatt', () => {
  it.each([
    [2, 0.09431],
    [4, 0.16658],
    [6, 0.23141],
    [8, 0.29162],
    [11, 0.37595],
    [14, 0.45501],
    [17, 0.53006],
    [21, 0.62524],
  ])('raises %d bar by %d bar a minute', (bar, rate) => {
    const state = shellBoiler();
    placeAt(state, bar * 1e5, 8.7, 0);
    runHeld(state, 0.1, 1e6, 0, 0);
    // Half a per cent as the table says, and its last digit.
    near((absoluteBar(state) - bar) * 600, rate, 0, 5e-6);
  });
});

describe('heated cold', () => {
  function coldBoiler(): VesselState {
    const state = shellBoiler();
    settleVessel(state, { gaugePa: 0, levelM: 0, waterTemperatureK: 293.15 });
    return state;
  }

  // Minutes from 20 to 99.85 °C of 8684 kg of water and the metal.
  it.each([
    [0.25, 68.189],
    [1, 17.047],
  ])('by %d of full fire comes to boiling in %d minutes', (share, minutes) => {
    const state = coldBoiler();
    expect(state.massKg).toBeCloseTo(8684.39, -1);
    let seconds = 0;
    while (state.waterTemperatureK < 373) {
      run(state, 1, { heatW: share * HEAT_W, load: 1 });
      seconds += 1;
    }
    expect(Math.abs(seconds / 60 / minutes - 1)).toBeLessThan(0.005);
  });

  it('has no pressure, no steam and no bubbles before it boils, then all three', () => {
    const state = coldBoiler();
    run(state, 15 * 60, { heatW: HEAT_W, load: 0.2 });
    expect(state.waterTemperatureK).toBeGreaterThan(350);
    expect([state.gaugePa, state.steamKgS, state.bubbleM3]).toEqual([0, 0, 0]);
    run(state, 10 * 60, { heatW: HEAT_W, load: 0.2 });
    expect(state.gaugePa).toBeGreaterThan(5e4);
    expect(state.steamKgS).toBeGreaterThan(0.01);
    expect(state.bubbleM3).toBeGreaterThan(0.01);
  });

  it('rises by its own expansion: 4 % from 20 to 100 °C', () => {
    const state = coldBoiler();
    const before = state.levelM;
    run(state, 16 * 60, { heatW: HEAT_W });
    // 998.2 over 961.9 kg/m³ at 95 °C, of 8.7 m³ on 7.5 m².
    const kelvin = state.waterTemperatureK;
    expect(kelvin).toBeGreaterThan(366);
    expect(kelvin).toBeLessThan(370);
    expect((state.levelM - before) / ((8.7 * (998.2 / 962 - 1)) / 7.5)).toBeCloseTo(1, 1);
  });
});

it('swells by only a share of the steam that flashes when the load jumps', () => {
  const swell = (flashShare: number) => {
    const state = referenceBoiler(flashShare);
    const before = state.levelM;
    runHeld(state, 4, HEAT_W, 3 * STEAM_KGS, STEAM_KGS);
    return state.levelM - before;
  };
  const all = swell(1);
  const half = swell(0.5);
  const none = swell(0);
  expect(all).toBeGreaterThan(0.01);
  expect(half).toBeLessThan(0.75 * all);
  expect(none).toBeLessThan(half);
});
