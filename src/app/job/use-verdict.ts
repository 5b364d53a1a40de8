import { useEffect, useState } from 'react';
import type { Verdict } from '../session/work-protocol.ts';
import { useSession, useSessionPart } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';

/**
 * What came of the work, told once it is closed. Null while it is being made out; 'failed' when
 * judging broke off, of which nothing good may be said either.
 */
export function useVerdict(): Verdict | 'failed' | null {
  const session = useSession();
  const { desk } = useExercise();
  const [verdict, setVerdict] = useState<Verdict | 'failed' | null>(null);
  const open = useSessionPart((state) => state.phase === 'open');
  useEffect(() => {
    if (!open) return;
    let wanted = true;
    session.judge(desk.entries).then(
      (found) => {
        if (wanted) setVerdict(found);
      },
      () => {
        if (wanted) setVerdict('failed');
      },
    );
    return () => {
      wanted = false;
    };
  }, [session, open, desk.entries]);
  return verdict;
}
