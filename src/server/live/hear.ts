import { takeTiles, tellOtherProcesses } from './board.ts';
import { type BusMessage, WANTED_FOR_MS } from './bus.ts';
import { catchUp, giveOut, readSeat } from './class-registry.ts';
import { dismissClass } from './dismiss-class.ts';
import { tellHead } from './head.ts';
import type { Live } from './live.ts';
import { type LiveClass, noteAnswer } from './live-class.ts';
import { hearWork } from './plant-work.ts';
import { seatMoves } from './presence.ts';
import { noteFailure } from './serve-messages.ts';
import { noteWatchedElsewhere } from './watching.ts';

/** A process that says nothing for so long is gone, and with it the pages it had, ms. */
const SILENT_FOR_MS = 6000;

/** Takes what other processes tell. */
export function hearOthers(live: Live): { sweepSilent(): void } {
  const heardMs = new Map<string, number>();
  live.bus.listen((message, from) => {
    heardMs.set(from, live.nowMs());
    if (message.type === 'alive') return;
    if (message.type === 'stops') {
      heardMs.delete(from);
      return;
    }
    const one = live.classes.get(message.class);
    // Whoever comes later reads it from the store.
    if (one === undefined) return;
    take(live, one, message, from).catch((error: unknown) =>
      noteFailure(live, error, message.type),
    );
  });
  return {
    sweepSilent() {
      const now = live.nowMs();
      for (const [from, atMs] of heardMs) if (now - atMs > SILENT_FOR_MS) heardMs.delete(from);
      for (const one of live.classes.values()) {
        for (const seat of one.seats.values()) {
          if (seat.elsewhere === null || heardMs.has(seat.elsewhere)) continue;
          seat.elsewhere = null;
          seat.here = seat.socketId !== null;
          one.changed.add(seat.kept.seat);
        }
      }
    },
  };
}

async function take(
  live: Live,
  one: LiveClass,
  message: Exclude<BusMessage, { type: 'alive' | 'stops' }>,
  from: string,
): Promise<void> {
  switch (message.type) {
    case 'entries': {
      giveOut(live, one, message.entries);
      const last = message.entries.at(-1);
      if (last !== undefined && last.n > one.state.n) await catchUp(live, one);
      return;
    }
    case 'seat':
      await readSeat(live, one, message.seat);
      return;
    case 'seated': {
      const seat = one.seats.get(message.seat) ?? (await readSeat(live, one, message.seat));
      if (seat !== null) seatMoves(live, one, seat, from);
      return;
    }
    case 'deleted':
      dismissClass(live, message.class);
      return;
    case 'polled':
      noteAnswer(one, message);
      return;
    case 'head':
      tellHead(live, one, message.head);
      return;
    case 'worked':
      await hearWork(live, one, message.seat, message.delta);
      return;
    case 'watching':
      noteWatchedElsewhere(live, one, message.seats);
      return;
    case 'board wanted':
      one.boardWantedElsewhereMs = live.nowMs() + WANTED_FOR_MS;
      if (message.whole) tellOtherProcesses(live, one);
      return;
    case 'board':
      takeTiles(one, message.seats, from);
      return;
  }
}
