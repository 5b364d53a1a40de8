import { describe, expect, it } from 'vitest';
import { MAX_GAP_MS, paceTargetS, startPace, tickPace } from '../../../src/app/session/pace.ts';

describe('pace', () => {
  it('does not drift: after an hour of uneven ticks it is where the clock says', () => {
    let pace = startPace(10, 1000, 5);
    let nowMs = 1000;
    for (let i = 0; nowMs < 1000 + 3_600_000; i += 1) {
      nowMs += [16.7, 33.1, 7.9, 99.3][i % 4] ?? 0;
      pace = tickPace(pace, nowMs);
    }
    expect(paceTargetS(pace)).toBeCloseTo(10 + ((nowMs - 1000) / 1000) * 5, 6);
  });

  it('skips what a sleeping tab did not watch, but for one short gap', () => {
    const woken = tickPace(startPace(0, 0, 20), 8 * 3_600_000);
    expect(paceTargetS(woken)).toBeCloseTo((MAX_GAP_MS / 1000) * 20, 9);
  });

  it('goes on from the skip at the same speed', () => {
    const woken = tickPace(startPace(0, 0, 2), 60_000);
    const later = tickPace(woken, 60_100);
    expect(paceTargetS(later) - paceTargetS(woken)).toBeCloseTo(0.2, 9);
  });
});
