import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { damperLook } from './damper-view.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { createLetters } from './letters.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const RADIUS = 13;

/** A servo: motor with a hand on its rim at the angle fed back, on the shaft down to its damper. */
export function createServoSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels, layout } = context;
  const feedback = channels.indexOf('damper.feedback');
  const g = new Graphics();
  g.moveTo(0, RADIUS).lineTo(0, SHAFT_PX).stroke({ width: OUTLINE_PX, color: palette.ink });
  g.circle(0, 0, RADIUS).fill(palette.body);
  g.circle(0, 0, RADIUS).stroke({ width: OUTLINE_PX, color: palette.ink });
  const hand = new Graphics();
  hand.poly([-3, -12, 3, -12, 0, -17]).fill(palette.ink);
  const letters = createLetters('M', 13, context);
  let armRad = Number.NaN;
  return {
    fixed: placed([g, letters.sprite], place, layout.scale),
    node: placed([hand], place, layout.scale),
    show(view) {
      const look = damperLook(0, readAt(view.values, feedback));
      if (look.armRad === armRad) return;
      armRad = look.armRad;
      hand.rotation = armRad + Math.PI / 2;
    },
    sharpen: letters.sharpen,
  };
}
const SHAFT_PX = 21;
