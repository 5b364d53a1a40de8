import { useCallback, useMemo } from 'react';
import type { InstructorClient, InstructorNow, WorkRecord } from '../../classroom/index.ts';
import type { TimedAction } from '../../engine/index.ts';
import type { Session, SessionOpening } from '../session/session-types.ts';
import { useStorePart } from '../session/store.ts';
import { openingOf } from './exercise-of-class.ts';
import { leadClass } from './lead-class.ts';
import { useOpenRun } from './use-open-run.ts';

/**
 * The leading run of a class that works together: opened where the server has it, and told on from
 * there. Null where everyone has an own copy, and until the server has said where it stands.
 */
export function useLead(client: InstructorClient): Session | null {
  const isReady = useStorePart(
    client.store,
    ({ book, link }) => book.way === 'together' && book.what !== null && link !== 'connecting',
  );
  // Only what was there at the beginning: later the server has it from here.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  const opening = useMemo(() => (isReady ? leadOpening(client.store.read()) : null), [isReady]);
  const attach = useCallback((session: Session) => lead(session, client), [client]);
  return useOpenRun('lead', opening, { marked: true, attach });
}

function leadOpening({ book, work, head }: InstructorNow): SessionOpening | null {
  const opening = openingOf(book);
  if (opening === null) return null;
  if (work === null) return { ...opening, play: false };
  const { acts, headS, setupHash } = work;
  return {
    ...opening,
    log: acts as TimedAction[],
    // The head is told more often than the work that it rests on.
    untilS: Math.max(headS, restsOn(work, head) ? head.headS : 0),
    setupHash,
    play: false,
  };
}

function restsOn(work: WorkRecord, head: InstructorNow['head']): head is NonNullable<typeof head> {
  return head !== null && head.attempt === work.attempt && head.acts === work.acts.length;
}

function lead(session: Session, client: InstructorClient): () => void {
  let stop: (() => void) | null = null;
  const unwatch = session.store.subscribe(() => {
    const { facts, phase } = session.store.read();
    if (phase !== 'open' || facts === null) return;
    unwatch();
    const { work } = client.store.read();
    const base = {
      attempt: work?.attempt ?? 1,
      startedMs: work?.startedMs ?? Date.now(),
      setupHash: facts.work.setupHash,
    };
    stop = session.onLead(leadClass(client, base, () => performance.now()));
  });
  return () => {
    unwatch();
    stop?.();
  };
}
