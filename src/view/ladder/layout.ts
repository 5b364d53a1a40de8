import { layParallel } from './layout-parallel.ts';
import {
  createPen,
  type LadderSizes,
  LINE_EM,
  openRow,
  type Pen,
  TERMINAL_PX,
} from './layout-pen.ts';
import type { LadderLayout, Rail, WireFlag } from './layout-types.ts';
import { type LadderSection, type RungNode, sectionsOf } from './rung-tree.ts';
import type { LadderWiring } from './types.ts';

const SECTION_GAP_PX = 26;
const FLAG_PAD_PX = 7;
const FLAG_FROM_RAIL_PX = 10;
const NAME_BELOW_PX = 18;
const RAIL_NAME_IN_PX = 9;
/** A wider name would run into the terminal of the first element. */
const WIDEST_RAIL_NAME_PX = 35;
/** Rails are named again in every so many rows, for when their heads are scrolled away. */
const ROWS_BETWEEN_RAIL_NAMES = 3;

/**
 * A ladder for a width: as many columns as fit; a longer rung goes on in the next row. A branch
 * hangs under the wire it leaves, those furthest right first, so that no wire crosses another.
 */
export function ladderLayout(wiring: LadderWiring, sizes: LadderSizes): LadderLayout {
  const pen = createPen(sizes);
  for (const section of sectionsOf(wiring)) laySection(section, pen, sizes);
  return pen.finish();
}

function laySection(section: LadderSection, pen: Pen, sizes: LadderSizes): void {
  const top = pen.y;
  pen.y += sizes.fontPx * LINE_EM + 10;
  const railTop = pen.y;
  const firstRow = pen.rows.length;
  for (const root of section.roots) layRung(root, 0, section, pen, sizes);
  const rail = (wire: string, x: number, side: Rail['side']): void => {
    if (wire === '') return;
    pen.rails.push({ wire, x, top: railTop, bottom: pen.y - 6, side });
    pen.names.push({
      wire,
      x,
      y: top + sizes.fontPx,
      anchor: side === 'left' ? 'start' : 'end',
    });
  };
  const rows = pen.rows.slice(firstRow);
  rows.forEach(({ y }, i) => {
    if (i % ROWS_BETWEEN_RAIL_NAMES !== ROWS_BETWEEN_RAIL_NAMES - 1) return;
    const nameY = y + NAME_BELOW_PX;
    const again = [
      { wire: section.left, x: pen.left + RAIL_NAME_IN_PX, y: nameY, anchor: 'start' },
      { wire: section.right, x: pen.right - RAIL_NAME_IN_PX, y: nameY, anchor: 'end' },
    ] as const;
    pen.names.push(...again.filter(({ wire }) => sizes.widthOf(wire) <= WIDEST_RAIL_NAME_PX));
  });
  rail(section.left, pen.left, 'left');
  rail(section.right, pen.right, 'right');
  pen.y += SECTION_GAP_PX;
}

/** @param column where its first wire stands; 0 at the left rail */
function layRung(
  node: RungNode,
  column: number,
  section: LadderSection,
  pen: Pen,
  sizes: LadderSizes,
): void {
  const count = node.elements.length;
  let from = 0;
  let start = column;
  do {
    const room = pen.columns - start;
    const rest = count - from;
    const part = Math.min(rest, room);
    layRow(node, from, from + part, start, section, pen, sizes);
    const last = from + part;
    const { y } = pen.rows[pen.rows.length - 1];
    for (const parallel of node.parallels) {
      if (parallel.from < from || parallel.from >= last) continue;
      if (parallel.to < last) {
        const column = (wire: number): number => pen.left + (start + wire - from) * pen.columnPx;
        const isAtRail = start + parallel.from === from && parallel.rung.wires[0] === section.left;
        const ends = { fromX: column(parallel.from), toX: column(parallel.to), parentY: y };
        layParallel(parallel.rung, ends, isAtRail, pen, sizes);
      } else layRung(parallel.rung, 0, section, pen, sizes);
    }
    layBranches(node, from, last, start, y, section, pen, sizes);
    from = last;
    start = 0;
  } while (from < count);
}

