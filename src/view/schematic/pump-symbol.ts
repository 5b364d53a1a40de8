import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { PUMP_RADIUS_PX } from './layout-hot-water.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const FLOWS_KG_S = 0.01;

/** A circulating pump (ISO 14617): its triangle points the way it pumps, filled while it does. */
export function createPumpSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels, layout } = context;
  const flow = channels.indexOf('vessel.circulation');
  const r = PUMP_RADIUS_PX;
  const triangle = [-r, 0, r * 0.5, -r * 0.87, r * 0.5, r * 0.87];
  const g = new Graphics();
  g.circle(0, 0, r).fill(palette.body);
  g.circle(0, 0, r).stroke({ width: OUTLINE_PX, color: palette.ink });
  g.poly(triangle).stroke({ width: OUTLINE_PX, color: palette.ink, join: 'round' });
  const filled = new Graphics();
  filled.poly(triangle).fill(palette.ink);
  filled.visible = false;
  return {
    fixed: placed([g], place, layout.scale),
    node: placed([filled], place, layout.scale),
    show(view) {
      const pumps = readAt(view.values, flow) > FLOWS_KG_S;
      if (pumps !== filled.visible) filled.visible = pumps;
    },
  };
}
