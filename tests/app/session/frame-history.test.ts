import { describe, expect, it } from 'vitest';
import {
  createFrameHistory,
  cutFrames,
  firstKept,
  frameAt,
  frameIndexAt,
  MAX_CHUNKS,
  writeFrames,
} from '../../../src/app/session/frame-history.ts';

function framesOf(first: number, count: number): Float64Array {
  return Float64Array.from(
    { length: count * 2 },
    (_, i) => first + Math.floor(i / 2) + (i % 2) / 2,
  );
}

describe('frame history', () => {
  it('gives back each frame at its index, across chunks', () => {
    const history = createFrameHistory(2, 0.1);
    writeFrames(history, 0, framesOf(0, 599));
    writeFrames(history, 599, framesOf(599, 700));
    expect(history.count).toBe(1299);
    for (const k of [0, 598, 599, 600, 601, 1298])
      expect(frameAt(history, k)).toEqual(framesOf(k, 1));
  });

  it('refuses a gap', () => {
    const history = createFrameHistory(2, 0.1);
    writeFrames(history, 0, framesOf(0, 3));
    expect(() => writeFrames(history, 5, framesOf(5, 1))).toThrow(RangeError);
  });

  it('after a cut goes on from the cut with new frames', () => {
    const history = createFrameHistory(2, 0.1);
    writeFrames(history, 0, framesOf(0, 1500));
    cutFrames(history, 610);
    writeFrames(history, 610, framesOf(9000, 20));
    expect(history.count).toBe(630);
    expect(frameAt(history, 609)).toEqual(framesOf(609, 1));
    expect(frameAt(history, 610)).toEqual(framesOf(9000, 1));
  });

  it('keeps an hour and forgets the oldest beyond it', () => {
    const history = createFrameHistory(2, 0.1);
    for (let k = 0; k < (MAX_CHUNKS + 2) * 600; k += 600) writeFrames(history, k, framesOf(k, 600));
    expect(firstKept(history)).toBe(1200);
    expect(frameAt(history, 0)).toEqual(framesOf(1200, 1));
    expect(frameAt(history, 1e9)).toEqual(framesOf((MAX_CHUNKS + 2) * 600 - 1, 1));
    expect(history.chunks.length).toBe(MAX_CHUNKS);
  });

  it('finds the frame of a moment in spite of the last bits of a tenth', () => {
    const history = createFrameHistory(2, 0.1);
    writeFrames(history, 0, framesOf(0, 100));
    for (let k = 0; k < 100; k += 1) expect(frameIndexAt(history, k * 0.1)).toBe(k);
    expect(frameIndexAt(history, 1.19)).toBe(11);
  });
});
