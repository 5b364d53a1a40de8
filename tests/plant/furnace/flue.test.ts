import { describe, expect, it } from 'vitest';
import { stepFurnace } from '../../../src/plant/furnace/index.ts';
import { dairyFurnace, feedOf, runFurnace } from './dairy-furnace.ts';

// combustion.json, CH4_flue_gas: air ratio, dry O₂ and CO₂ in per cent.
const FLUE_ROWS = [
  [1.15, 3.0058, 10.0194],
  [1.25, 4.5723, 9.1446],
  [1.4, 6.4685, 8.0856],
] as const;

describe('well mixed', () => {
  it.each(FLUE_ROWS)('with %d times the air: dry O₂ %d %%, CO₂ %d %%', (ratio, o2, co2) => {
    const gas = 0.08;
    const state = dairyFurnace({ mixingSpread: 0.02 });
    runFurnace(state, 120, { air: ratio * gas * 17.2396, gas, burnt: gas });
    // Table 1e-3; NO takes up to 1e-4 of the oxygen, CO 1e-5 of the carbon.
    expect(Math.abs((100 * state.flueOxygen) / o2 - 1)).toBeLessThan(2e-3);
    expect(Math.abs((100 * state.flueCarbonDioxide) / co2 - 1)).toBeLessThan(2e-3);
    expect(1e6 * state.flueCarbonMonoxide).toBeLessThan(20);
  });
});

describe('short of air', () => {
  it('the gas that finds no air leaves as carbon monoxide and hydrogen from a hot furnace', () => {
    const gas = 0.08;
    const state = dairyFurnace({ mixingSpread: 0.02 });
    const air = (gas * 17.2396) / 1.05;
    runFurnace(state, 120, { air, gas, burnt: air / 17.2396, igniter: 1 });
    // Equilibrium at φ = 1.05: 11 700 ppm at 1400 K, 14 710 ppm at 1800 K (combustion.json, air of
    // 3.76, dry).
    expect(1e6 * state.flueCarbonMonoxide).toBeGreaterThan(11700);
    expect(1e6 * state.flueCarbonMonoxide).toBeLessThan(14710);
    expect(state.flueOxygen).toBeLessThan(1e-3);
  });

  it('raw gas in a cold furnace stays raw', () => {
    const state = runFurnace(dairyFurnace(), 30, { air: 1, gas: 0.02, waterK: 293 });
    expect(state.flueCarbonMonoxide).toBe(0);
    expect(state.combustible).toBeGreaterThan(0.5);
  });
});

describe('mixing', () => {
  const monoxide = (air: number, gas: number, shift: number) => {
    const state = dairyFurnace();
    for (let i = 0; i < 6000; i++) stepFurnace(state, feedOf(air, gas, gas, 1, 465, shift), 0.01);
    return 1e6 * state.flueCarbonMonoxide;
  };

  it('is worse with a slipped diffuser and at low fire', () => {
    const full = monoxide(2.4, 2.4 / 17.2396 / 1.15, 0);
    expect(monoxide(2.4, 2.4 / 17.2396 / 1.15, 0.5)).toBeGreaterThan(10 * full);
    expect(monoxide(0.5, 0.5 / 17.2396 / 1.15, 0)).toBeGreaterThan(2 * full);
  });

  it('costs heat: what leaves as carbon monoxide does not reach the water', () => {
    const gas = 0.1;
    const flows = { air: gas * 17.2396 * 1.02, gas, burnt: gas, igniter: 1 };
    const good = runFurnace(dairyFurnace({ mixingSpread: 0.02 }), 600, flows);
    const bad = runFurnace(dairyFurnace({ mixingSpread: 0.15 }), 600, flows);
    const lost = bad.unfinishedHeatJKg * bad.flameProducts.unfinishedShare * gas;
    const missing = good.heatReleaseW - bad.heatReleaseW;
    const lostByGood = good.unfinishedHeatJKg * good.flameProducts.unfinishedShare * gas;
    expect(Math.abs(missing / (lost - lostByGood) - 1)).toBeLessThan(1e-9);
    expect(bad.heatToWaterW).toBeLessThan(good.heatToWaterW - 0.5 * missing);
  });
});

describe('nitric oxide', () => {
  it('comes through the two volumes as oxygen goes', () => {
    const flows = { air: 2.4, gas: 0.12, burnt: 0.12 };
    const state = runFurnace(dairyFurnace(), 0.5, flows);
    expect(1e6 * state.flueNitricOxide).toBeLessThan(20);
    runFurnace(state, 60, flows);
    const steady = 1e6 * state.flueNitricOxide;
    expect(steady).toBeGreaterThan(20);
    runFurnace(state, 3, { air: 2.4 });
    expect(1e6 * state.flueNitricOxide).toBeLessThan(0.8 * steady);
    runFurnace(state, 120, { air: 2.4 });
    expect(1e6 * state.flueNitricOxide).toBeLessThan(0.01);
  });
});
