import type { PipeRun, Point, Rect, Size } from './layout-types.ts';

/** A tag that wants a place: what it hangs at, and how wide its words are. */
export interface TagWish {
  readonly id: string;
  readonly at: Rect;
  readonly textPx: number;
}

export interface TagPlace {
  readonly box: Rect;
  /** Line from the item to the tag. */
  readonly from: Point;
  readonly to: Point;
}

/** What a tag keeps off: symbols and words at all costs, pipes where there is other room. */
export interface TagGround {
  readonly size: Size;
  readonly lineHeightPx: number;
  readonly solid: readonly Rect[];
  readonly soft: readonly Rect[];
}

const PADDING_PX = 8;
const GAP_PX = 4;
const EDGE_PX = 2;
/** Steps away from the item, in tag heights, and shifts along it, in tag widths. */
const STEPS = [0.5, 1, 1.5, 2, 2.75, 3.5, 4.5];
const SHIFTS = [0, -0.3, 0.3, -0.5, 0.5, -0.8, 0.8];
const SOLID_COST = 40;
const SOFT_COST = 4;

/** Each tag near its item where it covers least; earlier ones are not moved by later ones. */
export function placeTags(
  wishes: readonly TagWish[],
  ground: TagGround,
): ReadonlyMap<string, TagPlace> {
  const places = new Map<string, TagPlace>();
  const taken: Rect[] = [];
  const items = wishes.map(({ at }) => at);
  for (const wish of wishes) {
    let best: Rect | null = null;
    let bestCost = Number.POSITIVE_INFINITY;
    for (const box of candidates(wish, ground)) {
      const cost =
        SOLID_COST * covered(box, [...ground.solid, ...taken, ...items]) +
        SOFT_COST * covered(box, ground.soft) +
        away(box, wish.at);
      if (cost < bestCost) {
        bestCost = cost;
        best = box;
      }
    }
    if (best === null) continue;
    taken.push(best);
    places.set(wish.id, { box: best, ...lineTo(best, wish.at) });
  }
  return places;
}

/** Stretches of pipe as boxes. */
export function pipeRects(pipes: readonly PipeRun[]): Rect[] {
  return pipes.flatMap(({ points, widthPx }) =>
    points.slice(1).map((to, i) => {
      const from = points[i];
      return {
        x: Math.min(from.x, to.x) - widthPx / 2,
        y: Math.min(from.y, to.y) - widthPx / 2,
        width: Math.abs(to.x - from.x) + widthPx,
        height: Math.abs(to.y - from.y) + widthPx,
      };
    }),
  );
}

function* candidates({ at, textPx }: TagWish, { size, lineHeightPx }: TagGround): Generator<Rect> {
  const width = Math.ceil(textPx) + 2 * PADDING_PX;
  const height = lineHeightPx + 4;
  const middle = { x: at.x + at.width / 2, y: at.y + at.height / 2 };
  for (const step of STEPS) {
    const off = step * height;
    for (const shift of SHIFTS) {
      const x = middle.x - width / 2 + shift * width;
      yield inside({ x, y: at.y - off - height, width, height }, size);
      yield inside({ x, y: at.y + at.height + off, width, height }, size);
    }
    const y = middle.y - height / 2;
    yield inside({ x: at.x - off - width, y, width, height }, size);
    yield inside({ x: at.x + at.width + off, y, width, height }, size);
  }
}

function inside(box: Rect, size: Size): Rect {
  return {
    ...box,
    x: Math.max(EDGE_PX, Math.min(size.width - box.width - EDGE_PX, box.x)),
    y: Math.max(EDGE_PX, Math.min(size.height - box.height - EDGE_PX, box.y)),
  };
}

/** Lengths of what is covered, px: a corner is better than an edge. */
function covered(box: Rect, others: readonly Rect[]): number {
  let sum = 0;
  for (const other of others) {
    const across =
      Math.min(box.x + box.width, other.x + other.width) - Math.max(box.x, other.x) + GAP_PX;
    const down =
      Math.min(box.y + box.height, other.y + other.height) - Math.max(box.y, other.y) + GAP_PX;
    if (across > 0 && down > 0) sum += Math.sqrt(across * down);
  }
  return sum;
}

function away(box: Rect, at: Rect): number {
  const { from, to } = lineTo(box, at);
  return Math.abs(to.x - from.x) + Math.abs(to.y - from.y);
}

function lineTo(box: Rect, at: Rect): { readonly from: Point; readonly to: Point } {
  const from = { x: at.x + at.width / 2, y: at.y + at.height / 2 };
  const to = {
    x: Math.max(box.x + PADDING_PX, Math.min(box.x + box.width - PADDING_PX, from.x)),
    y: Math.max(box.y, Math.min(box.y + box.height, from.y)),
  };
  return { from, to };
}
