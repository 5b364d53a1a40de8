import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext, THIN_PX } from './scene.ts';
import { drawBowTie, fillTo, turnOf } from './valve-body.ts';
import { valveLook } from './valve-view.ts';

/** A regulator: diaphragm dome on top, its impulse line from the pipe after it. */
export function createRegulatorSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels } = context;
  const opening = channels.indexOf(`gas.${place.id}.opening`);
  const { outline, filling } = drawBowTie(context);
  const dome = new Graphics();
  dome.moveTo(0, 0).lineTo(0, -18).stroke({ width: OUTLINE_PX, color: palette.ink });
  dome.moveTo(-14, -18).bezierCurveTo(-12, -34, 12, -34, 14, -18).closePath();
  dome.fill(palette.body).stroke({ width: OUTLINE_PX, color: palette.ink, join: 'round' });
  for (const [x, y, dx, dy] of [
    [14, -20, 4, 0],
    [21, -20, 3, 0],
    [24, -20, 0, 4],
    [24, -13, 0, 4],
  ]) {
    dome.moveTo(x, y).lineTo(x + dx, y + dy);
  }
  dome.stroke({ width: THIN_PX, color: palette.ink });
  const { scale } = context.layout;
  let fill = -1;
  return {
    fixed: placed([outline, dome], place, scale, turnOf(place)),
    node: placed([filling], place, scale, turnOf(place)),
    show(view) {
      const look = valveLook(readAt(view.values, opening));
      if (look.fill === fill) return;
      fill = look.fill;
      fillTo(filling, fill);
    },
  };
}
