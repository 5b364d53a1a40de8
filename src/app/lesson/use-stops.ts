import { useEffect, useRef } from 'react';
import { useExercise } from '../job/exercise-context.tsx';
import type { Lesson } from '../library/exercises.ts';
import { stepAt } from '../reading/step-at.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';

/** Fast enough that nobody waits for a purge, slow enough to see it. */
const FIRST_SPEED = 5;

/**
 * Runs the start from stop to stop. The run stops on entering each step; one that the lesson has
 * nothing to say of is run through. A pause that the learner made is left alone.
 */
export function useStops(lesson: Lesson): { readonly runOn: () => void } {
  const session = useSession();
  const { desk, take } = useExercise();
  const mode = useSessionPart((state) => state.status?.mode ?? 'paused');
  const step = useSessionPart((state) => stepAt(state.events, state.status?.headS ?? 0).step);
  const open = useSessionPart((state) => state.phase === 'open');
  const left = useRef<string | null>(null);
  const next = lesson.steps[desk.stops]?.step;
  const running = desk.phase !== 'broken';
  const runOn = () => {
    left.current = step;
    const { status } = session.store.read();
    session.play(desk.stops === 0 ? FIRST_SPEED : (status?.speed ?? FIRST_SPEED));
  };
  useEffect(() => {
    if (open) session.stopAt(running ? 'each step' : null);
  }, [session, open, running]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what happens follows from where the run stands
  useEffect(() => {
    if (!open || desk.phase !== 'run' || mode !== 'paused') return;
    if (step === next) take({ type: 'explain', step });
    else if (step !== left.current) runOn();
  }, [open, desk.phase, mode, step, next]);
  return { runOn };
}
