import { useEffect, useState } from 'react';
import { createSession } from '../session/session.ts';
import type { Session } from '../session/session-types.ts';
import { measureFrame, startMeasuringIfAsked } from './frame-cost.ts';
import { markRun } from './marks.ts';

/** Opens a scenario in a worker of its own and keeps it going for as long as the page stands. */
export function useSessionOf(scenario: string, attempt: number): Session | null {
  const [session, setSession] = useState<Session | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another attempt is another run
  useEffect(() => {
    startMeasuringIfAsked();
    const worker = new Worker(new URL('../session/worker.ts', import.meta.url), {
      type: 'module',
    });
    const opened = createSession(worker, scenario);
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
  }, [scenario, attempt]);
  return session;
}
