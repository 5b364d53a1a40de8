/** How large tiles are, and which of many rows are worth drawing. Pure. */

export interface TileLayout {
  readonly columns: number;
  readonly rows: number;
  /** Of the seat's number; the rest of a tile is set by it. */
  readonly fontPx: number;
}

/** Room that a tile takes, in its own type size: the seat, two short lines and the bar. */
const TILE_WIDE_EM = 7.4;
const TILE_HIGH_EM = 4.1;
/** Larger would only shout. */
const MOST_PX = 96;

/**
 * So many tiles on an area, as large as they can be read.
 *
 * @param count at least 1
 */
export function layoutTiles(count: number, widthPx: number, heightPx: number): TileLayout {
  let best: TileLayout = { columns: 1, rows: count, fontPx: 0 };
  for (let columns = 1; columns <= count; columns += 1) {
    const rows = Math.ceil(count / columns);
    const fontPx = Math.min(
      widthPx / columns / TILE_WIDE_EM,
      heightPx / rows / TILE_HIGH_EM,
      MOST_PX,
    );
    // Of equally large ones the fewest columns: lines have more room.
    if (fontPx > best.fontPx + 1e-9) best = { columns, rows, fontPx };
  }
  return best;
}

/** Below this a tile cannot be read from the back of a room; the steps are counted instead. */
export const LEAST_READABLE_PX = 30;

export interface Window {
  /** The first row drawn, and the one after the last. */
  readonly from: number;
  readonly to: number;
}

/** Rows in sight, and a few above and below so that a wheel does not outrun them. */
export function windowOf(
  rows: number,
  rowPx: number,
  scrolledPx: number,
  heightPx: number,
  spare = 4,
): Window {
  const from = Math.floor(scrolledPx / rowPx) - spare;
  const to = Math.ceil((scrolledPx + heightPx) / rowPx) + spare;
  return { from: clamp(from, 0, rows), to: clamp(to, 0, rows) };
}

function clamp(value: number, low: number, high: number): number {
  return Math.max(low, Math.min(high, value));
}