/** Elements `from` to `to` of a rung, in one row. */
function layRow(
  node: RungNode,
  from: number,
  to: number,
  start: number,
  section: LadderSection,
  pen: Pen,
  sizes: LadderSizes,
): void {
  const { columnPx } = pen;
  const names = node.elements.slice(from, to);
  const { y, putElement } = openRow(node.rung, names, pen, sizes);

  const isWhole = to === node.elements.length;
  const endWire = node.wires[to] ?? '';
  const endsAtRail = isWhole && endWire === section.right;
  const at = (column: number): number => pen.left + column * columnPx;
  const hangsAtEnd = node.branches.some(
    ({ wire, node: child }) =>
      wire === to && start + names.length + child.elements.length <= pen.columns,
  );
  const middles = names.map((_name, i) => {
    const isLast = i === names.length - 1;
    const place = isLast && endsAtRail ? pen.columns - 1 : start + i;
    return at(place) + columnPx / 2;
  });
  middles.forEach((x, i) => {
    putElement(i, x);
  });
  for (let i = 0; i <= names.length; i += 1) {
    const wire = node.wires[from + i] ?? '';
    const before = names[i - 1];
    const after = names[i];
    let x0 = before === undefined ? at(start) : middles[i - 1] + sizes.reachOf(before);
    let x1 = after === undefined ? pen.right : middles[i] - sizes.reachOf(after);
    if (before === undefined && !leavesRail(node, from, start, section)) {
      if (from > 0 || start === 0)
        x0 = layFlag(wire, at(0) + FLAG_FROM_RAIL_PX, y, 'from', pen, sizes);
    }
    if (after === undefined && !endsAtRail && hangsAtEnd) {
      x1 = at(start + names.length);
    } else if (after === undefined && !endsAtRail) {
      const flagX = middles[i - 1] + TERMINAL_PX + 26;
      x1 = layFlag(wire, flagX, y, 'to', pen, sizes);
    }
    pen.pieces.push({
      wire,
      points: [
        { x: x0, y },
        { x: x1, y },
      ],
    });
    const isNamed = after !== undefined || (hangsAtEnd && !endsAtRail);
    if (before !== undefined && isNamed) {
      const tapped =
        node.branches.some((branch) => branch.wire === from + i) ||
        node.parallels.some((beside) => beside.from === from + i || beside.to === from + i);
      const x = at(start + i);
      pen.names.push({
        wire,
        x: tapped ? x + 7 : x,
        y: y + NAME_BELOW_PX,
        anchor: tapped ? 'start' : 'middle',
      });
    }
  }
}

/** A row that begins at its section's rail, or hangs under the wire it branches from. */
function leavesRail(node: RungNode, from: number, start: number, section: LadderSection): boolean {
  if (from > 0) return false;
  return start > 0 || node.wires[0] === section.left;
}

/** @returns where the wire meets the flag */
function layFlag(
  wire: string,
  x: number,
  y: number,
  side: WireFlag['side'],
  pen: Pen,
  sizes: LadderSizes,
): number {
  const widthPx = sizes.widthOf(wire) + 2 * FLAG_PAD_PX;
  pen.flags.push({ wire, x, y, side, widthPx });
  return side === 'from' ? x + widthPx : x;
}

/** Branches off the wires between elements `from` and `to`, the furthest right first. */
function layBranches(
  node: RungNode,
  from: number,
  to: number,
  start: number,
  parentY: number,
  section: LadderSection,
  pen: Pen,
  sizes: LadderSizes,
): void {
  const inRow = node.branches.filter(({ wire }) => wire > from && wire <= to);
  const columnOf = (wire: number): number => start + wire - from;
  const fits = ({ wire, node: child }: RungNode['branches'][number]): boolean =>
    columnOf(wire) + child.elements.length <= pen.columns;
  const hanging = inRow.filter(fits).sort((a, b) => b.wire - a.wire);
  for (const { wire, node: child } of hanging) {
    const x = pen.left + columnOf(wire) * pen.columnPx;
    const name = node.wires[wire] ?? '';
    layRung(child, columnOf(wire), section, pen, sizes);
    const y = pen.rows.find((row) => row.rung === child.rung)?.y ?? parentY;
    pen.pieces.push({
      wire: name,
      points: [
        { x, y: parentY },
        { x, y },
      ],
    });
    pen.dots.push({ x, y: parentY, wire: name });
  }
  for (const branch of inRow.filter((each) => !fits(each))) {
    layRung(branch.node, 0, section, pen, sizes);
  }
}
