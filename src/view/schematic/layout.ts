import { airFrameOf, DAMPER_RADIUS_PX, DUCT_PX, layAir } from './layout-air.ts';
import { PILOT_PIPE_PX } from './layout-branches.ts';
import {
  addLabel,
  emptyParts,
  type LabelSize,
  type LayoutContext,
  type TrainFrame,
  testPointId,
} from './layout-parts.ts';
import { GAS_PIPE_PX, layTrain } from './layout-train.ts';
import {
  type Layout,
  type LegendEntry,
  type Point,
  type Rect,
  rectAround,
} from './layout-types.ts';
import { layVessel } from './layout-vessel.ts';
import type { Measures } from './measures.ts';
import type { SchematicPlant, VesselKind } from './plant.ts';
import { shapeOf, type TrainShape } from './train-graph.ts';

/** Burner axis under the pilot line, and the windbox and furnace about it. */
const AXIS_BELOW_PILOT_PX = 26;
const FURNACE_ABOVE_AXIS_PX = 94;
const FURNACE_BELOW_AXIS_PX = 114;
const WINDBOX_ABOVE_PILOT_PX = 42;
const RISER_IN_WINDBOX_PX = 30;
export const HEAD_BEFORE_THROAT_PX = 10;

export const LEGEND_MEDIA = ['gas', 'air', 'water', 'steam', 'flue'] as const;
export const LEGEND_NOTES = ['legend:flow', 'legend:valve'] as const;

/** The drawing set out for one plant and one size of screen. */
export function layoutOf(plant: SchematicPlant, m: Measures, sizeOf: LabelSize): Layout {
  const context: LayoutContext = { m, sizeOf, parts: emptyParts() };
  const { a, marginPx: margin } = m;
  const shape = shapeOf(plant.gasTrain);
  const control = sizeOf(shape.main.find((edge) => edge.kind === 'control')?.id ?? '').width;
  const manifold = sizeOf(testPointId(lastNodeBeforeControl(shape))).width;
  const hasOneServo = plant.hasOneServo === true;
  const train = layTrain(shape, hasOneServo, context);
  const axisY = train.pilotY + AXIS_BELOW_PILOT_PX * a;

  const windbox = windboxOf(train, Math.max(control, manifold), context);
  const flueRoom = Math.max(66 * a, sizeOf('stack').width + 12);
  const furnaceX = windbox.x + windbox.width;
  const furnace: Rect = {
    x: furnaceX,
    y: axisY - FURNACE_ABOVE_AXIS_PX * a,
    width: m.size.width - margin - flueRoom - furnaceX,
    height: (FURNACE_ABOVE_AXIS_PX + FURNACE_BELOW_AXIS_PX) * a,
  };
  const throat: Point = { x: furnaceX, y: axisY };
  const air = airFrameOf(windbox.x, context);
  layAir(windbox, air, plant, context);
  if (hasOneServo) layLinkage(train, context);
  const columnX = air.downLegX + (DUCT_PX / 2 + 8) * a;
  const columnEnd = columnX + Math.max(sizeOf('spark').width, sizeOf('flame-sensor').width);
  const vessel = layVessel(plant.vesselKind, furnace, columnEnd, context);
  layLances(train, shape, throat, context);
  layBurnerLabels(windbox, furnace, plant.vesselKind, columnX, air.ductY, context);
  const legend = layLegend(train, furnace, context);
  for (const [id, rect] of [
    ['burner', windbox],
    ['furnace', furnace],
    ['vessel', vessel.shell],
  ] as const) {
    context.parts.symbols.push({
      id,
      kind: id,
      x: rect.x + rect.width / 2,
      y: rect.y + rect.height / 2,
      upright: false,
      box: rect,
    });
  }
  return {
    size: m.size,
    scale: a,
    fontPx: m.fontPx,
    lineHeightPx: m.lineHeightPx,
    ...context.parts,
    windbox,
    furnace,
    vessel: vessel.shell,
    gauge: vessel.gauge,
    wetWalls: plant.vesselKind !== 'water-tube',
    throat,
    pilotTip: pilotTipOf(throat, a),
    stackTop: vessel.stackTop,
    steamEnd: vessel.steamEnd,
    legend,
  };
}

/** The way a mechanical link is drawn: dashed, from the damper's shaft to the fuel valve's. */
function layLinkage(train: TrainFrame, { m, parts }: LayoutContext): void {
  const { a } = m;
  const damper = parts.symbols.find(({ kind }) => kind === 'damper');
  if (damper === undefined) return;
  const acrossY = train.readingTopY - LINKAGE_OVER_READINGS_PX * a;
  const leverX = train.riserX - LEVER_PX * a;
  const corners: Point[] = [
    { x: damper.x, y: damper.y + (DAMPER_RADIUS_PX + 2) * a },
    { x: damper.x, y: acrossY },
    { x: leverX, y: acrossY },
    { x: leverX, y: train.controlY },
    { x: train.riserX, y: train.controlY },
  ];
  for (let i = 1; i < corners.length; i += 1) {
    parts.leaders.push({ dashed: true, points: [corners[i - 1], corners[i]] });
  }
}
const LINKAGE_OVER_READINGS_PX = 12;
const LEVER_PX = 27;

