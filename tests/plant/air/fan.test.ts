import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fanPressureShare, fanTorqueShare } from '../../../src/plant/air/index.ts';

describe('fan', () => {
  // Rows of the normalised curve: flow, pressure, power over rated at rated speed.
  it.each([
    [0, 1.25, 0.625],
    [0.25, 1.28125, 0.73214],
    [0.5, 1.25, 0.83333],
    [0.75, 1.15625, 0.925],
    [1, 1, 1],
    [1.25, 0.78125, 1.04167],
    [1.5, 0.5, 1],
  ])(
    'at %d of rated flow makes %d of its pressure for %d of its power',
    (flow, pressure, power) => {
      expect(fanPressureShare(flow, 1, 1)).toBeCloseTo(pressure, 12);
      // At rated speed torque and power are the same share; five digits in the table.
      expect(fanTorqueShare(flow, 1)).toBeCloseTo(power, 5);
    },
  );

  it('follows the affinity laws at every speed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 1.2, noNaN: true }),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        (n, s) => {
          expect(fanPressureShare(s * n, n, 1)).toBeCloseTo(n * n * fanPressureShare(s, 1, 1), 12);
          expect(fanTorqueShare(s * n, n)).toBeCloseTo(n * n * fanTorqueShare(s, 1), 12);
        },
      ),
      { seed: 11 },
    );
  });

  it('at rest is a plain resistance in both directions', () => {
    expect(fanPressureShare(0.6, 0, 1)).toBeCloseTo(-0.18, 12);
    expect(fanPressureShare(-0.6, 0, 1)).toBeCloseTo(0.18, 12);
    expect(fanTorqueShare(0.6, 0)).toBe(0);
  });

  it('resists flow driven back through it the more the faster that flow', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1.2, noNaN: true }),
        fc.double({ min: 0.01, max: 2, noNaN: true }),
        (n, back) => {
          expect(fanPressureShare(-back, n, 1)).toBeGreaterThan(fanPressureShare(0, n, 1));
        },
      ),
      { seed: 12 },
    );
  });
});
