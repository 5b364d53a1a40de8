import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prepareFlame } from '../../../src/plant/flame/index.ts';
import { dairyFlame, feed, LIGHT_OFF, lightMain, lightPilot } from './dairy-flame.ts';

const PILOT_TRIAL_S = 5;
const MAIN_TRIAL_S = 5;
const SEEDS = Array.from({ length: 200 }, (_, i) => i + 1);
const SPARKED = { spark: LIGHT_OFF.spark, pilot: LIGHT_OFF.pilot };

describe('light-off of a sound burner', () => {
  it('succeeds for 200 seeds: pilot well within its trial, main 0.3 to 1.5 s after its gas', () => {
    const pilotTimes: number[] = [];
    for (const seed of SEEDS) {
      const state = dairyFlame({}, seed);
      const pilot = feed(state, PILOT_TRIAL_S, SPARKED, (s) => s.pilotIntensity > 0.5);
      pilotTimes.push(pilot);
      expect(pilot).toBeLessThan(PILOT_TRIAL_S / 2);
      feed(state, 3, { pilot: LIGHT_OFF.pilot });
      expect(state.pilotIntensity).toBeGreaterThan(0.95);
      const both = { pilot: LIGHT_OFF.pilot, main: LIGHT_OFF.main };
      const main = feed(state, MAIN_TRIAL_S, both, (s) => s.mainBurning > 0.5);
      expect(main).toBeGreaterThan(0.3);
      expect(main).toBeLessThan(1.5);
      feed(state, 5, both);
      feed(state, 10, { main: LIGHT_OFF.main });
      expect(state.mainBurning).toBeGreaterThan(0.99);
      expect(state.mainLift).toBe(0);
      expect(state.pilotIntensity).toBe(0);
    }
    expect(new Set(pilotTimes).size).toBeGreaterThan(5);
  });

  it('is the same for the same seed', () => {
    const [one, two] = [lightMain(dairyFlame({}, 9)), lightMain(dairyFlame({}, 9))];
    expect({ ...one, random: { ...one.random } }).toEqual({ ...two, random: { ...two.random } });
  });

  it('draws on chance only while something is being lit', () => {
    const state = dairyFlame();
    const before = { ...state.random };
    feed(state, 5, { spark: LIGHT_OFF.spark });
    feed(state, 5, { pilot: LIGHT_OFF.pilot });
    expect(state.random).toEqual(before);
  });
});

describe('light-off that must fail, for 200 seeds', () => {
  it.each([
    ['the transformer is dead', {}, { ...SPARKED, spark: 0 }],
    ['the spark is weak', {}, { ...SPARKED, spark: 10 }],
    ['the electrode gap is too wide', { ignition: { electrodeGapMm: 8 } }, SPARKED],
    ['the electrode gap is closed up', { ignition: { electrodeGapMm: 0.6 } }, SPARKED],
    ['the electrode has moved away', { ignition: { electrodeOffset: 0.7 } }, SPARKED],
    ['the pilot orifice is mostly blocked', {}, { ...SPARKED, pilot: 0.3 * LIGHT_OFF.pilot }],
    ['air leaks into the pilot', { flame: { pilotLeakInKgS: 0.06 } }, SPARKED],
    ['the damper stands open', {}, { ...SPARKED, air: 2.4 }],
  ])('%s: no pilot', (_title, change, flows) => {
    for (const seed of SEEDS) {
      const state = dairyFlame(change, seed);
      feed(state, 10, flows);
      expect(state.pilotIntensity).toBe(0);
      expect(state.burntKgS).toBe(0);
    }
  });

  it.each([
    [0.6, 'burns smaller'],
    [0.45, 'burns small'],
  ])('a pilot with %d of its gas lights and %s, by the root of its gas, and holds', (share) => {
    const pilot = share * LIGHT_OFF.pilot;
    for (const seed of SEEDS.slice(0, 40)) {
      const state = dairyFlame({}, seed);
      expect(feed(state, 10, { ...SPARKED, pilot }, (s) => s.pilotIntensity > 0.5)).toBeLessThan(
        10,
      );
      feed(state, 10, { pilot });
      // Size of a flame goes with the root of what burns; 15 growth times have passed.
      expect(state.pilotIntensity).toBeCloseTo(Math.sqrt(share), 3);
    }
  });

  it('a pilot that burns but misses the head: no main flame', () => {
    for (const seed of SEEDS) {
      const state = lightPilot(dairyFlame({ flame: { pilotReach: 0 } }, seed));
      feed(state, 10, { pilot: LIGHT_OFF.pilot, main: LIGHT_OFF.main });
      expect(state.pilotIntensity).toBeGreaterThan(0.95);
      expect(state.mainIntensity).toBe(0);
    }
  });
});

