import {
  addFitting,
  addLabel,
  addTestPoint,
  addUprightValve,
  type LayoutContext,
  PILOT_READING_PX,
  type TrainFrame,
  testPointId,
  VALVE_HALF_PX,
} from './layout-parts.ts';
import type { Point } from './layout-types.ts';
import { FURNACE } from './plant.ts';
import type { Branch } from './train-graph.ts';

export const PILOT_PIPE_PX = 7;
const VENT_PIPE_PX = 9;
/** Runs of the pilot line: riser to first valve, fitting to fitting, last reading to burner. */
const FIRST_VALVE_PX = 26;
const NEXT_FITTING_PX = 20;
const READING_BEFORE_BURNER_PX = 44;

export function layVent(
  branch: Branch,
  x: number,
  frame: TrainFrame,
  context: LayoutContext,
): void {
  const edge = branch.edges[0];
  const { a } = context.m;
  const gas = { medium: 'gas', widthPx: VENT_PIPE_PX * a, flow: `gas.${edge.id}.flow` } as const;
  const at = (y: number): Point => ({ x, y });
  context.parts.pipes.push(
    {
      id: `${edge.id}:in`,
      ...gas,
      pressure: `gas.${branch.node}.pressure`,
      points: [at(frame.pipeY), at(frame.ventY)],
    },
    {
      id: `${edge.id}:out`,
      ...gas,
      pressure: 'gas.atmosphere.pressure',
      arrow: true,
      points: [at(frame.ventY), at(frame.ventTipY)],
    },
  );
  addUprightValve(context, edge, x, frame.ventY);
  addLabel(context, edge.id, 'left', (size) => ({
    x: x + 16 * a,
    y: frame.ventY - size.height / 2,
  }));
}

export function layPilot(
  branch: Branch,
  x: number,
  frame: TrainFrame,
  context: LayoutContext,
): void {
  const { a } = context.m;
  const valves = branch.edges.filter((edge) => edge.to !== FURNACE);
  const nozzle = branch.edges[branch.edges.length - 1];
  let node = branch.node;
  let way: Point[] = [
    { x, y: frame.pipeY },
    { x, y: frame.pilotY },
  ];
  const run = (edgeId: string, toX: number): void => {
    context.parts.pipes.push({
      id: `${edgeId}:in`,
      medium: 'gas',
      widthPx: PILOT_PIPE_PX * a,
      flow: `gas.${edgeId}.flow`,
      pressure: `gas.${node}.pressure`,
      points: [...way, { x: toX, y: frame.pilotY }],
    });
    way = [{ x: toX, y: frame.pilotY }];
  };
  let freeX = x + FIRST_VALVE_PX * a;
  for (const edge of valves) {
    const valveX = freeX + VALVE_HALF_PX * a;
    run(edge.id, valveX);
    addFitting(context, edge, valveX, frame.pilotY);
    addLabel(context, edge.id, 'left', (size) => ({
      x: valveX + 18 * a,
      y: frame.pilotY - 8 * a - size.height,
    }));
    node = edge.to;
    freeX =
      valveX +
      VALVE_HALF_PX * a +
      Math.max(NEXT_FITTING_PX * a, context.sizeOf(edge.id).width + 10);
  }
  run(nozzle.id, frame.riserX);
  if (valves.length === 0) return;
  const tapX = frame.riserX - READING_BEFORE_BURNER_PX * a;
  addTestPoint(context, testPointId(node), tapX, frame.pilotY);
  addLabel(context, testPointId(node), 'right', (size) => ({
    x: tapX + 8 * a - size.width,
    y: frame.pilotY + PILOT_READING_PX * a,
  }));
}
