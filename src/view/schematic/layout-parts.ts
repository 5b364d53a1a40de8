import {
  type Align,
  type Leader,
  type PipeRun,
  type PlacedLabel,
  type PlacedSymbol,
  type Rect,
  rectAround,
  type Size,
} from './layout-types.ts';
import type { Measures } from './measures.ts';
import type { TrainEdge } from './plant.ts';

export type LabelSize = (labelId: string) => Size;

/** What the parts of the layout put their pieces into. */
export interface Parts {
  readonly symbols: PlacedSymbol[];
  readonly pipes: PipeRun[];
  readonly labels: PlacedLabel[];
  readonly leaders: Leader[];
}

export interface LayoutContext {
  readonly m: Measures;
  readonly sizeOf: LabelSize;
  readonly parts: Parts;
}

/** Heights and places the rest of the drawing hangs on. */
export interface TrainFrame {
  readonly pipeY: number;
  /** Top of the row of pressure readings above the main line. */
  readonly readingTopY: number;
  readonly ventY: number;
  readonly ventTipY: number;
  readonly pilotY: number;
  readonly controlY: number;
  /** Where the main line turns up to the burner. */
  readonly riserX: number;
  /** What the control valve and its label leave free above themselves. */
  readonly riserTopY: number;
}

/** Half a valve's length along its pipe, and its height from the pipe's middle to the actuator's top. */
export const VALVE_HALF_PX = 15;
export const ACTUATOR_TOP_PX = 38;
const BELOW_PIPE_PX = 12;
/** The pilot's reading stands this far under its line, clear of the fittings on it. */
export const PILOT_READING_PX = 14;
/** An upright valve reaches this far to its actuator's side, a motor's hand included. */
const UPRIGHT_REACH_PX = 44;

export function testPointId(node: string): string {
  return `test-point:${node}`;
}

export function emptyParts(): Parts {
  return { symbols: [], pipes: [], labels: [], leaders: [] };
}

export function addLabel(
  context: LayoutContext,
  id: string,
  align: Align,
  place: (size: Size) => { readonly x: number; readonly y: number },
): void {
  const size = context.sizeOf(id);
  if (size.width === 0) return;
  context.parts.labels.push({ id, align, box: { ...place(size), ...size } });
}

export function addTestPoint(context: LayoutContext, id: string, x: number, y: number): void {
  const side = 12 * context.m.a;
  context.parts.symbols.push({
    id,
    kind: 'test-point',
    x,
    y,
    upright: false,
    box: rectAround(x, y, side, side),
  });
}

/** A valve or fitting on a level pipe, its actuator above. */
export function addFitting(context: LayoutContext, edge: TrainEdge, x: number, y: number): void {
  context.parts.symbols.push({
    id: edge.id,
    kind: edge.kind,
    x,
    y,
    upright: false,
    ...(edge.normallyOpen === true && { normallyOpen: true as const }),
    box: levelBox(edge, x, y, context.m.a),
  });
}

/** A valve on an upright pipe, its actuator to the left. */
export function addUprightValve(
  context: LayoutContext,
  edge: TrainEdge,
  x: number,
  y: number,
  linked = false,
): void {
  const { a } = context.m;
  context.parts.symbols.push({
    id: edge.id,
    kind: edge.kind,
    x,
    y,
    upright: true,
    actuator: 'left',
    ...(edge.normallyOpen === true && { normallyOpen: true as const }),
    ...(linked && { linked: true as const }),
    box: {
      x: x - UPRIGHT_REACH_PX * a,
      y: y - VALVE_HALF_PX * a,
      width: (UPRIGHT_REACH_PX + BELOW_PIPE_PX) * a,
      height: 2 * VALVE_HALF_PX * a,
    },
  });
}

function levelBox(edge: TrainEdge, x: number, y: number, a: number): Rect {
  const above = heightAbove(edge) * a;
  return {
    x: x - VALVE_HALF_PX * a,
    y: y - above,
    width: 2 * VALVE_HALF_PX * a,
    height: above + BELOW_PIPE_PX * a,
  };
}

function heightAbove(edge: TrainEdge): number {
  if (edge.kind === 'shutoff' || edge.kind === 'control') return ACTUATOR_TOP_PX;
  if (edge.kind === 'regulator') return 30;
  return edge.kind === 'cock' ? 22 : 14;
}
