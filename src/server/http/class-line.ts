import { foldClass } from '../../../machines/class/index.ts';
import type { ClassLine } from '../../classroom/index.ts';
import type { Live } from '../live/index.ts';
import type { KeptClass } from '../store/types.ts';

/** A class in a list. @throws StoreFailure */
export async function lineOfClass(live: Live, kept: KeptClass, seats: number): Promise<ClassLine> {
  const { id, code, what, way, openedMs, closedMs, retentionDays } = kept;
  const phase =
    closedMs !== null
      ? 'closed'
      : (live.classes.get(id)?.state ?? foldClass(await live.store.entriesSince(id, 0))).phase;
  return {
    id,
    code,
    title: what.title,
    kind: what.kind,
    way,
    phase,
    openedMs,
    closedMs,
    seats,
    retentionDays,
  };
}
