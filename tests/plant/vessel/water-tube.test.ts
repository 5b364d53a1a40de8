import { describe, expect, it } from 'vitest';
import {
  settleVessel,
  type VesselFeed,
  type VesselState,
} from '../../../src/plant/vessel/index.ts';
import { drumBoiler, run } from './boilers.ts';

const FULL_W = 5.2e6;

/** Feed by level and steam flow as a two-element controller does it. */
function controlled(state: VesselState, seconds: number, feed: Partial<VesselFeed>): void {
  for (let i = Math.round(10 * seconds); i > 0; i--) {
    const ahead = state.steamKgS / 4 - state.levelM / 0.2;
    run(state, 0.1, { feedDemand: Math.max(0, Math.min(1, ahead)), ...feed });
  }
}

describe('the drum of a 6 MW boiler', () => {
  it('rises 0.3 to 0.6 bar a minute at full fire with no load', () => {
    const state = drumBoiler();
    run(state, 60, { heatW: FULL_W });
    const before = state.gaugePa;
    run(state, 60, { heatW: FULL_W });
    const rise = (state.gaugePa - before) / 1e5;
    expect(rise).toBeGreaterThan(0.3);
    expect(rise).toBeLessThan(0.6);
  });

  it('holds full load on full fire near its normal pressure, level and feed', () => {
    const state = drumBoiler();
    // 2.3 kg/s of 2787 − 441 kJ/kg and the loss of the shell.
    controlled(state, 3600, { heatW: 5.42e6, load: 1 });
    expect(Math.abs(state.gaugePa - 12e5)).toBeLessThan(0.5e5);
    expect(Math.abs(state.levelM)).toBeLessThan(0.06);
    expect(Math.abs(state.feedKgS - state.steamKgS)).toBeLessThan(0.01);
    // Twenty to eighty times as much water goes round as steam is made.
    expect(state.circulationKgS / state.steamKgS).toBeGreaterThan(20);
    expect(state.circulationKgS / state.steamKgS).toBeLessThan(80);
  });

  it('swells when the load opens and shrinks when it shuts', () => {
    const state = drumBoiler();
    controlled(state, 900, { heatW: 2.7e6, load: 0.5 });
    const feed = { heatW: 2.7e6, feedDemand: state.feedOpening };
    const before = state.levelM;
    run(state, 5, { ...feed, load: 1 });
    expect(state.levelM).toBeGreaterThan(before + 0.002);
    const swollen = state.levelM;
    run(state, 5, { ...feed, load: 0.2 });
    expect(state.levelM).toBeLessThan(swollen - 0.01);
  });

  it('swells when it is fired up and shrinks when the fire goes out', () => {
    const state = drumBoiler();
    run(state, 60, { heatW: FULL_W });
    expect(state.levelM).toBeGreaterThan(0.04);
    const fired = state.levelM;
    run(state, 60, {});
    expect(state.levelM).toBeLessThan(fired - 0.04);
    expect(state.riserQuality).toBeLessThan(1e-3);
    expect(state.bubbleM3).toBeLessThan(0.03);
  });

  it('loses its level when the feed pump stops, and only then', () => {
    const sound = drumBoiler();
    const dry = drumBoiler();
    for (const state of [sound, dry]) {
      controlled(state, 600, { heatW: 5e6, load: 0.95, pumpFed: state === sound });
    }
    expect(Math.abs(sound.levelM)).toBeLessThan(0.05);
    // 2.2 kg/s for 600 s from 7 m² of water of 874 kg/m³, less what swells.
    expect(dry.levelM).toBeLessThan(-0.1);
    expect(dry.feedKgS).toBe(0);
  });
});

describe('feed water', () => {
  it('stays where it was when its valve sticks', () => {
    const state = drumBoiler();
    controlled(state, 120, { heatW: 5e6, load: 0.9 });
    const opening = state.feedOpening;
    if (state.parameters.kind !== 'hot water') state.parameters.feedValveStuck = true;
    controlled(state, 120, { heatW: 5e6, load: 0 });
    expect(state.feedOpening).toBe(opening);
  });

  it('does not follow a change of demand within the stiction of its valve', () => {
    const state = drumBoiler({ feedValveStiction: 0.1 });
    run(state, 60, { feedDemand: 0.5 });
    const rested = state.feedOpening;
    expect(rested).toBeGreaterThan(0.35);
    run(state, 60, { feedDemand: rested + 0.09 });
    expect(state.feedOpening).toBe(rested);
    run(state, 60, { feedDemand: rested + 0.2 });
    expect(state.feedOpening).toBeGreaterThan(rested + 0.05);
  });

  it('gives its rated flow at normal pressure, less above, none at the shut-off pressure', () => {
    const flowAt = (gaugePa: number) => {
      const state = drumBoiler({ feedValveS: 0 });
      settleVessel(state, { gaugePa, levelM: 0, waterTemperatureK: null });
      run(state, 0.1, { feedDemand: 1 });
      return state.feedKgS;
    };
    expect(flowAt(12e5)).toBeCloseTo(4, 6);
    expect(flowAt(15e5)).toBeCloseTo(4 * Math.sqrt(0.5), 6);
    expect(flowAt(18.1e5)).toBe(0);
  });

  it('passes a valve that does not shut', () => {
    const state = drumBoiler({ feedValveLeak: 0.1 });
    run(state, 10, { feedDemand: 0 });
    expect(state.feedKgS).toBeGreaterThan(0.3);
  });
});

