import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  LEAST_READABLE_PX,
  layoutTiles,
  windowOf,
} from '../../../src/app/teach-class/tile-layout.ts';

describe('tiles on a wall', () => {
  it('thirty of them are readable on 1920 × 1080, with the header taken off', () => {
    const { columns, rows, fontPx } = layoutTiles(30, 1904, 960);
    expect(columns * rows).toBeGreaterThanOrEqual(30);
    // A letter is about 0.7 of this high: 28 px, which is 28 mm on a picture 1.9 m wide.
    expect(fontPx).toBeGreaterThanOrEqual(40);
  });

  it('all have their place, and none would be larger with other columns', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200 }),
        fc.integer({ min: 300, max: 4000 }),
        fc.integer({ min: 200, max: 2200 }),
        (count, wide, high) => {
          const { columns, rows, fontPx } = layoutTiles(count, wide, high);
          expect(columns * rows).toBeGreaterThanOrEqual(count);
          expect((rows - 1) * columns).toBeLessThan(count);
          expect(fontPx).toBeGreaterThan(0);
          for (let other = 1; other <= count; other += 1) {
            const size = Math.min(wide / other / 7.4, high / Math.ceil(count / other) / 4.1, 96);
            expect(fontPx).toBeGreaterThanOrEqual(size - 1e-6);
          }
        },
      ),
      { seed: 3, numRuns: 60 },
    );
  });

  it('a hundred on the same wall would be too small, and are counted instead', () => {
    expect(layoutTiles(100, 1904, 960).fontPx).toBeLessThan(LEAST_READABLE_PX);
  });
});

describe('rows in sight', () => {
  it('hold all that can be seen, and no more than a few around it', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 2000 }),
        fc.integer({ min: 20, max: 200 }),
        fc.nat(400_000),
        fc.integer({ min: 100, max: 1500 }),
        (rows, rowPx, scrolledPx, heightPx) => {
          const { from, to } = windowOf(rows, rowPx, scrolledPx, heightPx);
          const first = Math.floor(scrolledPx / rowPx);
          const last = Math.ceil((scrolledPx + heightPx) / rowPx);
          expect(from).toBeLessThanOrEqual(Math.min(rows, first));
          expect(to).toBeGreaterThanOrEqual(Math.min(rows, last));
          expect(to - from).toBeLessThanOrEqual(Math.ceil(heightPx / rowPx) + 10);
        },
      ),
      { seed: 5 },
    );
  });
});
