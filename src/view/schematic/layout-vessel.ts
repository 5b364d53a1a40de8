import { layDrum } from './layout-drum.ts';
import { layHotWater } from './layout-hot-water.ts';
import type { LayoutContext } from './layout-parts.ts';
import { layShell } from './layout-shell.ts';
import type { Point, Rect } from './layout-types.ts';
import { FLUE_PX, type VesselLayout, type VesselRoom } from './layout-vessel-parts.ts';
import type { VesselKind } from './plant.ts';

/**
 * The vessel above the furnace with its outlet, and the flue at the right.
 *
 * @param leftX what stands to the left of the vessel ends here
 */
export function layVessel(
  kind: VesselKind,
  furnace: Rect,
  leftX: number,
  context: LayoutContext,
): VesselLayout {
  const { a, lineHeightPx: line, marginPx: margin, size } = context.m;
  const stackX = size.width - margin - (FLUE_PX / 2 + 8) * a;
  const outletY = margin + line / 2;
  const stackTop: Point = { x: stackX, y: margin + 44 * a };
  const room: VesselRoom = {
    furnace,
    outletY,
    top: outletY + Math.max(line / 2 + 6, 18 * a),
    left: Math.max(furnace.x + 24 * a, leftX + 12),
    right: stackX - (FLUE_PX / 2) * a - 12 * a,
    stackTop,
  };
  switch (kind) {
    case 'water-tube':
      return layDrum(room, context);
    case 'fire-tube':
      return layShell(room, context);
    case 'hot water':
      return layHotWater(room, context);
  }
}
