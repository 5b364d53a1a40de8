import { createContext, useContext, useMemo } from 'react';
import type { ClassState, ClassTo } from '../../../machines/class/index.ts';
import type { InstructorClient } from '../../classroom/index.ts';
import type { Session } from '../session/session-types.ts';
import { type Store, useStorePart } from '../session/store.ts';
import type { BoardRow } from './board-rows.ts';
import type { BoardWatch } from './board-watch.ts';
import type { Drive } from './drive.ts';
import type { OwnClass } from './own-classes.ts';
import type { Saying, TeachNotice } from './saying.ts';
import type { Selection } from './selection.ts';

export interface Teach {
  readonly own: OwnClass;
  readonly client: InstructorClient;
  readonly board: BoardWatch;
  readonly selection: Store<Selection>;
  readonly notice: Store<TeachNotice>;
  /** Says it to the class; a refusal becomes the notice. */
  readonly say: Saying;
  readonly drive: Drive;
  /**
   * Together the run that everyone follows. Otherwise one that stands still, opened so that the
   * plant of the class is known; null while nobody has wanted to know, and in a quiz.
   */
  readonly session: Session | null;
  /** The run in the middle of the page, where it is a seat's. */
  readonly viewed: Store<{ readonly session: Session | null }>;
  /** Opens that one; called by whoever needs the facts of the plant. */
  wantFacts(): void;
}

const TeachContext = createContext<Teach | null>(null);
export const TeachProvider = TeachContext.Provider;

export function useTeach(): Teach {
  const teach = useContext(TeachContext);
  if (teach === null) throw new Error('no class around this part of the page');
  return teach;
}

/** The class as its entries so far make it. */
export function useBook(): ClassState {
  return useStorePart(useTeach().client.store, ({ book }) => book);
}

export function useRows(): readonly BoardRow[] {
  return useStorePart(useTeach().board, (rows) => rows);
}

export function useChosenSeats(): readonly number[] {
  return useStorePart(useTeach().selection, ({ seats }) => seats);
}

/** Whom it is said to: the chosen seats, or all where none is chosen. */
export function useTargets(): readonly ClassTo[] {
  const seats = useChosenSeats();
  return useMemo(() => targetsOf(seats), [seats]);
}

export function targetsOf(seats: readonly number[]): readonly ClassTo[] {
  return seats.length === 0 ? ['all'] : seats.map((seat) => ({ seat }));
}
