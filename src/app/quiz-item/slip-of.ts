import { displayOf } from '../../quantity/index.ts';
import type { NumberItem, Statement } from '../../quiz/index.ts';

/** A share of the number apart, an answer is still taken for the outcome of a slip. */
const NEAR = 0.02;

/** Why a wrong number came out, where a well-known slip leads to it; null where none does. */
export function slipOf({ mistakes = [], key, of }: NumberItem, value: number): Statement | null {
  const near = mistakes
    .map(({ value: slip, why }) => ({ off: Math.abs(value - slip), slip, why }))
    .filter(({ off, slip }) => off <= Math.abs(slip) * NEAR + halfDigit(of))
    // What is nearer to the right answer is no slip.
    .filter(({ off }) => off < Math.abs(value - key))
    .sort((a, b) => a.off - b.off);
  return near[0]?.why ?? null;
}

/** What rounding to the shown digits may have moved, SI. */
function halfDigit(of: NumberItem['of']): number {
  const { digits, factor } = displayOf(of, 'SI');
  return 0.5 / factor / 10 ** digits;
}
