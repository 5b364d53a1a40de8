import { describe, expect, it } from 'vitest';
import {
  createSaturation,
  LEAST_SATURATION_K,
  liquidWater,
  MOST_SATURATION_K,
  readSaturation,
  saturationPressure,
  saturationPressureSlope,
  saturationTemperature,
  steam,
} from '../../../src/plant/steam/index.ts';

const off = (found: number, expected: number) => Math.abs(found / expected - 1);

/** The worst error of the table between two temperatures, every 0.37 K. */
function worst(fromK: number, toK: number) {
  const s = createSaturation();
  let value = 0;
  let slope = 0;
  for (let kelvin = fromK; kelvin < toK; kelvin += 0.37) {
    readSaturation(s, kelvin);
    const pascal = saturationPressure(kelvin);
    const byKelvin = saturationPressureSlope(kelvin);
    const water = liquidWater(kelvin, pascal);
    const vapour = steam(kelvin, pascal);
    const heatSlope = (phase: typeof water) =>
      phase.heatCapacityJKgK + (phase.volumeM3Kg - kelvin * phase.volumePerK) * byKelvin;
    const densitySlope = (phase: typeof water) =>
      -(phase.volumePerK + phase.volumePerPa * byKelvin) / (phase.volumeM3Kg * phase.volumeM3Kg);
    value = Math.max(
      value,
      off(s.pressurePa, pascal),
      off(s.waterDensity, 1 / water.volumeM3Kg),
      // Water's enthalpy is zero at the triple point: held against 100 kJ/kg there.
      Math.abs(s.waterEnthalpy - water.enthalpyJKg) / Math.max(water.enthalpyJKg, 1e5),
      off(s.steamDensity, 1 / vapour.volumeM3Kg),
      off(s.steamEnthalpy, vapour.enthalpyJKg),
    );
    slope = Math.max(
      slope,
      off(s.pressureSlope, byKelvin),
      off(s.waterEnthalpySlope, heatSlope(water)),
      off(s.steamDensitySlope, densitySlope(vapour)),
      // These two go through zero: held against a typical slope.
      Math.abs(s.waterDensitySlope - densitySlope(water)) / 1,
      Math.abs(s.steamEnthalpySlope - heatSlope(vapour)) / 1000,
    );
  }
  return { value, slope };
}

describe('the table of saturation', () => {
  it('is within 1e-6 of IF97 and 1e-4 of its slopes from freezing to 16 MPa', () => {
    const { value, slope } = worst(LEAST_SATURATION_K, MOST_SATURATION_K);
    expect(value).toBeLessThan(1e-6);
    expect(slope).toBeLessThan(1e-4);
  });

  it('is within 2e-8 and 1e-6 between 100 and 220 °C, where the boilers work', () => {
    const { value, slope } = worst(373, 493);
    expect(value).toBeLessThan(2e-8);
    expect(slope).toBeLessThan(1e-6);
  });

  // Bar, K, kg/m³, kJ/kg, kg/m³, kJ/kg: own computation elsewhere from the same release.
  it.each([
    [1.01325, 373.124, 958.3727, 418.9907, 0.5976231, 2675.5315],
    [5, 424.986, 915.2843, 640.1853, 2.6680581, 2748.1076],
    [13, 464.763, 874.2771, 814.7637, 6.6148562, 2786.4934],
  ])(
    'has at %d bar what another computation has',
    (bar, kelvin, water, heat, vapour, vapourHeat) => {
      const s = createSaturation();
      readSaturation(s, saturationTemperature(bar * 1e5));
      expect(s.temperatureK).toBeCloseTo(kelvin, 3);
      expect(off(s.waterDensity, water)).toBeLessThan(1e-7);
      expect(off(s.waterEnthalpy, heat * 1e3)).toBeLessThan(1e-7);
      expect(off(s.steamDensity, vapour)).toBeLessThan(1e-7);
      expect(off(s.steamEnthalpy, vapourHeat * 1e3)).toBeLessThan(1e-7);
    },
  );

  it('is held at the ends of its range', () => {
    const s = createSaturation();
    readSaturation(s, 200);
    expect(s.temperatureK).toBe(LEAST_SATURATION_K);
    readSaturation(s, 700);
    expect(s.temperatureK).toBe(MOST_SATURATION_K);
    expect(off(s.pressurePa, saturationPressure(MOST_SATURATION_K))).toBeLessThan(1e-12);
  });
});
