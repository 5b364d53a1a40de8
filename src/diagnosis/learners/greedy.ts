import type { Ask } from '../author/asks.ts';
import { REDUNDANT_BITS } from '../reasoning/gain.ts';
import type { View } from '../score/view-of-knowing.ts';
import { checksFirst } from './checks-first.ts';
import type { Learner } from './learner.ts';

/** Always the check that tells most for its cost. */
export const greedy: Learner = {
  name: 'greedy',
  byChance: false,
  goThrough: checksFirst(() => greedyOf),
};

/** Null where nothing is worth its time any more. */
export function greedyOf(view: View, open: readonly Ask[]): Ask | null {
  for (const { ask, bits } of view.ranked()) {
    if (bits < REDUNDANT_BITS) continue;
    const found = open.find((one) => one.question === ask.question);
    if (found !== undefined) return found;
  }
  return null;
}
