import type { ClassSeat } from '../../../src/app/class/class-context.ts';
import { shelfOfSeat } from '../../../src/app/class/class-shelf.ts';
import { readBook } from '../../../src/app/class/seat-book.ts';
import type { SeatPlace } from '../../../src/app/class/seat-place.ts';
import { createStore } from '../../../src/app/session/store.ts';
import { connectSeat } from '../../../src/classroom/client/index.ts';
import { createFakeServer, type FakeServer } from '../../classroom/client/fake-server.ts';
import { createToyShelf, type ToyShelf } from '../work/toy-shelf.ts';

export const PLACE: SeatPlace = {
  class: 'class-of-eight',
  code: 'ACDEFH',
  seat: 3,
  token: 'a token of this very seat',
  pin: '4711',
  nickname: 'Kim',
  joinedISO: '2026-11-29T09:00:00.000Z',
  pinRead: false,
};

export interface ToySeat extends ClassSeat {
  readonly server: FakeServer;
  readonly device: ToyShelf;
}

/** A seat of a class whose server is in this process. */
export function createToySeat(server = createFakeServer(), device = createToyShelf()): ToySeat {
  const shelf = shelfOfSeat(device, PLACE);
  const { class: id, seat, token } = PLACE;
  const ways = { openWire: server.openWire, random: () => 0.5, now: Date.now };
  const client = connectSeat({ class: id, seat, token }, ways);
  return { client, place: PLACE, shelf, book: createStore(readBook(shelf)), server, device };
}
