import type {
  LadderLayout,
  LadderRow,
  PlacedElement,
  Point,
  Rail,
  WireFlag,
  WireName,
  WirePiece,
} from './layout-types.ts';

export interface LadderSizes {
  readonly widthPx: number;
  readonly fontPx: number;
  /** How far an element's drawing reaches from its middle to where the wire begins. */
  readonly reachOf: (element: string) => number;
  readonly linesOf: (element: string, roomPx: number) => readonly string[];
  readonly widthOf: (text: string) => number;
}

/** Terminals stand so far from an element's middle, whatever its drawing. */
export const TERMINAL_PX = 22;
export const LINE_EM = 1.2;
const COLUMN_PX = 152;
const FEWEST_COLUMNS = 2;
const EDGE_PX = 26;
const ABOVE_SYMBOL_PX = 20;
const BELOW_SYMBOL_PX = 34;
const NAME_MARGIN_PX = 12;

/** What the ladder is put down with, row by row from the top. */
export interface Pen {
  readonly columns: number;
  readonly columnPx: number;
  readonly left: number;
  readonly right: number;
  y: number;
  readonly rails: Rail[];
  readonly rows: LadderRow[];
  readonly pieces: WirePiece[];
  readonly names: WireName[];
  readonly flags: WireFlag[];
  readonly dots: (Point & { readonly wire: string })[];
  readonly elements: PlacedElement[];
  finish(): LadderLayout;
}

export function createPen(sizes: LadderSizes): Pen {
  const left = EDGE_PX;
  const right = Math.max(sizes.widthPx, FEWEST_COLUMNS * COLUMN_PX + 2 * EDGE_PX) - EDGE_PX;
  const columns = Math.max(FEWEST_COLUMNS, Math.floor((right - left) / COLUMN_PX));
  const pen: Pen = {
    columns,
    columnPx: (right - left) / columns,
    left,
    right,
    y: 8,
    rails: [],
    rows: [],
    pieces: [],
    names: [],
    flags: [],
    dots: [],
    elements: [],
    finish: () => ({ ...pen, width: right + EDGE_PX, height: pen.y + 8 }),
  };
  return pen;
}

/** Begins the row of some elements of a rung; the lines of their names decide how high it is. */
export function openRow(
  rung: number,
  names: readonly string[],
  pen: Pen,
  sizes: LadderSizes,
): { readonly y: number; readonly putElement: (place: number, x: number) => void } {
  const lines = names.map((name) => sizes.linesOf(name, pen.columnPx - NAME_MARGIN_PX));
  const lineHeight = sizes.fontPx * LINE_EM;
  const most = Math.max(1, ...lines.map((each) => each.length));
  const top = pen.y;
  const y = top + most * lineHeight + ABOVE_SYMBOL_PX;
  const height = y + BELOW_SYMBOL_PX - top;
  pen.y += height;
  pen.rows.push({ rung, y, top, height });
  return {
    y,
    putElement(place, x) {
      pen.elements.push({
        name: names[place] ?? '',
        x,
        y,
        lines: lines[place] ?? [],
        linesTopY:
          y - ABOVE_SYMBOL_PX - (lines[place]?.length ?? 0) * lineHeight + lineHeight * 0.8,
        terminals: [
          { x: x - TERMINAL_PX, y },
          { x: x + TERMINAL_PX, y },
        ],
      });
    },
  };
}
