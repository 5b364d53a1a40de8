import type { KeptSeat } from '../store/types.ts';
import type { Live } from './live.ts';
import { type LiveClass, type LiveSeat, putSeat } from './live-class.ts';
import { sendAway } from './send-away.ts';

/** A page that comes back within this time was never away, ms. */
const GRACE_MS = 3000;

/** The newest connection of a seat is the seat; an older one is sent away. */
export function seatSitsDown(
  live: Live,
  one: LiveClass,
  kept: KeptSeat,
  socketId: string,
): LiveSeat {
  const seat = putSeat(one, kept);
  const before = seat.socketId;
  seat.socketId = socketId;
  seat.elsewhere = null;
  seat.own = true;
  if (!seat.here) {
    seat.here = true;
    one.changed.add(kept.seat);
  }
  sendAway(live, before, 'seat taken elsewhere');
  live.bus.tell({ type: 'seated', class: one.kept.id, seat: kept.seat });
  return seat;
}

export function seatLeaves(live: Live, one: LiveClass, seat: LiveSeat, socketId: string): void {
  // Another connection has taken its place.
  if (seat.socketId !== socketId) return;
  seat.socketId = null;
  live.works.leave(one.kept.id, seat.kept.seat);
  setTimeout(() => {
    if (seat.socketId === null && seat.elsewhere === null) noteAway(one, seat);
  }, GRACE_MS).unref();
}

/** Its page is at another process now. */
export function seatMoves(live: Live, one: LiveClass, seat: LiveSeat, to: string): void {
  const before = seat.socketId;
  seat.socketId = null;
  seat.elsewhere = to;
  seat.own = false;
  if (!seat.here) {
    seat.here = true;
    one.changed.add(seat.kept.seat);
  }
  if (before === null) return;
  sendAway(live, before, 'seat taken elsewhere');
  live.works.leave(one.kept.id, seat.kept.seat);
}

export function noteAway(one: LiveClass, seat: LiveSeat): void {
  if (!seat.here) return;
  seat.here = false;
  one.changed.add(seat.kept.seat);
}
