import { describe, expect, it } from 'vitest';
import { createFrameHistory, cutFrames, writeFrames } from '../../src/app/session/frame-history.ts';
import { feedRecorded } from '../../src/app/working/feed-recorded.ts';

/** Holds frames as the chart does: a start before the end replaces, a gap throws. */
function createTarget() {
  const held: number[] = [];
  return {
    held,
    append(frames: readonly Float64Array[], t0S: number) {
      const at = Math.round(t0S * 10);
      if (at > held.length) throw new RangeError('gap');
      held.length = at;
      held.push(...frames.map(([value]) => value ?? Number.NaN));
    },
  };
}

describe('feeding the chart', () => {
  it('hands over each frame once, and after a cut exactly what the run then holds', () => {
    const history = createFrameHistory(1, 0.1);
    const target = createTarget();
    const feed = feedRecorded(target, { history: () => history });
    writeFrames(history, 0, Float64Array.of(0, 1, 2, 3));
    feed();
    feed();
    writeFrames(history, 4, Float64Array.of(4, 5));
    feed();
    expect(target.held).toEqual([0, 1, 2, 3, 4, 5]);
    cutFrames(history, 3);
    feed();
    expect(target.held).toEqual([0, 1, 2]);
    writeFrames(history, 3, Float64Array.of(30, 40));
    feed();
    expect(target.held).toEqual([0, 1, 2, 30, 40]);
  });

  it('misses no cut that new frames have already covered', () => {
    const history = createFrameHistory(1, 0.1);
    const target = createTarget();
    const feed = feedRecorded(target, { history: () => history });
    writeFrames(history, 0, Float64Array.of(0, 1, 2, 3));
    feed();
    cutFrames(history, 2);
    writeFrames(history, 2, Float64Array.of(20, 30, 40, 50));
    feed();
    expect(target.held).toEqual([0, 1, 20, 30, 40, 50]);
  });
});
