import { describe, expect, it } from 'vitest';
import { advanceShownS } from '../../../src/app/session/shown-clock.ts';

const FRAME_S = 1 / 60;

describe('shown clock', () => {
  it.each([1, 2, 5, 20])(
    'at %d× runs smoothly, never back and never past the newest frame',
    (speed) => {
      let shownS = 0;
      let shortest = Number.POSITIVE_INFINITY;
      let longest = 0;
      for (let i = 0; i < 1200; i += 1) {
        const newestS = Math.floor(i * FRAME_S * speed * 10) / 10;
        const next = advanceShownS(shownS, newestS, speed, FRAME_S, true);
        expect(next).toBeGreaterThanOrEqual(shownS);
        expect(next).toBeLessThanOrEqual(newestS);
        if (i > 300) {
          shortest = Math.min(shortest, next - shownS);
          longest = Math.max(longest, next - shownS);
        }
        shownS = next;
      }
      // Within a third of the even pace: frames arrive in tenths of a second, the eye sees none of it.
      expect(shortest).toBeGreaterThan(0.66 * speed * FRAME_S);
      expect(longest).toBeLessThan(1.34 * speed * FRAME_S);
    },
  );

  it('after a pause runs out to exactly where the run stands', () => {
    let shownS = 9.8;
    for (let i = 0; i < 60; i += 1) shownS = advanceShownS(shownS, 10, 1, FRAME_S, false);
    expect(shownS).toBe(10);
  });

  it('jumps rather than hurries when it is far behind', () => {
    expect(advanceShownS(0, 100, 1, FRAME_S, true)).toBeGreaterThan(99);
  });
});
