import { useEffect } from 'react';
import type { InstructorClient } from '../../classroom/index.ts';
import type { Action } from '../../engine/index.ts';
import type { HistoryEvent } from '../session/protocol.ts';
import type { Session } from '../session/session-types.ts';
import type { Saying } from './saying.ts';

/**
 * At the one plant: what was laid ready for a step is done when the leading run enters it, once.
 * At own copies each seat does it for itself.
 */
export function useTriggers(client: InstructorClient, session: Session | null, say: Saying): void {
  useEffect(() => {
    if (session === null || client.store.read().book.way !== 'together') return;
    const done = new Set<string>();
    let seen = session.store.read().events;
    return session.store.subscribe(() => {
      const { events, status, phase } = session.store.read();
      if (events === seen) return;
      // A run that is taken up again brings its past along before it says how it goes.
      const runs = phase === 'open' && status !== null && status.mode !== 'paused';
      const entered = runs ? newSteps(seen, events) : [];
      seen = events;
      for (const { id, step, acts } of client.store.read().book.triggers) {
        if (done.has(id) || !entered.includes(step)) continue;
        done.add(id);
        for (const act of acts) session.order(act as Action);
        void say({ type: 'forget when', id });
      }
    });
  }, [client, session, say]);
}

/** Steps entered since; after a cut the list is shorter, and what comes then is new. */
export function newSteps(
  before: readonly HistoryEvent[],
  now: readonly HistoryEvent[],
): readonly string[] {
  let same = 0;
  while (same < before.length && same < now.length && before[same] === now[same]) same += 1;
  return now.slice(same).flatMap((event) => (event.type === 'step' ? [event.step] : []));
}
