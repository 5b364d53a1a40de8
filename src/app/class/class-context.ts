import { createContext, useContext } from 'react';
import type { SeatClient, SeatNow } from '../../classroom/client/index.ts';
import { type Store, useStorePart } from '../session/store.ts';
import type { Shelf } from '../work/shelf.ts';
import type { SeatBook } from './seat-book.ts';
import type { SeatPlace } from './seat-place.ts';

/** A learner's seat in a class, with all that its page needs. */
export interface ClassSeat {
  readonly client: SeatClient;
  readonly place: SeatPlace;
  /** Of this seat alone. */
  readonly shelf: Shelf;
  /** Kept on that shelf with each change. */
  readonly book: Store<SeatBook>;
}

const SeatContext = createContext<ClassSeat | null>(null);
export const SeatProvider = SeatContext.Provider;

export function useClass(): ClassSeat {
  const seat = useContext(SeatContext);
  if (seat === null) throw new Error('no class around this part of the page');
  return seat;
}

/** Renders only when the picked part changes. */
export function useClassPart<P>(pick: (now: SeatNow) => P): P {
  return useStorePart(useClass().client.store, pick);
}

export function useBookPart<P>(pick: (book: SeatBook) => P): P {
  return useStorePart(useClass().book, pick);
}