describe('laws of ignition', () => {
  const flow = (max: number) => fc.double({ min: 0, max, noNaN: true });

  it('no flame without a spark, a hot wall or a flame', () => {
    fc.assert(
      fc.property(flow(0.02), flow(0.2), flow(3), (pilot, main, air) => {
        const state = dairyFlame();
        feed(state, 10, { pilot, main, air });
        expect(state.kernel).toBe(0);
        expect(state.burntKgS).toBe(0);
      }),
      { seed: 61, numRuns: 50 },
    );
  });

  it('no flame without fuel, whatever sparks and glows', () => {
    fc.assert(
      fc.property(
        flow(3),
        flow(200),
        fc.double({ min: 280, max: 1500, noNaN: true }),
        (air, spark, tilesK) => {
          const state = dairyFlame();
          feed(state, 5, { air, spark, tilesK, flash: 1 });
          expect(state.pilotIntensity + state.mainIntensity + state.burntKgS).toBe(0);
        },
      ),
      { seed: 62, numRuns: 50 },
    );
  });

  it('no ignition of a mixture outside its flammability limits', () => {
    fc.assert(
      fc.property(flow(0.02), flow(0.4), flow(3), (pilot, main, air) => {
        const state = dairyFlame();
        feed(state, 5, { pilot, main, air, spark: 100, flash: 1, tilesK: 1500 });
        const limits = [0.5025, 1.685];
        const outside = (x: number) => x <= (limits[0] as number) || x >= (limits[1] as number);
        if (outside(state.pilotEquivalence)) expect(state.pilotIntensity).toBe(0);
        if (outside(state.mainEquivalence)) expect(state.mainIntensity).toBe(0);
      }),
      { seed: 63, numRuns: 100 },
    );
  });

  it('hot tiles light the main gas without a pilot', () => {
    const state = dairyFlame();
    feed(state, 3, { main: LIGHT_OFF.main, tilesK: 1250 });
    expect(state.mainBurning).toBeGreaterThan(0.9);
  });

  it('a flash of gathered gas lights the main gas', () => {
    const state = dairyFlame();
    feed(state, 1, { main: LIGHT_OFF.main, flash: 1 });
    expect(state.mainLit).toBe(true);
  });

  it('a spark at the main gas lights it without a pilot', () => {
    const state = dairyFlame({ ignition: { sparkAt: 'main' }, flame: { hasPilot: false } });
    feed(state, 3, { main: LIGHT_OFF.main });
    expect(state.mainLit).toBe(false);
    feed(state, 3, { main: LIGHT_OFF.main, spark: LIGHT_OFF.spark });
    expect(state.mainBurning).toBeGreaterThan(0.9);
    expect(state.pilotIntensity).toBe(0);
  });

  it('a repaired part works from its preparation on', () => {
    const state = dairyFlame({ ignition: { electrodeOffset: 1 } });
    feed(state, 5, SPARKED);
    expect(state.pilotLit).toBe(false);
    state.ignition.electrodeOffset = 0;
    prepareFlame(state);
    feed(state, 5, SPARKED);
    expect(state.pilotIntensity).toBeGreaterThan(0.95);
  });
});
