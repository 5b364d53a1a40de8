/** What the board shows of each seat, put in order. Pure. */
import { type ClassState, paceOfSeat } from '../../../machines/class/index.ts';
import type { BoardSeat, RosterSeat, SeatState } from '../../classroom/index.ts';
import { type SinceReading, type StuckReason, stuckOf } from './stuck.ts';

export const STANDINGS = ['away', 'waiting', 'working', 'locked out', 'stuck', 'done'] as const;
export type Standing = (typeof STANDINGS)[number];

export interface BoardRow {
  readonly seat: number;
  /** Empty where names are not told. */
  readonly nickname: string;
  readonly here: boolean;
  readonly standing: Standing;
  readonly stuck: StuckReason | null;
  readonly handedIn: boolean;
  /** It has no run of its own: its device shows the one plant. */
  readonly follows: boolean;
  readonly state: SeatState | null;
}

export interface BoardGround {
  readonly book: ClassState;
  readonly board: readonly BoardSeat[];
  /** Empty where names are not told. */
  readonly roster: readonly RosterSeat[];
  readonly since: ReadonlyMap<number, SinceReading>;
  /** When the work began and what time it is, ms of the server's clock. */
  readonly begunMs: number;
  readonly nowMs: number;
}

/** In the order of seats. */
export function boardRows({ book, board, roster, since, begunMs, nowMs }: BoardGround): BoardRow[] {
  const people = new Map(roster.map((one) => [one.seat, one]));
  const rows = board.map(({ seat, here, state }): BoardRow => {
    const person = people.get(seat);
    const handedIn = (person?.handedInMs ?? null) !== null;
    const heldUp = book.way === 'together' || paceOfSeat(book, seat).frozen;
    const counts = since.get(seat);
    const stuck =
      state === null || counts === undefined || handedIn || !here
        ? null
        : stuckOf(state, { since: counts, heldUp, begunAgoS: (nowMs - begunMs) / 1000 });
    const standing = standingOf(here, handedIn, state, stuck);
    const nickname = person?.nickname ?? '';
    const follows = book.way === 'together';
    return { seat, nickname, here, standing, stuck, handedIn, follows, state };
  });
  return rows.sort((a, b) => a.seat - b.seat);
}

function standingOf(
  here: boolean,
  handedIn: boolean,
  state: SeatState | null,
  stuck: StuckReason | null,
): Standing {
  if (handedIn || state?.phase === 'done') return 'done';
  if (!here) return 'away';
  if (state === null || state.phase === 'waiting') return 'waiting';
  if (stuck !== null) return 'stuck';
  return state.lockout === null ? 'working' : 'locked out';
}

export const ORDERS = ['seat', 'name', 'stuck first', 'progress'] as const;
export type Order = (typeof ORDERS)[number];
export const FILTERS = ['everyone', 'stuck', 'locked out', 'done', 'away'] as const;
export type Filter = (typeof FILTERS)[number];

/** Those that the filter leaves, in order; what is equal stays in the order of seats. */
export function ordered(rows: readonly BoardRow[], order: Order, filter: Filter): BoardRow[] {
  return rows.filter((row) => isWanted(row, filter)).sort((a, b) => compare(a, b, order));
}

function isWanted({ standing, state }: BoardRow, filter: Filter): boolean {
  if (filter === 'everyone') return true;
  // Who is stuck may be locked out as well.
  if (filter === 'locked out') return standing !== 'done' && (state?.lockout ?? null) !== null;
  return standing === filter;
}

function compare(a: BoardRow, b: BoardRow, order: Order): number {
  switch (order) {
    case 'name':
      return a.nickname.localeCompare(b.nickname) || a.seat - b.seat;
    case 'stuck first':
      return urgency(a) - urgency(b) || a.seat - b.seat;
    case 'progress':
      return (b.state?.progress ?? 0) - (a.state?.progress ?? 0) || a.seat - b.seat;
    case 'seat':
      return a.seat - b.seat;
  }
}

const URGENCY: readonly Standing[] = ['stuck', 'locked out', 'working', 'waiting', 'away', 'done'];

function urgency({ standing, stuck }: BoardRow): number {
  // Who asks is waiting for an answer.
  return stuck === 'asks for help' ? -1 : URGENCY.indexOf(standing);
}

export interface BoardCounts {
  readonly in: number;
  readonly stuck: number;
  readonly done: number;
  readonly away: number;
}

export function countRows(rows: readonly BoardRow[]): BoardCounts {
  const of = (standing: Standing) => rows.filter((row) => row.standing === standing).length;
  return {
    in: rows.filter(({ here }) => here).length,
    stuck: of('stuck'),
    done: of('done'),
    away: of('away'),
  };
}
