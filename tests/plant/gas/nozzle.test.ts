import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nozzleFlow, prepareNozzle } from '../../../src/plant/gas/index.ts';
import { evaluateNozzle, SMOOTHING_PA } from '../../../src/plant/gas/nozzle.ts';
import { AMBIENT_PA } from './fixtures.ts';

const SEED = 20271;
const R = 8.314462618;

/** Reference: gas_train.json, critical_ratio; isentropic relations, tolerance 1e-4 relative. */
const CRITICAL = [
  ['CH4', 1.304, 0.545006, 0.667984],
  ['air', 1.4, 0.528282, 0.684731],
  ['C3H8', 1.13, 0.578454, 0.634575],
] as const;

/** Reference: gas_train.json, orifice: C_d 0.62, A 1 cm², 288.15 K, to 101325 Pa; 1e-4 relative. */
const ORIFICE = [
  ['CH4', 1.304, 16.04246e-3, 20, 0.003225189],
  ['CH4', 1.304, 16.04246e-3, 50, 0.00508832],
  ['CH4', 1.304, 16.04246e-3, 100, 0.007170239],
  ['CH4', 1.304, 16.04246e-3, 300, 0.01225187],
  ['CH4', 1.304, 16.04246e-3, 1000, 0.02157605],
  ['CH4', 1.304, 16.04246e-3, 3000, 0.04301011],
  ['air', 1.4, 28.9647e-3, 20, 0.004336946],
  ['air', 1.4, 28.9647e-3, 50, 0.006850054],
  ['air', 1.4, 28.9647e-3, 100, 0.009670343],
  ['air', 1.4, 28.9647e-3, 300, 0.0166324],
  ['air', 1.4, 28.9647e-3, 1000, 0.02971803],
  ['air', 1.4, 28.9647e-3, 3000, 0.05924048],
] as const;

function exactFlow(gamma: number, upPa: number, downPa: number): number {
  const critical = (2 / (gamma + 1)) ** (gamma / (gamma - 1));
  const r = Math.max(critical, downPa / upPa);
  return (
    upPa * Math.sqrt(((2 * gamma) / (gamma - 1)) * (r ** (2 / gamma) - r ** ((gamma + 1) / gamma)))
  );
}

describe('nozzle flow', () => {
  it.each(CRITICAL)('chokes %s where the reference says', (_gas, gamma, ratio, choked) => {
    const curve = prepareNozzle(gamma);
    expect(Math.abs((1 - curve.criticalDrop) / ratio - 1)).toBeLessThan(1e-4);
    expect(Math.abs(curve.chokedFlow / choked - 1)).toBeLessThan(1e-4);
  });

  it.each(ORIFICE)(
    'passes the reference flow of %s (γ %f, M %f kg/mol) at %i mbar',
    (_gas, gamma, molarMass, mbar, flow) => {
      const conductance = (0.62 * 1e-4) / Math.sqrt((R / molarMass) * 288.15);
      const value = nozzleFlow(
        prepareNozzle(gamma),
        conductance,
        AMBIENT_PA + mbar * 100,
        AMBIENT_PA,
      );
      expect(Math.abs(value / flow - 1)).toBeLessThan(1e-4);
    },
  );

  it('follows the exact function within 1e-6 at every pressure ratio, for every gas', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.05, max: 1.67, noNaN: true }),
        fc.double({ min: 0.05, max: 0.999, noNaN: true }),
        (gamma, ratio) => {
          const value = nozzleFlow(prepareNozzle(gamma), 1, 2e5, 2e5 * ratio);
          expect(Math.abs(value / exactFlow(gamma, 2e5, 2e5 * ratio) - 1)).toBeLessThan(1e-6);
        },
      ),
      { seed: SEED },
    );
  });

  it('runs backwards as it runs forwards', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5e4, max: 5e5, noNaN: true }),
        fc.double({ min: 5e4, max: 5e5, noNaN: true }),
        (a, b) => {
          const curve = prepareNozzle(1.3);
          expect(nozzleFlow(curve, 1, a, b)).toBe(-nozzleFlow(curve, 1, b, a));
        },
      ),
      { seed: SEED },
    );
  });

  it('is nought without a difference, and rises steadily through the smoothed part', () => {
    const curve = prepareNozzle(1.304);
    expect(nozzleFlow(curve, 1, AMBIENT_PA, AMBIENT_PA)).toBe(0);
    let previous = nozzleFlow(curve, 1, AMBIENT_PA - 2 * SMOOTHING_PA, AMBIENT_PA);
    for (let dp = -2 * SMOOTHING_PA + 0.01; dp < 2 * SMOOTHING_PA; dp += 0.01) {
      const flow = nozzleFlow(curve, 1, AMBIENT_PA + dp, AMBIENT_PA);
      expect(flow).toBeGreaterThan(previous);
      // No jump: the steepest slope is 1.25·√(2·p/smoothing).
      expect(flow - previous).toBeLessThan(
        0.01 * 1.26 * Math.sqrt((2 * AMBIENT_PA) / SMOOTHING_PA),
      );
      previous = flow;
    }
  });

  it('gives slopes that match differences of the flow on both sides, choked or not', () => {
    const curve = prepareNozzle(1.304);
    const out = { flow: 0, fromSlope: 0, toSlope: 0 };
    for (const [from, to] of [
      [111325, 101325],
      [101325, 111325],
      [301325, 101325],
      [101326, 101325],
      [101331, 101325],
      [101325, 101325],
    ] as const) {
      evaluateNozzle(curve, from, to, out);
      const h = 1e-3;
      const byFrom =
        (nozzleFlow(curve, 1, from + h, to) - nozzleFlow(curve, 1, from - h, to)) / (2 * h);
      const byTo =
        (nozzleFlow(curve, 1, from, to + h) - nozzleFlow(curve, 1, from, to - h)) / (2 * h);
      // In the smoothed part the slopes leave out the change of density: below 1e-3 of them.
      expect(Math.abs(out.fromSlope - byFrom)).toBeLessThan(1e-3 * Math.abs(byFrom) + 1e-6);
      expect(Math.abs(out.toSlope + byTo)).toBeLessThan(1e-3 * Math.abs(byTo) + 1e-6);
      expect(out.fromSlope).toBeGreaterThanOrEqual(0);
      expect(out.toSlope).toBeGreaterThanOrEqual(0);
    }
  });
});