function lastNodeBeforeControl(shape: TrainShape): string {
  return shape.main.find((edge) => edge.kind === 'control')?.from ?? '';
}

function pilotTipOf(throat: Point, a: number): Point {
  return { x: throat.x - 4 * a, y: throat.y - 19 * a };
}

/** Gas inside the windbox: from the riser to the head, and from the pilot line to its tip. */
function layLances(
  train: TrainFrame,
  shape: TrainShape,
  throat: Point,
  { m, parts }: LayoutContext,
): void {
  const { a } = m;
  const control = shape.main.find((edge) => edge.kind === 'control');
  const tip = pilotTipOf(throat, a);
  if (control !== undefined) {
    parts.pipes.push({
      id: 'lance',
      medium: 'gas',
      widthPx: GAS_PIPE_PX * a,
      flow: `gas.${control.id}.flow`,
      pressure: `gas.${control.to}.pressure`,
      points: [
        { x: train.riserX, y: train.controlY },
        { x: train.riserX, y: throat.y },
        { x: throat.x - HEAD_BEFORE_THROAT_PX * a, y: throat.y },
      ],
    });
  }
  for (const branch of shape.pilots) {
    const nozzle = branch.edges[branch.edges.length - 1];
    parts.pipes.push({
      id: `${nozzle.id}:lance`,
      medium: 'gas',
      widthPx: PILOT_PIPE_PX * a,
      flow: `gas.${nozzle.id}.flow`,
      pressure: `gas.${nozzle.from}.pressure`,
      points: [
        { x: train.riserX, y: train.pilotY },
        { x: tip.x - 24 * a, y: train.pilotY },
        { x: tip.x - 6 * a, y: tip.y },
      ],
    });
  }
}

function windboxOf(train: TrainFrame, labelWidth: number, { m }: LayoutContext): Rect {
  const { a } = m;
  const x = train.riserX - RISER_IN_WINDBOX_PX * a;
  const y = train.pilotY - WINDBOX_ABOVE_PILOT_PX * a;
  const right = train.riserX + Math.max(100 * a, labelWidth + 22 * a);
  return { x, y, width: right - x, height: train.riserTopY - y };
}

function layBurnerLabels(
  windbox: Rect,
  furnace: Rect,
  vesselKind: VesselKind,
  columnX: number,
  ductY: number,
  context: LayoutContext,
): void {
  const { a } = context.m;
  const right = windbox.x + windbox.width;
  addLabel(context, 'furnace', 'right', (size) => ({
    x: furnace.x + furnace.width - 18 * a - size.width,
    y: furnace.y + (vesselKind === 'fire-tube' ? 26 : vesselKind === 'hot water' ? 16 : 13) * a,
  }));
  addLabel(context, 'teaching', 'left', (size) => ({
    x: furnace.x + 16 * a,
    y: furnace.y + furnace.height - 12 * a - size.height,
  }));
  const sensorX = right - 18 * a;
  const sensorY = windbox.y - 12 * a;
  context.parts.symbols.push({
    id: 'flame-sensor',
    kind: 'flame-sensor',
    x: sensorX,
    y: sensorY,
    upright: false,
    box: rectAround(sensorX, sensorY, 24 * a, 24 * a),
  });
  const x = columnX;
  const spark = context.sizeOf('spark').height;
  const roomTop = ductY + (DUCT_PX / 2) * a;
  // Right above the sensor: further up they would be read as the duct's.
  const y = Math.max(roomTop, sensorY - 15 * a - spark - context.sizeOf('flame-sensor').height);
  addLabel(context, 'spark', 'left', () => ({ x, y }));
  addLabel(context, 'flame-sensor', 'left', () => ({ x, y: y + spark }));
}

/** Under the furnace where it fits, else from the riser on under the main line's last reading. */
function layLegend(train: TrainFrame, furnace: Rect, context: LayoutContext): LegendEntry[] {
  const { a, lineHeightPx: line, marginPx: margin, size } = context.m;
  const right = size.width - margin;
  const bottom = size.height - margin;
  const widths = LEGEND_MEDIA.map((medium) => context.sizeOf(`legend:${medium}`).width);
  const swatch = { width: 16 * a, gap: 6 };
  const words = widths.reduce((sum, width) => sum + width + swatch.width + swatch.gap, 0);
  const fits = words + (widths.length - 1) * 14 <= right - furnace.x;
  const startX = fits ? furnace.x : train.riserX + 18 * a;
  const between = Math.min(18, (right - startX - words) / (widths.length - 1));
  const rows = LEGEND_NOTES.length + 1;
  const top = Math.min(bottom - rows * line, furnace.y + furnace.height + 22 * a);
  const entries: LegendEntry[] = [];
  let x = startX;
  LEGEND_MEDIA.forEach((medium, i) => {
    const id = `legend:${medium}`;
    const y = top + line / 2 - 5 * a;
    entries.push({ id, swatch: { x, y, width: swatch.width, height: 10 * a } });
    const labelX = x + swatch.width + swatch.gap;
    addLabel(context, id, 'left', () => ({ x: labelX, y: top }));
    x = labelX + widths[i] + between;
  });
  LEGEND_NOTES.forEach((id, row) => {
    addLabel(context, id, 'left', () => ({ x: startX, y: top + (row + 1) * line }));
  });
  return entries;
}
