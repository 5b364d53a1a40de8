import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  damperFlowTable,
  discLoss,
  opposedBladeLoss,
  readDamperFlow,
} from '../../../src/plant/air/index.ts';

describe('damper loss', () => {
  // Exponential damper, opposed blades, ASHRAE RP-825 form; y = i/18, to 1e-4 as stated there.
  it.each([
    [0, 45000000],
    [1, 122785],
    [2, 2880.72],
    [3, 581.145],
    [5, 203.365],
    [8, 42.098],
    [9, 24.9033],
    [11, 8.7146],
    [13, 3.23193],
    [16, 0.907562],
    [18, 0.45],
  ])('of opposed blades %d/18 open is %d', (eighteenths, loss) => {
    expect(Math.abs(opposedBladeLoss(eighteenths / 18) / loss - 1)).toBeLessThan(1e-4);
  });

  // Weisbach, degrees from open: round, square.
  it.each([
    [5, 0.24, 0.28],
    [20, 1.54, 1.34],
    [45, 18.7, 15.07],
    [60, 118, 77.4],
    [70, 751, 368],
  ])('of a disc %d° from open is %d round, %d square', (fromOpen, round, square) => {
    expect(discLoss(1 - fromOpen / 90, true)).toBeCloseTo(round, 9);
    expect(discLoss(1 - fromOpen / 90, false)).toBeCloseTo(square, 9);
  });

  it('is read from the table of a leak-tight damper within 1 % from 5° up', () => {
    const table = damperFlowTable({ form: 'opposed blades', faceAreaM2: 0.2, leakShare: 0 });
    fc.assert(
      fc.property(fc.double({ min: 5, max: 90, noNaN: true }), (deg) => {
        const flow = readDamperFlow(table, deg);
        // Straight lines between rows of a quarter degree of a steep curve.
        expect(Math.abs(1 / (flow * flow) / opposedBladeLoss(deg / 90) - 1)).toBeLessThan(0.01);
      }),
      { seed: 13 },
    );
  });

  it.each(['opposed blades', 'round disc', 'square disc'] as const)(
    'of %s never rises as the blade opens, and the stops hold',
    (form) => {
      const table = damperFlowTable({ form, faceAreaM2: 0.2, leakShare: 0.01 });
      for (let deg = 0.5; deg <= 90; deg += 0.5) {
        expect(readDamperFlow(table, deg)).toBeGreaterThan(readDamperFlow(table, deg - 0.5));
      }
      expect(readDamperFlow(table, -5)).toBe(readDamperFlow(table, 0));
      expect(readDamperFlow(table, 95)).toBe(readDamperFlow(table, 90));
      expect(readDamperFlow(table, 0) / readDamperFlow(table, 90)).toBeCloseTo(0.01 / 1.01, 3);
    },
  );
});
