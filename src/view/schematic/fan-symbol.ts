import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { fanLook } from './fan-view.ts';
import { FAN_RADIUS_PX } from './layout-air.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const BLADES = 6;

/** The fan: casing, outlet, and a wheel that turns with the shaft (slowed for the eye). */
export function createFanSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels } = context;
  const speed = channels.indexOf('fan.speed');
  const r = FAN_RADIUS_PX;
  const casing = new Graphics();
  casing.circle(0, 0, r).fill(palette.body);
  casing.circle(0, 0, r).stroke({ width: 2, color: palette.ink });
  const disc = new Graphics();
  disc.circle(0, 0, r - 6).fill({ color: palette.ink, alpha: 0.22 });
  disc.visible = false;
  const wheel = new Graphics();
  for (let i = 0; i < BLADES; i += 1) {
    const at = (i / BLADES) * 2 * Math.PI;
    const point = (radius: number, turn: number): [number, number] => [
      radius * Math.cos(at + turn),
      radius * Math.sin(at + turn),
    ];
    const [x0, y0] = point(7, 0);
    const [x1, y1] = point(16, -0.1);
    const [x2, y2] = point(r - 7, -0.75);
    wheel.moveTo(x0, y0).quadraticCurveTo(x1, y1, x2, y2);
  }
  wheel.stroke({ width: 2.6, color: palette.ink, cap: 'round' });
  wheel.circle(0, 0, 7).fill(palette.body);
  wheel.circle(0, 0, 7).stroke({ width: OUTLINE_PX, color: palette.ink });
  const { scale } = context.layout;
  let blur = 0;
  return {
    fixed: placed([casing], place, scale),
    node: placed([disc, wheel], place, scale),
    show(view) {
      const look = fanLook(readAt(view.values, speed));
      const drawnBlur = view.still ? 0 : look.blur;
      if (drawnBlur !== blur) {
        blur = drawnBlur;
        disc.visible = blur > 0;
        disc.alpha = blur;
        wheel.alpha = 1 - 0.45 * blur;
      }
      if (!view.still && view.dtS > 0 && look.turnRadS !== 0) {
        wheel.rotation = (wheel.rotation + look.turnRadS * view.dtS) % (2 * Math.PI);
      }
    },
  };
}
