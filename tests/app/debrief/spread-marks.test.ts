import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { MARK_PX, spreadMarks } from '../../../src/app/debrief/spread-marks.ts';

describe('marks above the chart', () => {
  it('stand centred where they want to when there is room', () => {
    expect(spreadMarks([100, 200, 300], 800)).toEqual([78, 178, 278]);
  });

  it('never cover one another and stay on the chart, wherever they want to stand', () => {
    const wanted = fc.array(fc.double({ min: -50, max: 900, noNaN: true }), {
      minLength: 1,
      maxLength: 5,
    });
    fc.assert(
      fc.property(wanted, fc.integer({ min: 5 * MARK_PX, max: 900 }), (places, widthPx) => {
        const lefts = spreadMarks(
          [...places].sort((a, b) => a - b),
          widthPx,
        );
        for (const [i, left] of lefts.entries()) {
          expect(left).toBeGreaterThanOrEqual(-1e-9);
          expect(left + MARK_PX).toBeLessThanOrEqual(widthPx + 1e-9);
          if (i > 0) expect(left - (lefts[i - 1] ?? 0)).toBeGreaterThanOrEqual(MARK_PX - 1e-9);
        }
      }),
      { seed: 5 },
    );
  });
});
