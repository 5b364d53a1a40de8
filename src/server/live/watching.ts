import type { Socket } from 'socket.io';
import type { Watched, WorkDelta } from '../../classroom/index.ts';
import { WANTED_FOR_MS } from './bus.ts';
import type { Live } from './live.ts';
import type { LiveClass } from './live-class.ts';
import { watchersOf } from './rooms.ts';

const MARK = 'watching';

/** Tells a seat's work as it stands, and from now on what is added to it. @throws StoreFailure */
export async function watch(
  live: Live,
  socket: Socket,
  one: LiveClass,
  seat: number | null,
): Promise<Watched> {
  const { id } = one.kept;
  const before: unknown = socket.data[MARK];
  if (typeof before === 'number') await socket.leave(watchersOf(id, before));
  socket.data[MARK] = seat;
  if (seat === null) return { ok: true, work: null };
  if (!one.seats.has(seat)) {
    socket.data[MARK] = null;
    return { ok: false, error: 'no such seat' };
  }
  live.bus.tell({ type: 'watching', class: id, seats: [seat] });
  const work = await live.works.current(id, seat);
  // Asked again meanwhile: the later wish holds.
  if (socket.data[MARK] === seat) await socket.join(watchersOf(id, seat));
  return { ok: true, work };
}

/** To whoever watches that seat, here or at another process. */
export function tellWorked(live: Live, one: LiveClass, seat: number, delta: WorkDelta): void {
  const { id } = one.kept;
  live.io.local.to(watchersOf(id, seat)).emit('worked', { seat, delta });
  if ((one.watchedElsewhereMs.get(seat) ?? 0) > live.nowMs()) {
    live.bus.tell({ type: 'worked', class: id, seat, delta });
  }
}

export function noteWatchedElsewhere(live: Live, one: LiveClass, seats: readonly number[]): void {
  for (const seat of seats) one.watchedElsewhereMs.set(seat, live.nowMs() + WANTED_FOR_MS);
}

/** Seats that are watched through this process. */
export function watchedHere(live: Live, one: LiveClass): number[] {
  const { rooms } = live.io.of('/').adapter;
  return [...one.seats.keys()].filter((seat) => rooms.has(watchersOf(one.kept.id, seat)));
}
