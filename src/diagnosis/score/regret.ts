/** What a decision cost beside the best that could have been done then, minutes; free of luck. */
import { entropyBits } from '../reasoning/gain.ts';
import type { Asked } from './keys-of-decision.ts';
import { priceOfBit } from './ranking.ts';
import { thinkThrough } from './think-through.ts';
import type { View } from './view-of-knowing.ts';
import { questionOfKeys, worthBits } from './worth-of-looking.ts';

/**
 * Equation: ΔQ = Q(b, a) − V(b) where the case can be thought through; else cost − λ·bits, λ being what a
 *   bit costs at the least. Nought for the best there is, the whole cost for what tells nothing.
 *
 * @param cost of looking, minutes with surcharges
 */
export function regretOfLooking(view: View, { keys }: Asked, cost: number): number {
  const { tables } = view;
  const ranked = view.ranked();
  const question = questionOfKeys(tables, keys);
  if (question === null) return cost;
  if (view.thought() !== null) {
    const thought = thinkThrough(tables, view, ranked, question);
    if (thought !== null) return Math.max(0, thought.valueAfter(cost) - thought.value);
  }
  return Math.max(0, cost - priceOfBit(ranked) * worthBits(tables, view, keys));
}

/** What it would still cost to know the cause, minutes. */
export function costToKnow(view: View): number {
  const thought = view.thought();
  if (thought !== null) return thought.value;
  return priceOfBit(view.ranked()) * entropyBits(view.ofCause);
}

/** @param share of what the work may mend */
export function regretOfWork(costMinutes: number, share: number): number {
  return costMinutes * Math.max(0, 1 - share);
}
