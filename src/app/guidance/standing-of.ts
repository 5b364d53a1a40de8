import type { BoardLine } from '../../diagnosis/index.ts';

export const STANDINGS = ['out', 'behind', 'open', 'ahead'] as const;
export type Standing = (typeof STANDINGS)[number];

const BEHIND_SHARE = 0.1;
const AHEAD_SHARE = 0.6;

/** How a suspected part stands with the readings, in a word. */
export function standingOf({ share, ruledOut }: BoardLine): Standing {
  if (ruledOut === true) return 'out';
  if (share < BEHIND_SHARE) return 'behind';
  return share < AHEAD_SHARE ? 'open' : 'ahead';
}
