import { layPilot, layVent } from './layout-branches.ts';
import {
  ACTUATOR_TOP_PX,
  addFitting,
  addLabel,
  addTestPoint,
  addUprightValve,
  type LayoutContext,
  PILOT_READING_PX,
  type TrainFrame,
  testPointId,
} from './layout-parts.ts';
import type { PlacedLabel, Point } from './layout-types.ts';
import type { Measures } from './measures.ts';
import { FURNACE, type TrainEdge } from './plant.ts';
import type { TrainShape } from './train-graph.ts';

export const GAS_PIPE_PX = 14;
/** Share of the width at which the main line turns up. */
const RISER_SHARE = 0.46;
/** Room between the last valve's label and the riser, for the control valve's motor. */
const RISER_AFTER_LAST_PX = 52;
const TEST_POINT_AFTER_FITTING_PX = 19;
const TEE_BEFORE_VALVE_PX = 23;
const NARROWEST_SLOT_PX = 34;
/** The manifold's reading stands beside the foot of the riser, its top this many lines up. */
const RISER_READING_LINES = 1.2;

interface Slot {
  readonly edge: TrainEdge;
  readonly x: number;
  readonly width: number;
}

export function layTrain(
  shape: TrainShape,
  hasOneServo: boolean,
  context: LayoutContext,
): TrainFrame {
  const flat = shape.main.filter((edge) => edge.kind !== 'control' && edge.to !== FURNACE);
  const control = shape.main.find((edge) => edge.kind === 'control');
  const slots = placeSlots(flat, context);
  const controlHeight = control === undefined ? 0 : context.sizeOf(control.id).height;
  const frame = frameOf(slots, controlHeight, context.m);

  for (const { edge, x } of slots) {
    addFitting(context, edge, x, frame.pipeY);
    addLabel(context, edge.id, 'center', (size) => ({
      x: x - size.width / 2,
      y: frame.pipeY + 18 * context.m.a,
    }));
  }
  layMainPipe(shape, slots, control, frame, context);
  if (control !== undefined) {
    addUprightValve(context, control, frame.riserX, frame.controlY, hasOneServo);
    addLabel(context, control.id, 'left', (size) => ({
      x: frame.riserX + 16 * context.m.a,
      y: frame.controlY - size.height / 2,
    }));
  }
  spreadReadings(context.parts.labels, frame.readingTopY, context.m.marginPx);
  return frame;
}

function frameOf(slots: readonly Slot[], controlHeight: number, m: Measures): TrainFrame {
  const { a, lineHeightPx: line, marginPx: margin } = m;
  const last = slots[slots.length - 1];
  const end = last === undefined ? margin : last.x + last.width / 2;
  const pipeY = m.size.height - margin - 2 * line - 22 * a;
  const readingTopY = pipeY - ACTUATOR_TOP_PX * a - 6 - line;
  const ventY = readingTopY - 10 - line;
  const ventTipY = ventY - 36 * a;
  const controlHalf = Math.max(controlHeight / 2, 16 * a);
  const controlY = pipeY - RISER_READING_LINES * line - controlHalf - 2;
  return {
    pipeY,
    readingTopY,
    ventY,
    ventTipY,
    pilotY: Math.min(ventTipY - 20 * a, ventY - 2 * line - PILOT_READING_PX * a - 2),
    controlY,
    riserX: end + RISER_AFTER_LAST_PX * a,
    riserTopY: controlY - controlHalf - 6 * a,
  };
}

/** A slot is as wide as its label or symbol; the gaps take up what is left to the riser. */
function placeSlots(edges: readonly TrainEdge[], { m, sizeOf }: LayoutContext): Slot[] {
  const { a } = m;
  const startX = m.marginPx + 16 * a;
  const widths = edges.map((edge) => Math.max(sizeOf(edge.id).width, NARROWEST_SLOT_PX * a));
  const needed = widths.reduce((sum, width) => sum + width, 0);
  const room = m.size.width * RISER_SHARE - RISER_AFTER_LAST_PX * a - startX;
  const gap = Math.min(34 * a, Math.max(8, (room - needed) / Math.max(1, edges.length)));
  let x = startX;
  return edges.map((edge, i) => {
    const slot = { edge, x: x + widths[i] / 2, width: widths[i] };
    x += widths[i] + gap;
    return slot;
  });
}

