import { describe, expect, it } from 'vitest';
import { settleVessel, type VesselState } from '../../../src/plant/vessel/index.ts';
import { heatingBoiler, run } from './boilers.ts';

const celsius = (kelvin: number) => kelvin - 273.15;

function settled(kelvin: number | null, change = {}): VesselState {
  const state = heatingBoiler(change);
  settleVessel(state, { gaugePa: 0, levelM: 0, waterTemperatureK: kelvin });
  return state;
}

describe('a heating boiler', () => {
  it('comes to its rated temperatures on its rated heat', () => {
    const state = settled(293.15);
    run(state, 6 * 3600, { heatW: 404_000, load: 1 });
    expect(celsius(state.waterTemperatureK)).toBeCloseTo(82, 0);
    expect(celsius(state.returnTemperatureK)).toBeCloseTo(71, 0);
    expect(state.heatDeliveredW).toBeCloseTo(400_000, -3);
    // 400 kW over 11 K of 4190 J/(kg·K).
    expect(state.circulationKgS).toBeCloseTo(8.67, 1);
    expect([state.levelM, state.steamKgS]).toEqual([0, 0]);
  });

  it('is heated with the metal and the whole system', () => {
    const state = settled(293.15, { heatLossW: 0 });
    run(state, 600, { heatW: 400_000 });
    run(state, 600, {});
    // 240 MJ into 3999 kg of water and 900 kg of metal.
    const rise = 240e6 / (3998.8 * 4185 + 900 * 500);
    expect(celsius(state.waterTemperatureK)).toBeCloseTo(20 + rise, 1);
    expect(state.returnTemperatureK).toBeCloseTo(state.waterTemperatureK, 2);
  });

  it('runs hot within minutes when its circulating pump stops', () => {
    const state = settled(null);
    run(state, 1200, { heatW: 400_000, load: 1 });
    const before = state.waterTemperatureK;
    run(state, 120, { heatW: 400_000, load: 1, pumpFed: false });
    expect(state.waterTemperatureK).toBeGreaterThan(before + 12);
    const broken = settled(null, { circulatingPumpRuns: false });
    run(broken, 120, { heatW: 400_000, load: 1 });
    expect(broken.circulationKgS).toBeLessThan(0.2);
  });

  it('warms its return through the shunt', () => {
    const plain = settled(293.15);
    const shunted = settled(293.15, { shuntShare: 0.4 });
    for (const state of [plain, shunted]) run(state, 600, { heatW: 300_000, load: 1 });
    const apart = (state: VesselState) => state.waterTemperatureK - state.returnTemperatureK;
    expect(apart(shunted)).toBeLessThan(0.7 * apart(plain));
  });

  it('raises its pressure as the water expands, by the gas of the expansion vessel', () => {
    const state = settled(283.15);
    expect(state.gaugePa).toBeCloseTo(1.2e5, 0);
    settleVessel(state, { gaugePa: 0, levelM: 0, waterTemperatureK: 355.15 });
    // 4 m³ grow from 999.7 to 970.6 kg/m³ (82 °C): 0.120 m³ of 0.6 m³ of gas at 2.213 bar.
    const grown = 4 * (999.7 / 970.58 - 1);
    const expected = (2.21325e5 * 0.6) / (0.6 - grown) - 101325;
    expect(Math.abs(state.gaugePa / expected - 1)).toBeLessThan(0.002);
  });

  it('blows water off when there is no room to expand, and has less pressure when cold', () => {
    const state = settled(283.15, { expansionVesselM3: 0.2 });
    let highest = 0;
    for (let i = 0; i < 60; i++) {
      run(state, 60, { heatW: 400_000, load: 0.5 });
      if (state.waterTemperatureK > 363) break;
      highest = Math.max(highest, state.gaugePa);
    }
    expect(highest).toBeGreaterThan(2.5e5);
    expect(highest).toBeLessThan(4e5);
    expect(state.massOutKg).toBeGreaterThan(5);
    run(state, 24 * 3600, { load: 1 });
    expect(state.gaugePa).toBeLessThan(1.19e5);
  });

  it('boils off through the safety valve if nothing else stops it, and stays where it boils', () => {
    const state = settled(null, { pumpShare: 0, thermosiphonShare: 0 });
    run(state, 3600, { heatW: 400_000, pumpFed: false });
    expect(state.massOutKg).toBeGreaterThan(50);
    expect(celsius(state.waterTemperatureK)).toBeLessThan(150);
    expect(state.steamKgS).toBeGreaterThan(0.05);
  });

  it('cools no further than its rooms by load, and never freezes', () => {
    const state = settled(313.15);
    run(state, 48 * 3600, { load: 1 });
    expect(celsius(state.waterTemperatureK)).toBeCloseTo(20, 0);
  });
});
