import { useEffect, useState } from 'react';
import { startWorker } from '../quiz-item/start-worker.ts';
import { createSession } from '../session/session.ts';
import type { Session, SessionOpening } from '../session/session-types.ts';
import { measureFrame, startMeasuringIfAsked } from '../working/frame-cost.ts';
import { markRun } from '../working/marks.ts';

interface Ways {
  /** Writes where it stands onto the page, for tests: only the run that is in the middle of it. */
  readonly marked?: boolean;
  /** Called once it is made; what it hands back is called before it is closed. */
  readonly attach?: (session: Session) => () => void;
}

/**
 * A run in a worker of its own for as long as the page stands; null where there is none yet.
 *
 * @param key another one opens another run
 * @param opening null: none
 */
export function useOpenRun(
  key: string,
  opening: SessionOpening | null,
  { marked = false, attach }: Ways = {},
): Session | null {
  const [session, setSession] = useState<Session | null>(null);
  const wanted = opening !== null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the key says when it is another one
  useEffect(() => {
    if (opening === null) return;
    startMeasuringIfAsked();
    const opened = createSession(startWorker(), opening);
    const unmark = marked ? markRun(opened) : () => undefined;
    const detach = attach?.(opened) ?? (() => undefined);
    let request = requestAnimationFrame(function frame(nowMs) {
      measureFrame(() => opened.animate(nowMs));
      request = requestAnimationFrame(frame);
    });
    setSession(opened);
    return () => {
      cancelAnimationFrame(request);
      unmark();
      detach();
      opened.close();
      setSession(null);
    };
  }, [key, wanted]);
  return session;
}
