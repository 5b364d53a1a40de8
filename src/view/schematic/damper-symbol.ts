import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { damperLook } from './damper-view.ts';
import { DAMPER_RADIUS_PX } from './layout-air.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { createLetters } from './letters.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const SERVO_Y = -41;

/** The damper: its blade as it lies in the duct, and the servo's hand as it is fed back. */
export function createDamperSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels } = context;
  const bladeAngle = channels.indexOf('damper.blade');
  const feedback = channels.indexOf('damper.feedback');
  const r = DAMPER_RADIUS_PX;
  const frame = new Graphics();
  frame.circle(0, 0, r).fill(palette.ground);
  frame.circle(0, 0, r).stroke({ width: OUTLINE_PX, color: palette.ink });
  frame
    .moveTo(0, -r)
    .lineTo(0, SERVO_Y + 13)
    .stroke({ width: OUTLINE_PX, color: palette.ink });
  frame.circle(0, SERVO_Y, 13).fill(palette.body);
  frame.circle(0, SERVO_Y, 13).stroke({ width: OUTLINE_PX, color: palette.ink });
  const blade = new Graphics();
  blade.roundRect(-r + 2, -2.8, 2 * r - 4, 5.6, 2.8).fill(palette.ink);
  blade.circle(0, 0, 4).fill(palette.body);
  blade.circle(0, 0, 4).stroke({ width: OUTLINE_PX, color: palette.ink });
  const hand = new Graphics();
  hand.poly([-3, -12, 3, -12, 0, -17]).fill(palette.ink);
  hand.position.set(0, SERVO_Y);
  const letters = createLetters('M', 13, context);
  letters.sprite.position.set(0, SERVO_Y);
  const { scale } = context.layout;
  let bladeRad = Number.NaN;
  let armRad = Number.NaN;
  return {
    fixed: placed([frame, letters.sprite], place, scale),
    node: placed([blade, hand], place, scale),
    show(view) {
      const look = damperLook(readAt(view.values, bladeAngle), readAt(view.values, feedback));
      if (look.bladeRad !== bladeRad) {
        bladeRad = look.bladeRad;
        blade.rotation = bladeRad;
      }
      if (look.armRad !== armRad) {
        armRad = look.armRad;
        hand.rotation = armRad + Math.PI / 2;
      }
    },
    sharpen: letters.sharpen,
  };
}
