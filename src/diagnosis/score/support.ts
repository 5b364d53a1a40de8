/** Whether readings had made something the likeliest by far. */
import { shareWithAlike } from './shares-of-parts.ts';
import type { View } from './view-of-knowing.ts';

/** Four times as likely as all else together: that is enough, wherever it was read. */
const CLEAR_SHARE = 0.8;
/** More likely than all else together: enough for whoever has looked beyond what the panel shows anyone. */
const LIKELY_SHARE = 0.6;
/** What is common is not found by being common: readings have to have raised its odds so many times. */
const RAISED_BY_ALL = 4;
const RAISED_BY_OWN = 1.5;

/**
 * A part-swapper may well begin with what the lockout makes likeliest; that is a good guess yet, unless
 * nothing else is left.
 *
 * @param arrived what anybody knows who comes
 */
export function isSupported(view: View, arrived: View, part: string): boolean {
  const { tables, ofCause, knowing } = view;
  const shareIn = (shares: Float64Array) => shareWithAlike(tables, shares, part, knowing.mended);
  const share = shareIn(ofCause);
  if (share < LIKELY_SHARE || raised(share, shareIn(tables.priorOfCause)) < RAISED_BY_ALL) {
    return false;
  }
  return share >= CLEAR_SHARE || raised(share, shareIn(arrived.ofCause)) >= RAISED_BY_OWN;
}

/** How many times the odds of it have grown. */
function raised(share: number, before: number): number {
  const shrunk = (1 - share) * before;
  return shrunk > 0 ? (share * (1 - before)) / shrunk : Number.POSITIVE_INFINITY;
}