describe('what protects and shows', () => {
  it('blows off before its pressure runs away, and reseats 5 % below', () => {
    const state = drumBoiler();
    let highest = 0;
    for (let i = 0; i < 1200; i++) {
      controlled(state, 1, { heatW: FULL_W });
      highest = Math.max(highest, state.gaugePa);
    }
    expect(highest).toBeGreaterThan(14e5);
    expect(highest).toBeLessThan(14.2e5);
    run(state, 600, { load: 0.3 });
    expect(state.safetyValveOpen).toBe(false);
    expect(state.safetyValveKgS).toBe(0);
  });

  it('runs away without its safety valve, as far as 160 bar where the steam tables end', () => {
    const state = drumBoiler({ safetyValveWorks: false, accumulatorM3: 0 });
    run(state, 1200, { heatW: FULL_W });
    expect(state.gaugePa).toBeGreaterThan(15e5);
    run(state, 3 * 3600, { heatW: FULL_W });
    expect(state.gaugePa).toBeGreaterThan(100e5);
    expect(state.waterTemperatureK).toBeLessThan(616);
  });

  it('shows its level in the glass, and the old one once a cock is shut', () => {
    const state = drumBoiler();
    run(state, 120, { heatW: 3e6, load: 0.5 });
    expect(Math.abs(state.gaugeGlassM - state.levelM)).toBeLessThan(1e-3);
    const shown = state.gaugeGlassM;
    if (state.parameters.kind !== 'hot water') state.parameters.gaugeGlassCockShut = true;
    run(state, 600, { heatW: 3e6, load: 0.9 });
    expect(state.gaugeGlassM).toBe(shown);
    expect(state.levelM).toBeLessThan(shown - 0.1);
  });
});

describe('far from normal', () => {
  it('cools towards its surroundings, with no pressure and no steam, without fire', () => {
    const state = drumBoiler({ accumulatorM3: 0, heatLossW: 1e6 });
    run(state, 5 * 3600, { load: 1 });
    expect(state.gaugePa).toBe(0);
    expect(state.steamKgS).toBe(0);
    expect(state.waterTemperatureK).toBeLessThan(373.5);
    expect(state.waterTemperatureK).toBeGreaterThan(state.ambient.temperatureK);
  });

  it('boils dry without harm to the numbers, and is filled again', () => {
    const state = drumBoiler({ accumulatorM3: 0 });
    run(state, 4 * 3600, { heatW: FULL_W, load: 1, pumpFed: false });
    expect(state.waterM3).toBeGreaterThan(0);
    expect(state.waterM3).toBeLessThan(0.03 * 15);
    expect(state.levelM).toBeCloseTo(-4.4 / 7, 2);
    expect(state.waterTemperatureK).toBeLessThan(616);
    run(state, 3600, { feedDemand: 1, load: 0.5 });
    expect(state.levelM).toBeGreaterThan(0.3);
    for (const value of [state.gaugePa, state.waterTemperatureK, state.feedKgS]) {
      expect(Number.isFinite(value)).toBe(true);
    }
  });

  it('is filled to the brim and takes no more', () => {
    const state = drumBoiler();
    run(state, 3 * 3600, { feedDemand: 1 });
    expect(state.waterM3).toBeLessThan(15);
    expect(state.waterM3).toBeGreaterThan(0.97 * 15);
    expect(state.levelM).toBeLessThan((9 - 4.4) / 7 + 1e-9);
    expect(state.feedKgS).toBeLessThan(0.05);
  });

  it('is heated cold to pressure, with no steam before it boils', () => {
    const state = drumBoiler();
    settleVessel(state, { gaugePa: 0, levelM: 0, waterTemperatureK: 288.15 });
    let steamBefore = 0;
    while (state.waterTemperatureK < 372) {
      run(state, 10, { heatW: 2e6, load: 0.3 });
      steamBefore = Math.max(steamBefore, state.steamKgS, state.gaugePa);
    }
    expect(steamBefore).toBe(0);
    run(state, 3600, { heatW: 2e6, load: 0.1 });
    expect(state.gaugePa).toBeGreaterThan(1e5);
    expect(state.circulationKgS).toBeGreaterThan(10);
  });
});
