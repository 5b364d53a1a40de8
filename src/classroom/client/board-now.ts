import type { BoardSeat, PollCounts } from '../protocol/index.ts';

export interface BoardNow {
  /** By seat; what has not changed is not told again. */
  readonly board: ReadonlyMap<number, BoardSeat>;
  /** Of the poll that is open or was last. */
  readonly counts: PollCounts | null;
}

export const BOARD_AT_FIRST: BoardNow = { board: new Map(), counts: null };

export function withSeats(
  board: ReadonlyMap<number, BoardSeat>,
  seats: readonly BoardSeat[],
): ReadonlyMap<number, BoardSeat> {
  return new Map([...board, ...seats.map((one) => [one.seat, one] as const)]);
}
