const MARKS = 10;

export interface ProgressMark {
  readonly place: number;
  readonly filled: boolean;
  /** The last filled one: where the seat is now. */
  readonly last: boolean;
}

/** A share as marks in a row; the first is filled as soon as anything is done. */
export function progressMarks(share: number): readonly ProgressMark[] {
  const filled = share <= 0 ? 0 : Math.max(1, Math.floor(share * MARKS + 1e-9));
  return Array.from({ length: MARKS }, (_, place) => ({
    place,
    filled: place < filled,
    last: place === filled - 1,
  }));
}
