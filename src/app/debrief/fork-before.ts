import type { DeskEntry } from '../../../machines/job/index.ts';
import type { JudgedDecision } from '../../diagnosis/index.ts';
import type { Fork } from '../work/branch-work.ts';

/** Less than a step of the engine apart is the same moment. */
const SAME_S = 0.005;

/** Where a branch leaves the work so that this decision is still to be made. */
export function forkBefore(
  { t, kind, what }: Pick<JudgedDecision, 't' | 'kind' | 'what'>,
  desk: readonly DeskEntry[],
): Fork {
  const own = desk.findIndex((entry) => Math.abs(entry.t - t) < SAME_S && isOf(entry, kind, what));
  const entries = own >= 0 ? own : desk.filter((entry) => entry.t <= t + SAME_S).length;
  return { t, entries };
}

/** Whether the decision is this entry on paper, not an act at the plant. */
function isOf(entry: DeskEntry, kind: JudgedDecision['kind'], what: string): boolean {
  switch (kind) {
    case 'ask':
      return entry.type === 'ask' && entry.topic === what;
    case 'check':
      return entry.type === 'read sheet' && what.startsWith('commissioning sheet');
    case 'suspect':
      return entry.type === 'suspect' && (entry.ranked[0] ?? '') === what;
    case 'claim':
      return entry.type === 'claim' && entry.part === what;
    case 'withdraw':
      return entry.type === 'withdraw';
    default:
      return false;
  }
}
