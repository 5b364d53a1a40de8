import { type ClassEntry, isFor } from '../../../machines/class/index.ts';
import type { OfClass } from '../work/work-record.ts';

type Act = { readonly t: number; readonly type: string };

/**
 * What of a log was ordered by the class, by the log itself: for work that comes from another device
 * without that list. Of several alike the earliest is taken for the earliest order.
 *
 * @param applied number of the last entry that was done to the work
 */
export function orderedIn(
  acts: readonly Act[],
  entries: readonly ClassEntry[],
  seat: number,
  applied: number,
): OfClass['ordered'] {
  const left = acts.map((act) => ({ atS: act.t, text: textOf(act) }));
  const ordered: OfClass['ordered'][number][] = [];
  for (const entry of entries) {
    if (entry.n > applied || (entry.type !== 'do' && entry.type !== 'when')) continue;
    if (!isFor(entry.to, seat)) continue;
    entry.acts.forEach((act, place) => {
      const text = textOf(act);
      const at = left.findIndex((one) => one.text === text);
      for (const { atS } of left.splice(at, at < 0 ? 0 : 1)) {
        ordered.push({ n: entry.n, act: place, atS });
      }
    });
  }
  return ordered;
}

/** The same whatever the order of its fields. */
function textOf(act: object): string {
  const fields = Object.entries(act).filter(([name]) => name !== 't');
  return JSON.stringify(fields.sort(([a], [b]) => (a < b ? -1 : 1)));
}
