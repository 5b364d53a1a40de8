import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  burningVelocityShare,
  burningVelocityTable,
  readBurningVelocity,
} from '../../../src/plant/flame/index.ts';
import { equivalenceOf, METHANE } from '../../../src/plant/furnace/index.ts';

const LEAN = equivalenceOf(METHANE.lowerLimit, METHANE);
const RICH = equivalenceOf(METHANE.upperLimit, METHANE);

describe('burning velocity', () => {
  it('is nothing outside the flammability limits and something inside', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 5, noNaN: true }), (equivalence) => {
        const share = burningVelocityShare(equivalence, METHANE);
        if (equivalence <= LEAN || equivalence >= RICH) expect(share).toBe(0);
        else expect(share).toBeGreaterThan(0);
      }),
      { seed: 51 },
    );
  });

  it('is highest a little richer than just enough air', () => {
    let best = 0;
    let where = 0;
    for (let equivalence = 0.5; equivalence < 1.7; equivalence += 0.001) {
      const share = burningVelocityShare(equivalence, METHANE);
      if (share > best) {
        best = share;
        where = equivalence;
      }
    }
    expect(best).toBeCloseTo(1, 5);
    expect(where).toBeGreaterThan(1.05);
    expect(where).toBeLessThan(1.12);
  });

  it('is read from its table within 2 % of the highest', () => {
    const table = burningVelocityTable(METHANE);
    for (let equivalence = 0; equivalence < 4.5; equivalence += 0.003) {
      const error =
        readBurningVelocity(table, equivalence) - burningVelocityShare(equivalence, METHANE);
      expect(Math.abs(error)).toBeLessThan(0.02);
    }
  });
});
