import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  createFiringRate,
  type FiringDemand,
  type FiringRate,
  stepFiringRate,
} from '../../src/field/firing-rate.ts';
import {
  type FiringMode,
  type PressureFiringRateParameters,
  pressureFiringRateParameters,
  temperatureFiringRateParameters,
} from '../../src/field/index.ts';
import { fillDefaults } from './fill-defaults.ts';

const STEP_S = 0.1;
const BAR = 1e5;
const LOW_FIRE = 0.2;

function control(given: Partial<PressureFiringRateParameters> = {}): FiringRate {
  const p = fillDefaults(pressureFiringRateParameters, {
    kind: 'pressure',
    setpointPa: 12 * BAR,
    secondSetpointPa: 10 * BAR,
    proportionalBandPa: 1.5 * BAR,
    integralS: 300,
    ...given,
  });
  return createFiringRate(p, LOW_FIRE);
}

function step(
  c: FiringRate,
  measuredPa: number,
  {
    mode = 'automatic' as FiringMode,
    hand = 0,
    demand = 'released' as FiringDemand,
    second = false,
  } = {},
): number {
  stepFiringRate(c, measuredPa, demand, mode, hand, second, LOW_FIRE, 1, STEP_S);
  return c.rate;
}

describe('firing-rate control', () => {
  it.each([
    // control_loops.json, SIMC for an integrating process (Skogestad 2003); k' in bar/s; 0.1 %.
    [15, 30, 0.020361, 0.916, 180],
    [15, 60, 0.020361, 1.527, 300],
    [30, 60, 0.020361, 1.832, 360],
    [30, 120, 0.020361, 3.054, 600],
  ])(
    'its note’s rule gives the reference tuning for θ %d s, τc %d s',
    (theta, tauC, k, band, ti) => {
      expect(Math.abs((k * (tauC + theta)) / band - 1)).toBeLessThan(1e-3);
      expect(4 * (tauC + theta)).toBe(ti);
    },
  );

  it('answers a step of load as the reference loop does', () => {
    // control_loops.json, demand 0.6 → 0.8 at 10 s, own simulation; tolerance 2 % of the peak.
    const rows: [number, number][] = [
      [30, -0.07676],
      [60, -0.16023],
      [120, -0.23101],
      [180, -0.23151],
      [300, -0.16729],
      [450, -0.08887],
      [600, -0.04288],
      [900, -0.009],
    ];
    const c = control({ proportionalBandPa: BAR / 0.6549, fullStrokeS: 30 });
    c.rate = 0.6;
    c.integral = 0.6;
    let pressureBar = 12;
    let heat = 0.6;
    let lowest = 0;
    for (let k = 0, row = 0; row < rows.length; k++) {
      const t = k * STEP_S;
      const [at, dpBar] = rows[row] as [number, number];
      if (t >= at - 1e-9) {
        expect(Math.abs(pressureBar - 12 - dpBar)).toBeLessThan(0.02 * 0.23679);
        row++;
      }
      pressureBar += 0.020361 * (heat - (t < 10 ? 0.6 : 0.8)) * STEP_S;
      heat += ((c.rate - heat) / 10) * STEP_S;
      step(c, pressureBar * BAR);
      lowest = Math.min(lowest, pressureBar - 12);
    }
    expect(Math.abs(lowest / -0.23679 - 1)).toBeLessThan(0.02);
  });

  it('told to go to low fire, goes down at its own pace and not in one jump', () => {
    const c = control({ fullStrokeS: 60 });
    for (let i = 0; i < 1200; i++) step(c, 5 * BAR);
    expect(c.rate).toBe(1);
    for (let i = 0; i < 100; i++) step(c, 5 * BAR, { demand: 'low fire' });
    expect(c.rate).toBeCloseTo(1 - 10 / 60, 9);
    for (let i = 0; i < 600; i++) step(c, 5 * BAR, { demand: 'low fire' });
    expect(c.rate).toBe(LOW_FIRE);
  });

  it('waits at low fire until released, then climbs no faster than its stroke', () => {
    const c = control({ fullStrokeS: 40 });
    for (let i = 0; i < 600; i++) step(c, 8 * BAR, { demand: 'wait' });
    expect(c.rate).toBe(LOW_FIRE);
    let before = c.rate;
    for (let i = 0; i < 600; i++) {
      const rate = step(c, 8 * BAR);
      expect(rate - before).toBeLessThanOrEqual(STEP_S / 40 + 1e-12);
      before = rate;
    }
    expect(c.rate).toBe(1);
  });

  it('does not wind up: after an hour at full fire it turns back as soon as pressure is above', () => {
    const c = control();
    for (let i = 0; i < 36_000; i++) step(c, 8 * BAR);
    for (let i = 0; i < 600; i++) step(c, 12.3 * BAR);
    expect(c.rate).toBeLessThan(0.9);
  });

  it('goes to the hand rate, and back to automatic without a bump', () => {
    const c = control({ integralS: 36_000 });
    for (let i = 0; i < 600; i++) step(c, 11.9 * BAR);
    for (let i = 0; i < 600; i++) step(c, 11.9 * BAR, { mode: 'hand', hand: 0.7 });
    expect(c.rate).toBeCloseTo(0.7, 9);
    step(c, 11.9 * BAR);
    expect(c.rate).toBeCloseTo(0.7, 4);
  });

  it('holds low fire on demand, and no hand takes it below low fire or above full', () => {
    const c = control();
    for (let i = 0; i < 600; i++) step(c, 8 * BAR);
    for (let i = 0; i < 600; i++) step(c, 8 * BAR, { mode: 'low fire' });
    expect(c.rate).toBe(LOW_FIRE);
    for (let i = 0; i < 600; i++) step(c, 8 * BAR, { mode: 'hand', hand: 0 });
    expect(c.rate).toBe(LOW_FIRE);
    for (let i = 0; i < 600; i++) step(c, 8 * BAR, { mode: 'hand', hand: 5 });
    expect(c.rate).toBe(1);
  });

  it('fires less for the second, lower setpoint', () => {
    const rate = (second: boolean) => {
      const c = control();
      for (let i = 0; i < 300; i++) step(c, 11.5 * BAR, { second });
      return c.rate;
    };
    expect(rate(true)).toBe(LOW_FIRE);
    expect(rate(false)).toBeGreaterThan(0.4);
  });

  it('with derivative action answers a falling pressure before it is far off', () => {
    const rateAfterFall = (derivativeS: number) => {
      const c = control({ derivativeS, fullStrokeS: 1 });
      for (let i = 0; i < 50; i++) step(c, 12 * BAR, { demand: 'wait' });
      for (let i = 0; i < 100; i++) step(c, 12 * BAR - i * 100);
      return c.rate;
    };
    expect(rateAfterFall(20)).toBeGreaterThan(rateAfterFall(0) + 0.02);
  });

  it('on temperature does in kelvins what it does on pressure in pascals', () => {
    const pressure = control({ setpointPa: 8e5, secondSetpointPa: 6e5, proportionalBandPa: 1e5 });
    const temperature = createFiringRate(
      fillDefaults(temperatureFiringRateParameters, {
        kind: 'temperature',
        setpointC: 80,
        secondSetpointC: 60,
        proportionalBandK: 10,
        integralS: 300,
      }),
      LOW_FIRE,
    );
    for (let i = 0; i < 3000; i++) {
      const shift = (i % 700) / 1000 - 0.4;
      const second = i % 1000 > 800;
      step(pressure, (8 + shift) * BAR, { second });
      step(temperature, 80 + 10 * shift, { second });
      expect(temperature.rate).toBeCloseTo(pressure.rate, 6);
    }
  });

  it('stays between low fire and full for every pressure, mode and hand', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({
            pa: fc.double({ min: 0, max: 2e6, noNaN: true }),
            mode: fc.constantFrom<FiringMode>('automatic', 'hand', 'low fire'),
            hand: fc.double({ min: 0, max: 1, noNaN: true }),
            demand: fc.constantFrom<FiringDemand>('released', 'low fire', 'wait'),
            second: fc.boolean(),
          }),
          { maxLength: 100 },
        ),
        (history) => {
          const c = control({ fullStrokeS: 1, derivativeS: 5 });
          for (const { pa, ...how } of history) {
            const rate = step(c, pa, how);
            expect(rate).toBeGreaterThanOrEqual(LOW_FIRE);
            expect(rate).toBeLessThanOrEqual(1);
          }
        },
      ),
      { seed: 41 },
    );
  });
});
