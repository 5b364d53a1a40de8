import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { prepareFlame } from '../../../src/plant/flame/index.ts';
import { METHANE } from '../../../src/plant/furnace/index.ts';
import { dairyFlame, feed, LIGHT_OFF, lightMain, lightPilot, STEP_S } from './dairy-flame.ts';

const FIRED = [
  [0.024, 0.498],
  [0.048, 0.998],
  [0.072, 1.472],
  [0.096, 1.954],
  [0.12, 2.402],
] as const;

describe('a flame that burns', () => {
  it('burns all its gas, seated, at every point of the firing curve', () => {
    const state = lightMain(dairyFlame());
    for (const [main, air] of FIRED) {
      feed(state, 5, { main, air });
      expect(state.mainBurntKgS).toBeCloseTo(main, 5);
      expect(state.mainLift).toBe(0);
    }
    expect(state.mainIntensity).toBeCloseTo(1, 5);
  });

  it('lifts off where the gas burns slower than methane, and sits firmer with hydrogen in it', () => {
    const state = lightMain(dairyFlame());
    feed(state, 5, { main: 0.12, air: 2.402 });
    const methane = state.mainStability;
    state.fuel.burningVelocityMS = 0.5 * METHANE.burningVelocityMS;
    prepareFlame(state);
    feed(state, 5, { main: 0.12, air: 2.402 });
    expect(state.mainLit).toBe(false);
    const blend = lightMain(dairyFlame());
    blend.fuel.burningVelocityMS = 1.2 * METHANE.burningVelocityMS;
    prepareFlame(blend);
    feed(blend, 5, { main: 0.12, air: 2.402 });
    // Chemical time goes with the square of the burning velocity.
    expect(blend.mainStability / methane).toBeCloseTo(1.44, 6);
  });

  it('is gone within 0.2 s of its gas', () => {
    const main = lightMain(dairyFlame());
    feed(main, 0.2, {});
    expect(main.mainIntensity).toBe(0);
    const pilot = lightPilot(dairyFlame());
    feed(pilot, 0.2, {});
    expect(pilot.pilotIntensity).toBe(0);
  });

  it('does not come back when its gas does', () => {
    const state = lightMain(dairyFlame());
    feed(state, 0.3, {});
    feed(state, 10, { main: LIGHT_OFF.main });
    expect(state.mainIntensity).toBe(0);
  });

  it('never burns more than its gas, nor more than the air allows', () => {
    const kgS = (max: number) => fc.double({ min: 0, max, noNaN: true });
    fc.assert(
      fc.property(kgS(0.02), kgS(0.3), kgS(2.5), kgS(2), (pilot, main, air, furnaceAir) => {
        const state = lightMain(dairyFlame());
        for (let i = 0; i < 100; i++) {
          feed(state, STEP_S, { pilot, main, air, furnaceAir, spark: 40 });
          expect(state.pilotBurntKgS).toBeLessThanOrEqual(pilot);
          expect(state.mainBurntKgS).toBeLessThanOrEqual(main);
          const airFor = (air + furnaceAir / 0.5) / METHANE.airPerFuelKgKg;
          expect(state.burntKgS).toBeLessThanOrEqual(airFor * (1 + 1e-12));
          expect(state.mainIntensity).toBeLessThanOrEqual(1);
        }
      }),
      { seed: 71, numRuns: 30 },
    );
  });
});

describe('a flame that cannot hold', () => {
  it('blows off when air outruns a lean mixture', () => {
    const state = lightMain(dairyFlame());
    feed(state, 5, { main: LIGHT_OFF.main, air: 1.2 });
    expect(state.mainIntensity).toBe(0);
  });

  it('goes out rich when the air fails', () => {
    const state = lightMain(dairyFlame());
    feed(state, 3, { main: 0.12, air: 2.4 });
    expect(state.mainBurning).toBeGreaterThan(0.99);
    feed(state, 1, { main: 0.12, air: 1.2 });
    expect(state.mainIntensity).toBe(0);
  });

  it('lifts with a shifted diffuser once the pilot goes, and is lost; the pilot held it', () => {
    const state = lightPilot(dairyFlame({ flame: { diffuserShift: 0.8 } }));
    feed(state, 5, { pilot: LIGHT_OFF.pilot, main: LIGHT_OFF.main });
    expect(state.mainBurning).toBeGreaterThan(0.99);
    expect(state.mainLift).toBeLessThan(0.1);
    const lifted = feed(state, 5, { main: LIGHT_OFF.main }, (s) => s.mainLift >= 1);
    expect(lifted).toBeLessThan(2);
    feed(state, 3, { main: LIGHT_OFF.main });
    expect(state.mainIntensity).toBe(0);
  });

  it('with a diffuser shifted less holds at low fire and is lost at high fire', () => {
    const state = lightMain(dairyFlame({ flame: { diffuserShift: 0.4 } }));
    expect(state.mainBurning).toBeGreaterThan(0.99);
    feed(state, 5, { main: 0.12, air: 2.402 });
    expect(state.mainIntensity).toBe(0);
  });

  it('lets gas by when it has lifted', () => {
    const state = lightMain(dairyFlame());
    state.parameters.anchorMS = 14.5;
    state.mainAnchorMS = 14.5;
    feed(state, 5, { main: LIGHT_OFF.main });
    expect(state.mainLift).toBeGreaterThan(0.2);
    expect(state.mainLift).toBeLessThan(1);
    expect(state.mainBurntKgS).toBeLessThan(0.97 * LIGHT_OFF.main);
  });
});
