import { useEffect, useState } from 'react';
import type { Verdict } from '../session/work-protocol.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';

/** What came of the work, told once it is closed; null while it is being made out. */
export function useVerdict(): Verdict | null {
  const session = useSession();
  const { desk } = useExercise();
  const [verdict, setVerdict] = useState<Verdict | null>(null);
  const open = useSessionPart((state) => state.phase === 'open');
  useEffect(() => {
    if (!open) return;
    let wanted = true;
    session.judge(desk.entries).then(
      (found) => {
        if (wanted) setVerdict(found);
      },
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [session, open, desk.entries]);
  return verdict;
}
