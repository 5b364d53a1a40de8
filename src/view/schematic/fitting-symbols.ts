import { Graphics } from 'pixi.js';
import type { PlacedSymbol } from './layout-types.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext, THIN_PX } from './scene.ts';

/** Fittings without a state: strainer, orifice, test point, inlet screen, drive case. */
export function createFittingSymbol(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, layout } = context;
  const g = new Graphics();
  const outline = { width: OUTLINE_PX, color: palette.ink };
  switch (place.kind) {
    case 'strainer':
      g.poly([-13, 0, 0, -13, 13, 0, 0, 13], true).fill(palette.body).stroke(outline);
      for (const y of [-9, -3, 3, 9]) g.moveTo(0, y - 1.8).lineTo(0, y + 1.8);
      g.stroke({ width: THIN_PX, color: palette.ink });
      break;
    case 'orifice':
      g.moveTo(0, -12).lineTo(0, -3).moveTo(0, 3).lineTo(0, 12);
      g.stroke({ width: 3, color: palette.ink });
      break;
    case 'test-point':
      g.circle(0, 0, 5.5).fill(palette.body).stroke({ width: 1.5, color: palette.ink });
      g.circle(0, 0, 1.8).fill(palette.ink);
      break;
    case 'inlet-screen':
      for (const x of [-8, 0, 8]) g.moveTo(x, -18).lineTo(x, 18);
      g.stroke({ width: OUTLINE_PX, color: palette.ink });
      break;
    case 'drive': {
      const width = place.box.width / layout.scale;
      const height = place.box.height / layout.scale;
      g.moveTo(0, -height / 2).lineTo(0, -height / 2 - 16);
      g.stroke({ width: OUTLINE_PX, color: palette.ink });
      g.roundRect(-width / 2, -height / 2, width, height, 4)
        .fill(palette.body)
        .stroke(outline);
      break;
    }
    default:
      break;
  }
  return { fixed: placed([g], place, layout.scale) };
}
