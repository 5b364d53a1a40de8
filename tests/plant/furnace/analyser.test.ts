import { describe, expect, it } from 'vitest';
import { stepAnalyser, stepFurnace } from '../../../src/plant/furnace/index.ts';
import { dairyFurnace, feedOf } from './dairy-furnace.ts';

type Furnace = ReturnType<typeof dairyFurnace>;

function draw(furnace: Furnace, seconds: number): void {
  for (let i = 0; i < Math.round(10 * seconds); i++) stepAnalyser(furnace, 0.1);
}

describe('a step in the flue', () => {
  it('shows after the transport delay, then as the cell follows', () => {
    const furnace = dairyFurnace({ probeDelayS: 4, oxygenCellS: 5, traceCellS: 12 });
    draw(furnace, 30);
    expect(furnace.analyser.oxygen).toBeCloseTo(0.20946, 9);
    furnace.flueOxygen = 0.03;
    furnace.flueCarbonMonoxide = 1e-3;
    draw(furnace, 3.9);
    expect(furnace.analyser.oxygen).toBeCloseTo(0.20946, 9);
    expect(furnace.analyser.carbonMonoxide).toBe(0);
    draw(furnace, 5.1);
    const left = (furnace.analyser.oxygen - 0.03) / (0.20946 - 0.03);
    // One time constant after the delay; steps of 0.1 s against 5 s: 2 %.
    expect(Math.abs(left / Math.exp(-1) - 1)).toBeLessThan(0.02);
    draw(furnace, 7);
    expect(
      Math.abs(furnace.analyser.carbonMonoxide / (1e-3 * (1 - Math.exp(-1))) - 1),
    ).toBeLessThan(0.02);
    draw(furnace, 120);
    expect(furnace.analyser.oxygen).toBeCloseTo(0.03, 6);
  });
});

describe('a leak at the probe', () => {
  it('thins the sample with air, so oxygen reads high and monoxide low', () => {
    const furnace = dairyFurnace({ probeFalseAir: 0.2 });
    furnace.flueOxygen = 0.03;
    furnace.flueCarbonMonoxide = 1e-3;
    draw(furnace, 200);
    expect(furnace.analyser.oxygen).toBeCloseTo(0.8 * 0.03 + 0.2 * 0.20946, 6);
    expect(furnace.analyser.carbonMonoxide).toBeCloseTo(0.8e-3, 6);
  });
});

describe('efficiency', () => {
  it('by the indirect method is what reaches the water, in a steady fire', () => {
    const furnace = dairyFurnace({ shellLossShare: 0 });
    for (let i = 0; i < 300000; i++) {
      stepFurnace(furnace, feedOf(2.4, 0.12, 0.12, 1), 0.01);
      if (i % 10 === 9) stepAnalyser(furnace, 0.1);
    }
    const { analyser, totals } = furnace;
    const fired = 0.12 * furnace.fuel.lowerHeatingJKg;
    const casing = 40 * (furnace.refractoryTemperatureK - 293.15);
    expect(totals.waterJ).toBeGreaterThan(0);
    // Gas comes in at the air's temperature, not at 25 °C: under 1e-3 of the heat.
    expect(Math.abs(analyser.efficiencyNet - (furnace.heatToWaterW + casing) / fired)).toBeLessThan(
      2e-3,
    );
    expect(analyser.efficiencyGross / analyser.efficiencyNet).toBeCloseTo(0.90115, 4);
  });

  it('is not shown without a fire', () => {
    const furnace = dairyFurnace();
    draw(furnace, 60);
    expect(furnace.analyser.efficiencyNet).toBe(0);
  });
});
