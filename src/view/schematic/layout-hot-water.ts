import { WET_WALL_PX } from './furnace-view.ts';
import { addLabel, type LayoutContext } from './layout-parts.ts';
import { type Rect, rectAround } from './layout-types.ts';
import {
  addGauge,
  layFlueFromFurnace,
  layOutlet,
  OUTLET_PIPE_PX,
  outletPlace,
  type VesselLayout,
  type VesselRoom,
} from './layout-vessel-parts.ts';

export const PUMP_RADIUS_PX = 14;
const THERMOMETER_PX = 12;

/**
 * Water about the furnace, of which the strip over it can be picked; the flow leaves at the top,
 * the return comes back through a pump.
 */
export function layHotWater(room: VesselRoom, context: LayoutContext): VesselLayout {
  const { a } = context.m;
  const { furnace, left, right, outletY } = room;
  const shell: Rect = {
    x: furnace.x,
    y: furnace.y,
    width: furnace.width,
    height: WET_WALL_PX * a,
  };
  layFlueFromFurnace(room, context);
  const flowX = outletPlace(left + context.sizeOf('vessel').width + 16 * a, context);
  const from = { x: flowX, y: furnace.y + 4 * a };
  const steamEnd = layOutlet('water', 'vessel.circulation', from, outletY, context);

  const returnY = outletY + (furnace.y - outletY) * 0.62;
  const returnX = Math.min(flowX + 84 * a, right - 5 * PUMP_RADIUS_PX * a);
  context.parts.pipes.push({
    id: 'return',
    medium: 'water',
    widthPx: OUTLET_PIPE_PX * a,
    flow: 'vessel.circulation',
    points: [
      { x: right, y: returnY },
      { x: returnX, y: returnY },
      { x: returnX, y: furnace.y + 4 * a },
    ],
  });
  const pumpX = (returnX + right) / 2;
  context.parts.symbols.push({
    id: 'pump',
    kind: 'pump',
    x: pumpX,
    y: returnY,
    upright: false,
    box: rectAround(pumpX, returnY, 2 * PUMP_RADIUS_PX * a, 2 * PUMP_RADIUS_PX * a),
  });
  addLabel(context, 'return', 'right', (label) => ({
    x: right - label.width,
    y: returnY - PUMP_RADIUS_PX * a - 5 - label.height,
  }));

  const gauge: Rect = {
    x: flowX - (16 + THERMOMETER_PX) * a,
    y: outletY + (furnace.y - outletY) * 0.3,
    width: THERMOMETER_PX * a,
    height: (furnace.y - outletY) * 0.5,
  };
  addGauge('thermometer', gauge, context);
  return { shell, gauge, steamEnd, stackTop: room.stackTop };
}
