import { type LadderSizes, openRow, type Pen } from './layout-pen.ts';
import type { RungNode } from './rung-tree.ts';

const NAME_BELOW_PX = 18;

/** Where the wires stand between which a rung lies, and the height of the rung it lies beside. */
export interface ParallelEnds {
  readonly fromX: number;
  readonly toX: number;
  readonly parentY: number;
}

/** A rung that bridges part of the one above it, drawn under that part and joined to it. */
export function layParallel(
  node: RungNode,
  { fromX, toX, parentY }: ParallelEnds,
  isAtRail: boolean,
  pen: Pen,
  sizes: LadderSizes,
): void {
  const { y, putElement } = openRow(node.rung, node.elements, pen, sizes);
  const stepPx = (toX - fromX) / node.elements.length;
  let x0 = fromX;
  node.wires.forEach((wire, i) => {
    const element = node.elements[i];
    const middle = fromX + (i + 0.5) * stepPx;
    const x1 = element === undefined ? toX : middle - sizes.reachOf(element);
    pen.pieces.push({
      wire,
      points: [
        { x: x0, y },
        { x: x1, y },
      ],
    });
    if (element === undefined) return;
    putElement(i, middle);
    x0 = middle + sizes.reachOf(element);
    if (i > 0) {
      pen.names.push({ wire, x: fromX + i * stepPx, y: y + NAME_BELOW_PX, anchor: 'middle' });
    }
  });
  const join = (wire: string, x: number): void => {
    pen.pieces.push({
      wire,
      points: [
        { x, y: parentY },
        { x, y },
      ],
    });
    pen.dots.push({ x, y: parentY, wire });
  };
  if (!isAtRail) join(node.wires[0] ?? '', fromX);
  join(node.wires[node.wires.length - 1] ?? '', toX);
}
