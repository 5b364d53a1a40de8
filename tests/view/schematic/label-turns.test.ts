import { describe, expect, it } from 'vitest';
import { createLabelTurns } from '../../../src/view/schematic/label-turns.ts';

describe('labels read in turns', () => {
  it('are each read once in twelve frames, and only a few in any one', () => {
    const reads = Array.from({ length: 27 }, () => 0);
    const turns = createLabelTurns();
    turns.use(
      reads.map((_none, i) => ({
        refresh() {
          reads[i] += 1;
          return false;
        },
      })),
    );
    let before = 0;
    for (let frame = 0; frame < 12; frame += 1) {
      turns.next(new Float64Array(0));
      const now = reads.reduce((sum, count) => sum + count, 0);
      expect(now - before).toBeLessThanOrEqual(3);
      before = now;
    }
    expect(new Set(reads)).toEqual(new Set([1]));
  });
});
