import type { Rejection } from '../../item/maker.ts';
import { type AlikeStart, LEAST_ALIKE } from './alike-starts.ts';
import type { Cut } from './cut.ts';
import type { OtherOutcome } from './other-outcomes.ts';
import { isSameOutcome, type Outcome } from './start-record.ts';

const KEY_SHARE = 0.9;
const OTHER_SHARE = 0.05;
const LEAST_OWN = 6;

/** Why what was counted proves nothing; null where it does. */
export function whyUnproved(
  alike: readonly AlikeStart[],
  { right }: Cut,
  others: readonly OtherOutcome[],
): Rejection | null {
  const isOutcome = (one: AlikeStart, outcome: Outcome) =>
    one.outcome !== null && isSameOutcome(one.outcome, outcome);
  const own = alike.filter((one) => one.own);
  if (own.some((one) => !isOutcome(one, right))) return 'differs by tolerance';
  if (own.length < LEAST_OWN || alike.length < LEAST_ALIKE) return 'key not proved';
  const all = alike.reduce((sum, { weight }) => sum + weight, 0);
  const shareOf = (outcome: Outcome) =>
    alike.reduce((sum, one) => (isOutcome(one, outcome) ? sum + one.weight : sum), 0) / all;
  if (!(shareOf(right) >= KEY_SHARE)) return 'key not proved';
  return others.every(({ outcome }) => shareOf(outcome) <= OTHER_SHARE)
    ? null
    : 'distractor not ruled out';
}
