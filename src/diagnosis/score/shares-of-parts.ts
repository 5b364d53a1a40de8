import type { Belief } from '../reasoning/belief.ts';
import { causeShares, sharesOf } from '../reasoning/belief.ts';
import { type Uncertainty, uncertaintyOf } from '../reasoning/gain.ts';
import type { CaseTables } from './case-tables.ts';
import type { PartShare } from './reasoning.ts';

/** What is asked of one belief again and again. */
export interface Outlook {
  readonly belief: Belief;
  readonly shares: Float64Array;
  readonly ofCause: Float64Array;
  readonly uncertainty: Uncertainty;
}

export function outlookOn({ atlas }: CaseTables, belief: Belief): Outlook {
  const shares = sharesOf(belief);
  const ofCause = causeShares(atlas, shares);
  return { belief, shares, ofCause, uncertainty: uncertaintyOf(atlas, shares) };
}

/** Of all causes that may be named by a part. */
export function shareOfPart({ parts }: CaseTables, ofCause: Float64Array, part: string): number {
  return sumOf(ofCause, parts.causesOf(part));
}

/** By which a part may be named, with those that nobody could tell from them. */
export function causesWithAlike({ parts, groupOf }: CaseTables, part: string): readonly number[] {
  const groups = groupOf();
  return [...new Set(parts.causesOf(part).flatMap((cause) => groups[cause] ?? []))];
}

/**
 * Share of a part with what nobody could tell from it. Faults that stand together in the plant are seen
 * together, so they share until one of them is mended.
 */
export function shareWithAlike(
  tables: CaseTables,
  ofCause: Float64Array,
  part: string,
  mended: readonly number[] = [],
): number {
  const causes = causesWithAlike(tables, part);
  const { together } = tables;
  const isShared =
    causes.some((cause) => together.includes(cause)) &&
    !together.some((cause) => mended.includes(cause));
  return sumOf(ofCause, isShared ? [...new Set([...causes, ...together])] : causes);
}

/** Parts that causes are mended at, the likeliest first; ties in the order of the catalogue. */
export function likeliestParts(
  tables: CaseTables,
  ofCause: Float64Array,
  most: number,
): readonly PartShare[] {
  return tables.parts.main
    .map((part) => ({ part, share: shareOfPart(tables, ofCause, part) }))
    .sort((a, b) => b.share - a.share)
    .slice(0, most);
}

function sumOf(ofCause: Float64Array, causes: readonly number[]): number {
  return causes.reduce((sum, cause) => sum + (ofCause[cause] ?? 0), 0);
}
