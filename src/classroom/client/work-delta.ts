import type { WorkDelta, WorkRecord } from '../protocol/index.ts';
import { sharedLength } from './same-data.ts';

/**
 * What has to be told so that the server has `record`, whichever of `mayHave` it holds by now.
 *
 * @param mayHave null in the list: nothing. In place of the list: not known, so all is told
 */
export function deltaOf(
  record: WorkRecord,
  mayHave: readonly (WorkRecord | null)[] | null,
): WorkDelta {
  const { acts, desk, ...head } = record;
  const keepActs = keptOf(acts, mayHave, record.attempt, (held) => held.acts);
  const keepDesk = keptOf(desk, mayHave, record.attempt, (held) => held.desk);
  return { ...head, keepActs, acts: acts.slice(keepActs), keepDesk, desk: desk.slice(keepDesk) };
}

function keptOf(
  list: readonly unknown[],
  mayHave: readonly (WorkRecord | null)[] | null,
  attempt: number,
  pick: (held: WorkRecord) => readonly unknown[],
): number {
  if (mayHave === null) return 0;
  const kept = mayHave.map((held) =>
    held === null || held.attempt !== attempt ? 0 : sharedLength(list, pick(held)),
  );
  return kept.length === 0 ? 0 : Math.min(...kept);
}
