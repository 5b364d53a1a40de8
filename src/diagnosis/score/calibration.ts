/** A learner's suspects against what readings had shown by then. */
import type { PartShare, Reasoning } from './reasoning.ts';
import { likeliestParts, shareOfPart } from './shares-of-parts.ts';
import type { Step } from './way-so-far.ts';
import { viewOfPart } from './way-so-far.ts';

/** The likeliest so many count as passed over where they were not ranked. */
const PASSED_OVER = 3;

export function calibrationOf(steps: readonly Step[]): Reasoning['calibration'] {
  let rankings = 0;
  let firstShare = 0;
  let distance = 0;
  steps.forEach(({ decision, before }, i) => {
    if (decision.kind !== 'suspect' || decision.ranked.length === 0) return;
    const earlier = steps.slice(0, i);
    const ranked = [...new Set(decision.ranked)].map((part): PartShare => {
      const { tables, ofCause } = viewOfPart(earlier, before, part);
      return { part, share: shareOfPart(tables, ofCause, part) };
    });
    const likeliest = likeliestParts(before.tables, before.ofCause, PASSED_OVER);
    rankings += 1;
    firstShare += ranked[0]?.share ?? 0;
    distance += rankDistance(ranked, likeliest);
  });
  if (rankings === 0) return null;
  return { rankings, firstShare: firstShare / rankings, distance: distance / rankings };
}

/**
 * Pairs in the wrong order over all pairs, each weighing as much as its shares are apart; what is likely
 * and not ranked at all comes after all that is.
 */
export function rankDistance(
  ranked: readonly PartShare[],
  likeliest: readonly PartShare[],
): number {
  const after = likeliest.filter(({ part }) => !ranked.some((one) => one.part === part));
  let wrong = 0;
  let all = 0;
  ranked.forEach((first, i) => {
    for (const second of [...ranked.slice(i + 1), ...after]) {
      all += Math.abs(first.share - second.share);
      wrong += Math.max(0, second.share - first.share);
    }
  });
  return all > 0 ? wrong / all : 0;
}
