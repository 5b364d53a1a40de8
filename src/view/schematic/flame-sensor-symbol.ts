import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const SIGNAL_SEEN_UA = 0.3;
const DASH_PX = 6;

/** The flame sensor, looking down its sight line at the flame's foot; the line firms with a signal. */
export function createFlameSensorSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels, layout } = context;
  const signal = channels.indexOf('flame.signal');
  const a = layout.scale;
  const target = { x: layout.throat.x + 46 * a, y: layout.throat.y };
  const angle = Math.atan2(target.y - place.y, target.x - place.x);
  const reach = Math.hypot(target.x - place.x, target.y - place.y) / a;
  const sight = new Graphics();
  for (let at = 16; at < reach; at += 2 * DASH_PX) {
    sight.moveTo(at, 0).lineTo(Math.min(reach, at + DASH_PX), 0);
  }
  sight.stroke({ width: 1.6, color: palette.ink });
  sight.alpha = WEAK_SIGHT;
  const tube = new Graphics();
  tube.roundRect(-16, -6.5, 22, 13, 3).fill(palette.ink);
  tube.rect(6, -4.5, 9, 9).fill(palette.body);
  tube.rect(6, -4.5, 9, 9).stroke({ width: OUTLINE_PX, color: palette.ink });
  let seen = false;
  return {
    fixed: placed([tube], place, a, angle),
    node: placed([sight], place, a, angle),
    show(view) {
      const sees = readAt(view.values, signal) > SIGNAL_SEEN_UA;
      if (sees === seen) return;
      seen = sees;
      sight.alpha = seen ? 0.85 : WEAK_SIGHT;
    },
  };
}
const WEAK_SIGHT = 0.4;
