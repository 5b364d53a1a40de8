import { useEffect, useState } from 'react';
import type { Item, ItemRun } from '../../quiz/index.ts';
import { createSession } from '../session/session.ts';
import type { Session } from '../session/session-types.ts';
import { measureFrame, startMeasuringIfAsked } from '../working/frame-cost.ts';
import { borrowWorker } from './run-workers.ts';

interface Shared {
  readonly session: Session;
  users: number;
  stop(): void;
}

const open = new Map<string, Shared>();

/**
 * The start of an item, up to the end of its record; null where it has none. Parts of the page
 * that show the same start share one run.
 */
export function useItemRun({ id, run }: Item): Session | null {
  return useRun(id, run, false);
}

/** The same after the answer, of any run that belongs to the item: it may be run on past its end. */
export function useReplay(id: string, run: ItemRun | null): Session | null {
  return useRun(id, run, true);
}

function useRun(id: string, run: ItemRun | null, runsOn: boolean): Session | null {
  const [session, setSession] = useState<Session | null>(null);
  useEffect(() => {
    if (run === null) return;
    const name = JSON.stringify([id, runsOn, run]);
    const shared = open.get(name) ?? openRun(id, run, runsOn);
    open.set(name, shared);
    shared.users += 1;
    setSession(shared.session);
    return () => {
      shared.users -= 1;
      if (shared.users > 0) return;
      open.delete(name);
      shared.stop();
    };
  }, [id, run, runsOn]);
  return session;
}

function openRun(id: string, run: ItemRun, runsOn: boolean): Shared {
  startMeasuringIfAsked();
  const opening = { kind: 'quiz', id, item: { run, runsOn }, play: false } as const;
  const session = createSession(borrowWorker(), opening);
  let request = requestAnimationFrame(function frame(nowMs) {
    measureFrame(() => session.animate(nowMs));
    request = requestAnimationFrame(frame);
  });
  return {
    session,
    users: 0,
    stop() {
      cancelAnimationFrame(request);
      session.close();
    },
  };
}
