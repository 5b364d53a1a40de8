import { useEffect, useState } from 'react';
import { createSession } from '../session/session.ts';
import type { ReasonerWays } from '../session/session-reason.ts';
import type { Session, SessionOpening } from '../session/session-types.ts';
import { useStorePart } from '../session/store.ts';
import { useWorkPlace } from '../work/work-place.ts';
import type { Work } from '../work/work-types.ts';
import { measureFrame, startMeasuringIfAsked } from '../working/frame-cost.ts';
import { markRun } from '../working/marks.ts';

const startWorker = (): Worker =>
  new Worker(new URL('../session/worker.ts', import.meta.url), { type: 'module' });
const reasonerOfPage = (): ReasonerWays => ({
  startWorker,
  atlases: new URL('atlas/', document.baseURI).href,
});

/** A run in a worker of its own, that can also be asked how its cause was gone about. */
export function openWorkSession(opening: SessionOpening): Session {
  return createSession(startWorker(), opening, reasonerOfPage());
}

/** The run of a piece of work, in a worker of its own, saved for as long as the page stands. */
export function useWorkSession(work: Work): Session | null {
  const [session, setSession] = useState<Session | null>(null);
  const attempt = useStorePart(work.state, (state) => state.attempt);
  const place = useWorkPlace();
  // biome-ignore lint/correctness/useExhaustiveDependencies: each attempt is another run
  useEffect(() => {
    startMeasuringIfAsked();
    // Nothing at the plant moves before the learner is there, nor after a break before one says so.
    const opened = openWorkSession({ ...work.opening(), ...place.opening, play: false });
    const detach = work.attach(opened);
    const leave = place.attach(opened, work);
    const unmark = markRun(opened);
    let request = requestAnimationFrame(function frame(nowMs) {
      measureFrame(() => opened.animate(nowMs));
      request = requestAnimationFrame(frame);
    });
    setSession(opened);
    return () => {
      cancelAnimationFrame(request);
      unmark();
      leave();
      detach();
      opened.close();
      setSession(null);
    };
  }, [work, attempt, place]);
  return session;
}
