import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { damperLook } from './damper-view.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { createLetters } from './letters.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';
import { drawBowTie, fillTo, turnOf } from './valve-body.ts';
import { valveLook } from './valve-view.ts';

const QUARTER_TURN_DEG = 90;
const MOTOR_Y = -27;

/**
 * A control valve: motor, a hand on its rim at the angle fed back, body filled by the blade; a
 * lever in place of the motor where a linkage moves it.
 */
export function createControlValveSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels } = context;
  const blade = channels.indexOf(`${place.id}.blade`);
  const feedback = channels.indexOf(`${place.id}.feedback`);
  const { outline, filling } = drawBowTie(context);
  const motor = new Graphics();
  motor.moveTo(0, 0).lineTo(0, -15).stroke({ width: OUTLINE_PX, color: palette.ink });
  const hand = new Graphics();
  if (place.linked === true) {
    motor.circle(0, MOTOR_Y, 4).fill(palette.ink);
    motor.moveTo(0, -15).lineTo(0, MOTOR_Y).stroke({ width: OUTLINE_PX, color: palette.ink });
  } else {
    motor.circle(0, MOTOR_Y, 12).fill(palette.body);
    motor.circle(0, MOTOR_Y, 12).stroke({ width: OUTLINE_PX, color: palette.ink });
    hand.poly([-3, -11, 3, -11, 0, -16]).fill(palette.ink);
  }
  hand.position.set(0, MOTOR_Y);
  const turn = turnOf(place);
  const letters = createLetters(place.linked === true ? '' : 'M', 13, context);
  letters.sprite.position.set(0, MOTOR_Y);
  letters.sprite.rotation = -turn;
  const { scale } = context.layout;
  let fill = -1;
  let handRad = Number.NaN;
  return {
    fixed: placed([outline, motor, letters.sprite], place, scale, turn),
    node: placed([filling, hand], place, scale, turn),
    show(view) {
      const look = valveLook(readAt(view.values, blade) / QUARTER_TURN_DEG);
      if (look.fill !== fill) {
        fill = look.fill;
        fillTo(filling, fill);
      }
      const { armRad } = damperLook(0, readAt(view.values, feedback));
      if (armRad !== handRad) {
        handRad = armRad;
        hand.rotation = armRad - turn + Math.PI / 2;
      }
    },
    sharpen: letters.sharpen,
  };
}
