import { Container, Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { FAN_RADIUS_PX } from './layout-air.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { createLetters } from './letters.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const RADIUS = 15;
const HUB_RADIUS = 7;
const BELT_MARKS = 5;
const BELT_PX_S = 46;
const TURNS_RPM = 30;

/** The fan's motor on the mains, with its shaft, or its belt up to the fan's hub. */
export function createMotorSymbol(
  place: PlacedSymbol,
  hasBelt: boolean,
  context: SceneContext,
): Drawn {
  const { palette, channels, layout } = context;
  const speed = channels.indexOf('fan.speed');
  const fan = layout.symbols.find(({ kind }) => kind === 'fan');
  const reach = fan === undefined ? 0 : (fan.y - place.y) / layout.scale;
  const g = new Graphics();
  if (hasBelt) {
    for (const side of [-1, 1]) g.moveTo(side * RADIUS * 0.8, 0).lineTo(side * HUB_RADIUS, reach);
  } else {
    g.moveTo(0, 0).lineTo(0, reach + FAN_RADIUS_PX);
  }
  g.stroke({ width: OUTLINE_PX, color: palette.ink });
  g.circle(0, 0, RADIUS).fill(palette.body);
  g.circle(0, 0, RADIUS).stroke({ width: OUTLINE_PX, color: palette.ink });
  const letters = createLetters('M', 13, context);
  const marks = new Container();
  const length = Math.abs(reach) - RADIUS;
  if (hasBelt) {
    for (let i = 0; i < BELT_MARKS; i += 1) {
      const mark = new Graphics();
      mark.circle(0, 0, 2.2).fill(palette.ink);
      marks.addChild(mark);
    }
  }
  let phase = 0;
  const put = (): void => {
    marks.children.forEach((mark, i) => {
      const along = (phase + i / BELT_MARKS) % 1;
      mark.position.set(
        RADIUS * 0.8 + (HUB_RADIUS - RADIUS * 0.8) * along,
        -RADIUS - length * along,
      );
    });
  };
  put();
  return {
    fixed: placed([g, letters.sprite], place, layout.scale),
    node: placed([marks], place, layout.scale),
    show(view) {
      if (!hasBelt || view.still || view.dtS === 0) return;
      const rpm = readAt(view.values, speed);
      if (Math.abs(rpm) < TURNS_RPM) return;
      phase = (phase + (Math.sign(rpm) * BELT_PX_S * view.dtS) / length + 1) % 1;
      put();
    },
    sharpen: letters.sharpen,
  };
}
