import { useEffect, useState } from 'react';
import { connectSeat } from '../../classroom/client/index.ts';
import { createStore } from '../session/store.ts';
import { deviceShelf } from '../work/shelf.ts';
import type { ClassSeat } from './class-context.ts';
import { shelfOfSeat } from './class-shelf.ts';
import { keepBook, keepKnown, readBook, readKnown } from './seat-book.ts';
import type { SeatPlace } from './seat-place.ts';
import { wakeOfPage } from './wake-of-page.ts';

/** Connected for as long as the page stands; another token is another connection. */
export function useConnectedSeat(place: SeatPlace | null): ClassSeat | null {
  const [seat, setSeat] = useState<ClassSeat | null>(null);
  const token = place?.token ?? null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the rest of a place changes nothing
  useEffect(() => {
    if (place === null) return;
    const connected = connect(place);
    setSeat(connected);
    return () => {
      connected.client.close();
      setSeat(null);
    };
  }, [token]);
  return seat;
}

function connect(place: SeatPlace): ClassSeat {
  const shelf = shelfOfSeat(deviceShelf, place);
  const book = createStore(readBook(shelf));
  book.subscribe(() => keepBook(shelf, book.read()));
  const { class: id, seat, token } = place;
  let known = readKnown(shelf);
  const client = connectSeat({ class: id, seat, token, known }, { wake: wakeOfPage });
  client.store.subscribe(() => {
    const { entries } = client.store.read();
    if (entries === known) return;
    known = entries;
    keepKnown(shelf, entries);
  });
  return { client, place, shelf, book };
}