function layMainPipe(
  shape: TrainShape,
  slots: readonly Slot[],
  control: TrainEdge | undefined,
  frame: TrainFrame,
  context: LayoutContext,
): void {
  const { a, marginPx } = context.m;
  const at = (x: number): Point => ({ x, y: frame.pipeY });
  for (let i = 0; i <= slots.length; i += 1) {
    const before = slots[i - 1];
    const after = slots[i];
    const node = before?.edge.to ?? 'supply';
    const fromX = before?.x ?? marginPx;
    const vents = shape.vents.filter((branch) => branch.node === node);
    const pilots = shape.pilots.filter((branch) => branch.node === node);
    const teeX = teePlace(fromX, after?.x ?? frame.riserX, pilots.length > 0, a);
    const pressure = `gas.${before === undefined ? (after?.edge.to ?? node) : node}.pressure`;
    const run = (part: string, points: readonly Point[], edge: TrainEdge | undefined): void => {
      context.parts.pipes.push({
        id: `${node}:${part}`,
        medium: 'gas',
        widthPx: GAS_PIPE_PX * a,
        pressure,
        points,
        ...(edge && { flow: `gas.${edge.id}.flow` }),
      });
    };
    if (after === undefined) {
      const up = { x: frame.riserX, y: frame.controlY };
      run('in', [at(fromX), at(frame.riserX), up], control ?? before?.edge);
      addRiserReading(node, frame, context);
      continue;
    }
    if (vents.length + pilots.length === 0) {
      run('in', [at(fromX), at(after.x)], after.edge);
    } else {
      run('in', [at(fromX), at(teeX)], before?.edge);
      run('out', [at(teeX), at(after.x)], after.edge);
    }
    if (before !== undefined && after.edge.kind !== 'strainer') {
      const branched = vents.length + pilots.length > 0;
      const x = branched ? teeX : before.x + TEST_POINT_AFTER_FITTING_PX * a;
      addReading(node, x, vents.length > 0, pilots.length > 0, frame, context);
    }
    for (const branch of vents) layVent(branch, teeX, frame, context);
    for (const branch of pilots) layPilot(branch, teeX, frame, context);
  }
}

/** A pilot line leaves close before the next valve: its reading stands to the left of it. */
function teePlace(fromX: number, toX: number, feedsPilot: boolean, a: number): number {
  return feedsPilot ? toX - TEE_BEFORE_VALVE_PX * a : (fromX + toX) / 2;
}

/** A node's reading stands beside the branch that rises there, else on a leader of its own. */
function addReading(
  node: string,
  x: number,
  vented: boolean,
  tapped: boolean,
  frame: TrainFrame,
  context: LayoutContext,
): void {
  const { a, lineHeightPx } = context.m;
  const id = testPointId(node);
  addTestPoint(context, id, x, frame.pipeY);
  addLabel(context, id, vented ? 'left' : tapped ? 'right' : 'center', (size) => ({
    x: vented ? x + 10 * a : tapped ? x - 10 * a - size.width : x - size.width / 2,
    y: frame.readingTopY,
  }));
  if (vented || tapped) return;
  context.parts.leaders.push({
    dashed: false,
    points: [
      { x, y: frame.pipeY - 7 * a },
      { x, y: frame.readingTopY + lineHeightPx },
    ],
  });
}

function addRiserReading(node: string, frame: TrainFrame, context: LayoutContext): void {
  const { a, lineHeightPx } = context.m;
  const id = testPointId(node);
  const y = frame.pipeY - (RISER_READING_LINES - 0.5) * lineHeightPx;
  addTestPoint(context, id, frame.riserX, y);
  addLabel(context, id, 'left', () => ({ x: frame.riserX + 14 * a, y: y - lineHeightPx / 2 }));
}

/** Readings of one row give way to the left, as far as the edge of the drawing. */
function spreadReadings(labels: PlacedLabel[], rowY: number, marginPx: number): void {
  const row = labels
    .filter((label) => label.box.y === rowY && label.id.startsWith('test-point:'))
    .sort((p, q) => q.box.x - p.box.x);
  let limit = Number.POSITIVE_INFINITY;
  for (const label of row) {
    const x = Math.max(marginPx, Math.min(label.box.x, limit - label.box.width));
    labels[labels.indexOf(label)] = { ...label, box: { ...label.box, x } };
    limit = x - 7;
  }
}
