/** The board as it changes: what the server tells of seats, with what the board itself works out. */
import type { ClassEntry, ClassState } from '../../../machines/class/index.ts';
import type { BoardSeat, RosterSeat } from '../../classroom/index.ts';
import { type BoardRow, boardRows } from './board-rows.ts';
import { type SinceReading, sinceReading } from './stuck.ts';

/** What an instructor and a projector are told alike. */
export interface BoardTold {
  readonly book: ClassState;
  readonly entries: readonly ClassEntry[];
  readonly board: ReadonlyMap<number, BoardSeat>;
  readonly roster?: readonly RosterSeat[];
  readonly offsetMs: number;
}

export interface BoardSource {
  read(): BoardTold;
  subscribe(listener: () => void): () => void;
}

export interface BoardWatch {
  read(): readonly BoardRow[];
  subscribe(listener: () => void): () => void;
}

const NONE: readonly RosterSeat[] = [];

/** @param nowMs the clock of this device */
export function watchBoard(source: BoardSource, nowMs: () => number): BoardWatch {
  const since = new Map<number, SinceReading>();
  const seen = new Map<number, BoardSeat>();
  let last: BoardTold | null = null;
  let rows: readonly BoardRow[] = [];

  function isSame(told: BoardTold): boolean {
    return (
      last !== null &&
      last.board === told.board &&
      last.book === told.book &&
      last.roster === told.roster
    );
  }

  function renew(): void {
    const told = source.read();
    if (isSame(told)) return;
    last = told;
    const { book, entries, board, roster = NONE, offsetMs } = told;
    for (const [seat, now] of board) {
      if (seen.get(seat) === now) continue;
      seen.set(seat, now);
      if (now.state !== null) since.set(seat, sinceReading(since.get(seat) ?? null, now.state));
    }
    const begunMs = entries.find(({ type }) => type === 'begin')?.atMs ?? book.openedMs;
    rows = boardRows({
      book,
      board: [...board.values()],
      roster,
      since,
      begunMs,
      nowMs: nowMs() + offsetMs,
    });
  }

  /** However many listen, the source is listened to once: each hears of every change. */
  const listeners = new Set<() => void>();
  let stop: (() => void) | null = null;

  function hear(): void {
    const before = rows;
    renew();
    if (rows !== before) for (const listener of [...listeners]) listener();
  }

  return {
    read() {
      renew();
      return rows;
    },
    subscribe(listener) {
      listeners.add(listener);
      stop ??= source.subscribe(hear);
      return () => {
        listeners.delete(listener);
        if (listeners.size > 0) return;
        stop?.();
        stop = null;
      };
    },
  };
}
