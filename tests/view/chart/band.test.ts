import { describe, expect, it } from 'vitest';
import { bandOf, standingOf } from '../../../src/view/chart/band.ts';

const FRAME_S = 0.1;
/** A damper that is at rest for 5 s, opens 3° a second to 90° in 30 s, and stays. */
const damper = Float64Array.from({ length: 600 }, (_none, i) =>
  Math.min(90, Math.max(0, (i * FRAME_S - 5) * 3)),
);
const band = bandOf(damper, FRAME_S, 93, 0.05);
const drive = { fromS: 5, toS: 40 };

describe('the expected band of a lane', () => {
  it('holds the expected value itself, always', () => {
    damper.forEach((value, i) => {
      expect(band.low[i]).toBeLessThanOrEqual(value);
      expect(band.high[i]).toBeGreaterThanOrEqual(value);
    });
  });

  it('lets a device be a second early or late', () => {
    const at = 200;
    expect(damper[at - 10]).toBeGreaterThan(band.low[at]);
    expect(damper[at + 10]).toBeLessThan(band.high[at]);
  });

  it('has a device on time as expected', () => {
    expect(standingOf(band, 45, 20, drive, 0)).toEqual({ type: 'as expected' });
  });

  it('tells by how many seconds a slow device is behind', () => {
    // Expected 60° at 25 s; 42° was expected at 19 s.
    const standing = standingOf(band, 42, 25, drive, 0);
    expect(standing.type).toBe('behind');
    // Within a frame either way: times are those of frames.
    expect('seconds' in standing && standing.seconds).toBeCloseTo(6, 0);
  });

  it('counts the time by which the step itself has run over', () => {
    const standing = standingOf(band, 42, 40, drive, 12);
    expect('seconds' in standing && standing.seconds).toBeCloseTo(40 - 19 + 12, 0);
  });

  it('tells by how many seconds a quick device is ahead', () => {
    const standing = standingOf(band, 78, 25, drive, 0);
    expect(standing.type).toBe('ahead');
    expect('seconds' in standing && standing.seconds).toBeCloseTo(6, 0);
  });

  it('has a device outside that goes where it is never expected in this step', () => {
    expect(standingOf(band, 20, 50, { fromS: 40, toS: 60 }, 0)).toEqual({ type: 'outside' });
  });
});
