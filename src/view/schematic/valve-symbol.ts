import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { bitOf, isSet, terminalOf } from '../vocabulary.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext, THIN_PX } from './scene.ts';
import { drawBowTie, fillTo, turnOf } from './valve-body.ts';
import { valveLook } from './valve-view.ts';

/**
 * A shut-off valve: plug and stem lift off the seat, the coil fills when it is fed. The one that
 * opens without current is told to be open by being fed nothing; its spring is drawn.
 */
export function createValveSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels, vocabulary } = context;
  const opening = channels.indexOf(`gas.${place.id}.opening`);
  const commands = channels.indexOf('logic.commands');
  const coilBit = bitOf(vocabulary.commands, terminalOf(place.id));
  const { outline, filling } = drawBowTie(context);
  const stem = new Graphics();
  stem.moveTo(0, -6).lineTo(0, -22).stroke({ width: OUTLINE_PX, color: palette.ink });
  stem.roundRect(-2.6, -8, 5.2, 16, 1.4).fill(palette.ink);
  const box = new Graphics();
  box.rect(-11, -38, 22, 20).fill(palette.body).stroke({ width: OUTLINE_PX, color: palette.ink });
  box.moveTo(-11, -18).lineTo(11, -38).stroke({ width: OUTLINE_PX, color: palette.ink });
  if (place.normallyOpen === true) drawSpring(box, palette.ink);
  const coil = new Graphics();
  coil.rect(-11, -38, 22, 20).fill(palette.ink);
  coil.moveTo(-9, -20).lineTo(9, -36).stroke({ width: OUTLINE_PX, color: palette.body });
  coil.visible = false;
  const { scale } = context.layout;
  const opensAlone = place.normallyOpen === true;
  let fill = -1;
  let fed = false;
  return {
    fixed: placed([outline, box], place, scale, turnOf(place)),
    node: placed([filling, stem, coil], place, scale, turnOf(place)),
    show(view) {
      // Where nothing says how it stands it is drawn as on paper: without current.
      const look = valveLook(readAt(view.values, opening, opensAlone ? 1 : 0));
      if (look.fill !== fill) {
        fill = look.fill;
        fillTo(filling, fill);
        stem.y = -look.stemPx;
      }
      const isTold = isSet(readAt(view.values, commands), coilBit);
      const isFed = commands >= 0 && coilBit !== 0 && isTold !== opensAlone;
      if (isFed !== fed) {
        fed = isFed;
        coil.visible = fed;
      }
    },
  };
}

/** A spring between coil and body that lifts the stem. */
function drawSpring(g: Graphics, colour: string): void {
  g.moveTo(-5, -18).lineTo(5, -16).lineTo(-5, -13.5).lineTo(5, -11);
  g.stroke({ width: THIN_PX, color: colour });
}
