import { useMemo } from 'react';
import type { LearnerLibrary } from '../../scenario/index.ts';
import type { WorkPlace } from '../work/work-place.ts';
import type { Work } from '../work/work-types.ts';
import { attachToClass } from './attach-to-class.ts';
import { type ClassSeat, useClass, useClassPart } from './class-context.ts';
import { handIn } from './hand-in.ts';

/** Where work in a class is done: on the seat's own shelf, told as it goes on, handed in when it is over. */
export function useClassPlace(): WorkPlace {
  const seat = useClass();
  const what = useClassPart((now) => now.book.what);
  const seed = useClassPart((now) => now.book.seed);
  return useMemo(() => placeOf(seat, seed, what?.given), [seat, seed, what]);
}

function placeOf(seat: ClassSeat, seed: number, given: unknown): WorkPlace {
  // The server checked it when the class was opened, and the worker does where it runs.
  const library = (given ?? {}) as Partial<LearnerLibrary>;
  let current: Work | null = null;
  return {
    shelf: seat.shelf,
    opening: { seed, ...(given === undefined ? {} : { given }) },
    given: library,
    isClass: true,
    ended(outcome) {
      // A quiz has no run of its own, and no hash.
      const hash = current === null ? '' : (current.state.read().record?.hash ?? null);
      handIn(seat, outcome, hash);
    },
    attach(session, work) {
      current = work;
      return attachToClass(seat, session, work);
    },
  };
}
