import { useCallback } from 'react';
import type { Refusal } from '../../../machines/job/index.ts';
import { stepAt } from '../reading/step-at.ts';
import { useSession } from '../working/session-context.tsx';
import { useExercise } from './exercise-context.tsx';

interface Read {
  readonly what: string;
  readonly place: string;
  readonly other?: string | undefined;
  readonly reading: string;
}

/** Keeps a reading on paper, with the step in which it was taken. */
export function usePin(): (read: Read) => Refusal | null {
  const session = useSession();
  const { take } = useExercise();
  return useCallback(
    ({ what, place, other = '', reading }) => {
      const { step } = stepAt(session.store.read().events, session.headS());
      return take({ type: 'pin', what, place, other, reading, step });
    },
    [session, take],
  );
}
