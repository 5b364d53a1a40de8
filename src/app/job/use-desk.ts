import { useCallback, useMemo } from 'react';
import {
  type DeskEvent,
  type DeskKind,
  type DeskPlan,
  foldDesk,
  type Refusal,
  takeEntry,
} from '../../../machines/job/index.ts';
import type { Session } from '../session/session-types.ts';
import { useStorePart } from '../session/store.ts';
import type { Work } from '../work/work-types.ts';
import type { Exercise } from './exercise-context.tsx';

/** The desk of a piece of work: its saved entries folded into what is on paper. */
export function useDesk(
  kind: DeskKind,
  id: string,
  plan: DeskPlan,
  work: Work,
  session: Session | null,
): Exercise {
  const entries = useStorePart(work.state, (state) => state.desk);
  const desk = useMemo(() => foldDesk(kind, plan, entries), [kind, plan, entries]);
  const take = useCallback(
    (event: DeskEvent): Refusal | null => {
      // Before the plant stands there is no time at which anything could be written down.
      if (session === null || session.store.read().phase !== 'open') return 'not now';
      const now = foldDesk(kind, plan, work.state.read().desk);
      const lastS = kind === 'lesson' ? 0 : (now.entries.at(-1)?.t ?? 0);
      const t = Math.max(session.headS(), lastS);
      const taken = takeEntry(now, { ...event, t });
      if (!taken.ok) return taken.refusal;
      work.putDesk(taken.state.entries);
      return null;
    },
    [kind, plan, work, session],
  );
  return useMemo(
    () => ({ kind, id, desk, take, startAnew: () => work.startAnew() }),
    [kind, id, desk, take, work],
  );
}
