import { useEffect, useState } from 'react';
import type { LearnerScenario } from '../../scenario/index.ts';
import { startWorker } from '../quiz-item/start-worker.ts';
import { createSession } from '../session/session.ts';
import type { Session } from '../session/session-types.ts';
import { measureFrame } from '../working/frame-cost.ts';
import { markRun } from '../working/marks.ts';

/** A page that shows a run keeps an hour of it. */
const MOST_S = 3600;

/** The file run in a worker of its own, at full speed to its end; another file is another run. */
export function usePreview(start: LearnerScenario | null): Session | null {
  const [session, setSession] = useState<Session | null>(null);
  useEffect(() => {
    if (start === null) return;
    const opened = createSession(startWorker(), {
      kind: 'watch',
      id: start.id,
      given: { scenarios: [start] },
      untilS: Math.min(MOST_S, start.until),
      play: false,
    });
    const unmark = markRun(opened);
    let request = requestAnimationFrame(function frame(nowMs) {
      measureFrame(() => opened.animate(nowMs));
      request = requestAnimationFrame(frame);
    });
    setSession(opened);
    return () => {
      cancelAnimationFrame(request);
      unmark();
      opened.close();
      setSession(null);
    };
  }, [start]);
  return session;
}
