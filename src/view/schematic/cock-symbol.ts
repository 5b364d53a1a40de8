import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';
import { drawBowTie, fillTo, turnOf } from './valve-body.ts';
import { valveLook } from './valve-view.ts';

/** A quarter-turn cock: its lever lies along the pipe when open, across it when shut. */
export function createCockSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels } = context;
  const opening = channels.indexOf(`gas.${place.id}.opening`);
  const { outline, filling } = drawBowTie(context);
  const post = new Graphics();
  post.moveTo(0, 0).lineTo(0, -17).stroke({ width: OUTLINE_PX, color: palette.ink });
  const lever = new Graphics();
  lever.roundRect(-13, -2.4, 26, 4.8, 2.4).fill(palette.ink);
  lever.y = -18;
  const { scale } = context.layout;
  let fill = -1;
  return {
    fixed: placed([outline, post], place, scale, turnOf(place)),
    node: placed([filling, lever], place, scale, turnOf(place)),
    show(view) {
      // Only a cock that the run has no reading of is taken to stand open.
      const look = valveLook(readAt(view.values, opening, 1));
      if (look.fill === fill) return;
      fill = look.fill;
      fillTo(filling, fill);
      lever.rotation = ((1 - fill) * Math.PI) / 2;
    },
  };
}
