import { describe, expect, it } from 'vitest';
import {
  liquidWater,
  saturationPressure,
  saturationPressureSlope,
  saturationTemperature,
  steam,
} from '../../../src/plant/steam/index.ts';

// IAPWS R7-97(2012), tables 5, 15, 35 and 36. Published to nine digits, so 1e-8 of each value.
const off = (found: number, expected: number) => Math.abs(found / expected - 1);

// K, MPa, m³/kg, kJ/kg, kJ/kg, kJ/(kg·K), kJ/(kg·K), m/s
type Row = readonly [number, number, number, number, number, number, number, number];
const TABLE_5: readonly Row[] = [
  [300, 3, 0.00100215168, 115.331273, 112.324818, 0.392294792, 4.17301218, 1507.73921],
  [300, 80, 0.000971180894, 184.142828, 106.448356, 0.368563852, 4.01008987, 1634.69054],
  [500, 3, 0.001202418, 975.542239, 971.934985, 2.58041912, 4.65580682, 1240.71337],
];
const TABLE_15: readonly Row[] = [
  [300, 0.0035, 39.4913866, 2549.91145, 2411.6916, 8.52238967, 1.91300162, 427.920172],
  [700, 0.0035, 92.3015898, 3335.68375, 3012.62819, 10.1749996, 2.08141274, 644.289068],
  [700, 30, 0.00542946619, 2631.49474, 2468.61076, 5.17540298, 10.3505092, 480.386523],
];

describe.each([
  ['water', liquidWater, TABLE_5],
  ['steam', steam, TABLE_15],
] as const)('%s by IF97', (_name, phaseAt, rows) => {
  it.each(rows)('at %d K and %d MPa is that of the release', (kelvin, mpa, v, h, u, s, cp, w) => {
    const phase = phaseAt(kelvin, mpa * 1e6);
    expect(off(phase.volumeM3Kg, v)).toBeLessThan(1e-8);
    expect(off(phase.enthalpyJKg, h * 1e3)).toBeLessThan(1e-8);
    expect(off(phase.internalEnergyJKg, u * 1e3)).toBeLessThan(1e-8);
    expect(off(phase.entropyJKgK, s * 1e3)).toBeLessThan(1e-8);
    expect(off(phase.heatCapacityJKgK, cp * 1e3)).toBeLessThan(1e-8);
    expect(off(phase.soundMS, w)).toBeLessThan(1e-8);
  });

  // Differences of 1 Pa·p/1e5 and 5 mK leave 1e-6 of truncation and rounding.
  it.each(rows)('at %d K and %d MPa changes with both as its neighbours say', (kelvin, mpa) => {
    const pascal = mpa * 1e6;
    const phase = phaseAt(kelvin, pascal);
    const dp = pascal * 1e-5;
    const dT = 0.005;
    const above = phaseAt(kelvin, pascal + dp).volumeM3Kg;
    const below = phaseAt(kelvin, pascal - dp).volumeM3Kg;
    expect(off((above - below) / (2 * dp), phase.volumePerPa)).toBeLessThan(1e-5);
    const warmer = phaseAt(kelvin + dT, pascal);
    const colder = phaseAt(kelvin - dT, pascal);
    const volumeChange = (warmer.volumeM3Kg - colder.volumeM3Kg) / (2 * dT);
    expect(off(volumeChange, phase.volumePerK)).toBeLessThan(1e-5);
    const heatChange = (warmer.enthalpyJKg - colder.enthalpyJKg) / (2 * dT);
    expect(off(heatChange, phase.heatCapacityJKgK)).toBeLessThan(1e-5);
  });
});

describe('boiling by IF97', () => {
  it.each([
    [300, 0.00353658941],
    [500, 2.63889776],
    [600, 12.3443146],
    [623.15, 16.5291643],
  ])('at %d K is at %d MPa', (kelvin, mpa) => {
    expect(off(saturationPressure(kelvin), mpa * 1e6)).toBeLessThan(1e-8);
  });

  it.each([
    [0.1, 372.755919],
    [1, 453.035632],
    [10, 584.149488],
  ])('at %d MPa is at %d K', (mpa, kelvin) => {
    expect(off(saturationTemperature(mpa * 1e6), kelvin)).toBeLessThan(1e-8);
  });

  it('temperature and pressure are each other turned round, from freezing to 16 MPa', () => {
    for (let kelvin = 273.2; kelvin < 623; kelvin += 7.3) {
      expect(off(saturationTemperature(saturationPressure(kelvin)), kelvin)).toBeLessThan(1e-9);
    }
  });

  it('rises with temperature by the slope it states, as Clausius and Clapeyron want', () => {
    for (const kelvin of [290, 373.15, 453, 575]) {
      const slope = saturationPressureSlope(kelvin);
      const found = (saturationPressure(kelvin + 0.01) - saturationPressure(kelvin - 0.01)) / 0.02;
      expect(off(found, slope)).toBeLessThan(1e-6);
      const pascal = saturationPressure(kelvin);
      const water = liquidWater(kelvin, pascal);
      const vapour = steam(kelvin, pascal);
      const clapeyron =
        (vapour.enthalpyJKg - water.enthalpyJKg) /
        (kelvin * (vapour.volumeM3Kg - water.volumeM3Kg));
      // The regions of IF97 agree with each other to some 1e-5 there.
      expect(off(clapeyron, slope)).toBeLessThan(1e-3);
    }
  });
});
