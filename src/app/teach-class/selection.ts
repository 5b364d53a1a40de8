/** Which seats are chosen on the board. Pure. */

export interface Selection {
  readonly seats: readonly number[];
  /** From where a range is taken; null before anything was chosen. */
  readonly anchor: number | null;
}

export const NOBODY: Selection = { seats: [], anchor: null };

export type Pick = 'toggle' | 'range';

/**
 * @param shown seats in the order in which they stand on the board
 */
export function pickSeat(
  before: Selection,
  seat: number,
  how: Pick,
  shown: readonly number[],
): Selection {
  const from = before.anchor === null ? -1 : shown.indexOf(before.anchor);
  const to = shown.indexOf(seat);
  if (how === 'range' && from >= 0 && to >= 0) {
    const range = shown.slice(Math.min(from, to), Math.max(from, to) + 1);
    return { seats: union(before.seats, range), anchor: before.anchor };
  }
  const seats = before.seats.includes(seat)
    ? before.seats.filter((one) => one !== seat)
    : [...before.seats, seat].sort((a, b) => a - b);
  return { seats, anchor: seat };
}

export function pickAll(shown: readonly number[]): Selection {
  return { seats: union([], shown), anchor: shown[0] ?? null };
}

function union(a: readonly number[], b: readonly number[]): number[] {
  return [...new Set([...a, ...b])].sort((x, y) => x - y);
}
