import { addLabel, addTestPoint, type LayoutContext } from './layout-parts.ts';
import { type Point, type Rect, rectAround, type SymbolKind } from './layout-types.ts';
import type { SchematicPlant } from './plant.ts';

export const DUCT_PX = 28;
export const FAN_RADIUS_PX = 34;
export const DAMPER_RADIUS_PX = 20;
/** The servo's middle above that of the damper it turns. */
export const SERVO_ABOVE_PX = 41;
export const MOTOR_RADIUS_PX = 15;
const MOTOR_BELOW_FAN_PX = 34;
const CONTACTOR_BESIDE_MOTOR_PX = 46;
const DOWN_LEG_IN_WINDBOX_PX = 42;

export interface AirFrame {
  readonly ductY: number;
  readonly downLegX: number;
}

export function airFrameOf(windboxX: number, context: LayoutContext): AirFrame {
  const { a, lineHeightPx: line, marginPx: margin } = context.m;
  return {
    ductY: margin + Math.max(line + 8 + FAN_RADIUS_PX * a, 2 * line + 10 + (DUCT_PX / 2) * a),
    downLegX: windboxX + DOWN_LEG_IN_WINDBOX_PX * a,
  };
}

/** Inlet screen, fan, damper and duct, down into the windbox. */
export function layAir(
  windbox: Rect,
  frame: AirFrame,
  plant: SchematicPlant,
  context: LayoutContext,
): void {
  const { a, lineHeightPx: line, marginPx: margin } = context.m;
  const { ductY, downLegX } = frame;
  const fanX = margin + 104 * a;
  const damperX = fanX + FAN_RADIUS_PX * a + (downLegX - fanX - FAN_RADIUS_PX * a) * 0.44;
  const at = (x: number, y = ductY): Point => ({ x, y });
  const air = { medium: 'air', widthPx: DUCT_PX * a, flow: 'air.flow' } as const;
  context.parts.pipes.push(
    { id: 'air:inlet', ...air, points: [at(margin), at(fanX - 20 * a)] },
    { id: 'air:duct', ...air, points: [at(fanX + 20 * a), at(damperX)] },
    {
      id: 'air:windbox',
      ...air,
      points: [at(damperX), at(downLegX), at(downLegX, windbox.y + 2)],
    },
  );
  place('inlet-screen', margin + 26 * a, ductY, 24 * a, 38 * a);
  place('fan', fanX, ductY, 2 * FAN_RADIUS_PX * a, 2 * FAN_RADIUS_PX * a);
  addLabel(context, 'fan', 'center', (size) => ({
    x: fanX - size.width / 2,
    y: ductY - FAN_RADIUS_PX * a - 6 - line,
  }));

  const above = plant.hasOneServo === true ? 0 : 36 * a;
  place('damper', damperX, ductY, 2 * DAMPER_RADIUS_PX * a, 2 * DAMPER_RADIUS_PX * a, above);
  if (plant.hasOneServo === true) {
    place('servo', damperX, ductY - SERVO_ABOVE_PX * a, 30 * a, 30 * a);
  }
  addLabel(context, 'damper', 'left', (size) => ({
    x: damperX + 20 * a,
    y: ductY - (DUCT_PX / 2) * a - 8 - size.height,
  }));

  const tapX = downLegX - 26 * a;
  addTestPoint(context, 'windbox', tapX, ductY);
  addLabel(context, 'windbox', 'left', (size) => ({
    x: tapX + 2 * a,
    y: ductY - (DUCT_PX / 2) * a - 8 - size.height,
  }));

  const belowY = ductY + (FAN_RADIUS_PX + 32) * a;
  if (plant.hasVariableSpeedFan) {
    const label = context.sizeOf('drive');
    place('drive', fanX, belowY, Math.max(72 * a, label.width + 16), line + 8 * a);
    addLabel(context, 'drive', 'center', (size) => ({
      x: fanX - size.width / 2,
      y: belowY - size.height / 2,
    }));
  } else {
    layMotor(fanX, ductY + (FAN_RADIUS_PX + MOTOR_BELOW_FAN_PX) * a);
  }
  laySwitch(downLegX, ductY + (DUCT_PX / 2) * a + 8 + Math.max(line, 18 * a), context);

  function layMotor(x: number, y: number): void {
    const contactorX = x - CONTACTOR_BESIDE_MOTOR_PX * a;
    place('motor', x, y, 2 * MOTOR_RADIUS_PX * a, 2 * MOTOR_RADIUS_PX * a);
    place('contactor', contactorX, y, 26 * a, 30 * a);
    const labelX = x + (MOTOR_RADIUS_PX + 8) * a;
    addLabel(context, 'motor', 'left', () => ({ x: labelX, y: y - line }));
    addLabel(context, 'contactor', 'left', () => ({ x: labelX, y }));
  }

  function place(
    id: Extract<
      SymbolKind,
      'inlet-screen' | 'fan' | 'damper' | 'drive' | 'servo' | 'motor' | 'contactor'
    >,
    x: number,
    y: number,
    width: number,
    height: number,
    above = 0,
  ): void {
    const box = rectAround(x, y, width, height);
    context.parts.symbols.push({
      id,
      kind: id,
      x,
      y,
      upright: false,
      box: { ...box, y: box.y - above, height: box.height + above },
    });
  }
}

function laySwitch(downLegX: number, y: number, context: LayoutContext): void {
  const { a } = context.m;
  const x = downLegX - 68 * a;
  context.parts.symbols.push({
    id: 'air-switch',
    kind: 'air-switch',
    x,
    y,
    upright: false,
    box: rectAround(x, y, 36 * a, 36 * a),
  });
  context.parts.leaders.push({
    dashed: true,
    points: [
      { x: x + 18 * a, y },
      { x: downLegX - (DUCT_PX / 2) * a, y },
    ],
  });
  addLabel(context, 'air-switch', 'right', (size) => ({
    x: x - 26 * a - size.width,
    y: y - size.height / 2,
  }));
}
