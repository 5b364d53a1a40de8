import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { damperLook } from './damper-view.ts';
import { DAMPER_RADIUS_PX, SERVO_ABOVE_PX } from './layout-air.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';
import { createServoSymbol } from './servo-symbol.ts';

/** The damper: its blade as it lies in the duct, and the servo's hand as it is fed back. */
export function createDamperSymbol(place: PlacedSymbol, context: SceneContext): Drawn[] {
  const { scale } = context.layout;
  const servoY = place.y - SERVO_ABOVE_PX * scale;
  return [createBladeSymbol(place, context), createServoSymbol({ ...place, y: servoY }, context)];
}

/** The damper alone, where its servo is a thing of its own. */
export function createBladeSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels } = context;
  const bladeAngle = channels.indexOf('damper.blade');
  const r = DAMPER_RADIUS_PX;
  const frame = new Graphics();
  frame.circle(0, 0, r).fill(palette.ground);
  frame.circle(0, 0, r).stroke({ width: OUTLINE_PX, color: palette.ink });
  const blade = new Graphics();
  blade.roundRect(-r + 2, -2.8, 2 * r - 4, 5.6, 2.8).fill(palette.ink);
  blade.circle(0, 0, 4).fill(palette.body);
  blade.circle(0, 0, 4).stroke({ width: OUTLINE_PX, color: palette.ink });
  const { scale } = context.layout;
  let bladeRad = Number.NaN;
  return {
    fixed: placed([frame], place, scale),
    node: placed([blade], place, scale),
    show(view) {
      const look = damperLook(readAt(view.values, bladeAngle), 0);
      if (look.bladeRad === bladeRad) return;
      bladeRad = look.bladeRad;
      blade.rotation = bladeRad;
    },
  };
}
