import { addLabel, type LayoutContext } from './layout-parts.ts';
import { type Point, type Rect, rectAround } from './layout-types.ts';

export interface VesselLayout {
  readonly shell: Rect;
  readonly gauge: Rect | null;
  readonly steamEnd: Point;
  readonly stackTop: Point;
}

/** What the furnace, the stack and what stands to the left leave for a vessel. */
export interface VesselRoom {
  readonly furnace: Rect;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Height of the outlet pipe, and of the words beside it. */
  readonly outletY: number;
  readonly stackTop: Point;
}

export const FLUE_PX = 32;
export const OUTLET_PIPE_PX = 12;
export const GAUGE_PX = 14;
const OUTLET_REACH_PX = 64;
const OUTLET_LABEL_PX = 22;
const SHORTEST_OUTLET_PX = 26;
/** Share of the furnace's height at which the flue leaves it. */
const FLUE_HEIGHT_SHARE = 0.58;

/** From the furnace's right-hand end to the stack. */
export function layFlueFromFurnace(room: VesselRoom, context: LayoutContext): void {
  const { furnace } = room;
  const from = {
    x: furnace.x + furnace.width,
    y: furnace.y + furnace.height * FLUE_HEIGHT_SHARE,
  };
  layFlue(from, room, context);
}

/** From where it leaves the boiler, up the stack; the stack's label stands right of the furnace. */
export function layFlue(from: Point, room: VesselRoom, context: LayoutContext): void {
  const { a } = context.m;
  const { stackTop, furnace } = room;
  context.parts.pipes.push({
    id: 'flue',
    medium: 'flue',
    widthPx: FLUE_PX * a,
    flow: 'air.flow',
    points: [from, { x: stackTop.x, y: from.y }, stackTop],
  });
  addLabel(context, 'stack', 'left', () => ({
    x: furnace.x + furnace.width + 10 * a,
    y: Math.max(from.y + (FLUE_PX / 2) * a + 8 * a, furnace.y),
  }));
  context.parts.symbols.push({
    id: 'stack',
    kind: 'stack',
    x: stackTop.x,
    y: (stackTop.y + from.y) / 2,
    upright: true,
    box: rectAround(
      stackTop.x,
      (stackTop.y + from.y) / 2,
      FLUE_PX * a,
      Math.abs(from.y - stackTop.y),
    ),
  });
}

/** How far right the outlet may rise and leave room for its words. */
export function outletPlace(wantedX: number, context: LayoutContext): number {
  const { a } = context.m;
  return Math.min(wantedX, furthestOutlet(context) - SHORTEST_OUTLET_PX * a);
}

/** Up from the vessel and to the right, with the vessel's name before it and its reading after it. */
export function layOutlet(
  medium: 'steam' | 'water',
  flow: string,
  from: Point,
  outletY: number,
  context: LayoutContext,
): Point {
  const { a, lineHeightPx: line } = context.m;
  const end = { x: Math.min(from.x + OUTLET_REACH_PX * a, furthestOutlet(context)), y: outletY };
  context.parts.pipes.push({
    id: 'outlet',
    medium,
    widthPx: OUTLET_PIPE_PX * a,
    arrow: true,
    flow,
    points: [from, { x: from.x, y: outletY }, end],
  });
  addLabel(context, 'vessel', 'right', (label) => ({
    x: from.x - 14 * a - label.width,
    y: outletY - line / 2,
  }));
  addLabel(context, 'steam', 'left', (label) => ({
    x: end.x + OUTLET_LABEL_PX * a,
    y: outletY - label.height / 2,
  }));
  return end;
}

function furthestOutlet(context: LayoutContext): number {
  const { a, marginPx, size } = context.m;
  return size.width - marginPx - context.sizeOf('steam').width - OUTLET_LABEL_PX * a;
}

export function addGauge(
  id: 'level-gauge' | 'thermometer',
  gauge: Rect,
  context: LayoutContext,
): void {
  context.parts.symbols.push({
    id,
    kind: id,
    x: gauge.x + gauge.width / 2,
    y: gauge.y + gauge.height / 2,
    upright: true,
    box: gauge,
  });
}
