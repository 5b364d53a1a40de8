import { expect, it } from 'vitest';
import { createSaturation, readSaturation } from '../../../src/plant/vessel/index.ts';

// IAPWS R7-97(2012), regions 1, 2 and 4 on the saturation line, own computation from its
// coefficients: bar, K, kg/m³, kJ/kg, kg/m³, kJ/kg. Tolerances are those the fit states.
it.each([
  [1.01325, 373.124, 958.3727, 418.9907, 0.5976231, 2675.5315],
  [2, 393.362, 942.9351, 504.6838, 1.1290058, 2706.2413],
  [5, 424.986, 915.2843, 640.1853, 2.6680581, 2748.1076],
  [9, 448.508, 891.9135, 742.7246, 4.6538967, 2773.0376],
  [13, 464.763, 874.2771, 814.7637, 6.6148562, 2786.4934],
  [17, 477.465, 859.5816, 871.8879, 8.5713308, 2794.5308],
])(
  'at %d bar water and steam are those of IF97',
  (bar, kelvin, waterDensity, waterHeat, steamDensity, steamHeat) => {
    const s = createSaturation();
    readSaturation(s, bar * 1e5);
    const off = (found: number, expected: number) => Math.abs(found / expected - 1);
    expect(off(s.temperatureK, kelvin)).toBeLessThan(3e-5);
    expect(off(s.waterDensity, waterDensity)).toBeLessThan(2e-5);
    expect(off(s.waterEnthalpy, waterHeat * 1e3)).toBeLessThan(1e-4);
    expect(off(s.steamDensity, steamDensity)).toBeLessThan(2e-5);
    expect(off(s.steamEnthalpy, steamHeat * 1e3)).toBeLessThan(2e-6);
  },
);

it('its slopes are those of its values', () => {
  const low = createSaturation();
  const high = createSaturation();
  const s = createSaturation();
  for (const pa of [1.5e5, 5e5, 12e5, 20e5]) {
    readSaturation(low, pa - 50);
    readSaturation(high, pa + 50);
    readSaturation(s, pa);
    const slope = (a: number, b: number) => (b - a) / 100;
    expect(s.temperatureSlope / slope(low.temperatureK, high.temperatureK)).toBeCloseTo(1, 6);
    expect(s.waterDensitySlope / slope(low.waterDensity, high.waterDensity)).toBeCloseTo(1, 5);
    expect(s.waterEnthalpySlope / slope(low.waterEnthalpy, high.waterEnthalpy)).toBeCloseTo(1, 6);
    expect(s.steamDensitySlope / slope(low.steamDensity, high.steamDensity)).toBeCloseTo(1, 6);
    expect(s.steamEnthalpySlope / slope(low.steamEnthalpy, high.steamEnthalpy)).toBeCloseTo(1, 4);
  }
});

it('is held at the ends of its range', () => {
  const s = createSaturation();
  readSaturation(s, 0);
  const lowest = { ...s };
  readSaturation(s, 0.9e5);
  expect(s).toEqual(lowest);
});
