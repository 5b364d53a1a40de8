import { Container, Graphics, TilingSprite } from 'pixi.js';
import { readAt } from '../channels.ts';
import { mixColours } from '../palette.ts';
import { gasDots, WET_WALL_PX, wallGlow } from './furnace-view.ts';
import { FILL_STEPS, pipeLook } from './pipe-view.ts';
import { type Drawn, type SceneContext, THIN_PX } from './scene.ts';

const WALL_PX = 9;
const THROAT_HALF_PX = 36;
/** The windbox is shaded with the air in it, lighter than a duct: much is drawn on top. */
const AIR_SHADE = 0.4;

/** Furnace and windbox in section: lined walls, an inside that warms, dots for unburnt gas. */
export function createFurnaceSymbol(context: SceneContext, teaching: boolean): Drawn {
  const { layout, palette, channels, textures } = context;
  const { furnace: f, windbox: w, throat, scale: a } = layout;
  const wall = (layout.wetWalls ? WET_WALL_PX : WALL_PX) * a;
  const temperature = channels.indexOf('furnace.temperature');
  const combustible = channels.indexOf('furnace.combustible');
  const flow = channels.indexOf('air.flow');

  const air = new Graphics();
  air.roundRect(w.x, w.y, w.width + 2, w.height, 4 * a).fill(0xffffff);
  const inside = new Graphics();
  inside.roundRect(f.x + wall, f.y + wall, f.width - 2 * wall, f.height - 2 * wall, 3 * a);
  const half = THROAT_HALF_PX * a;
  inside.poly([
    f.x - 1,
    throat.y - half * 0.86,
    f.x + wall + 1,
    throat.y - half * 1.12,
    f.x + wall + 1,
    throat.y + half * 1.12,
    f.x - 1,
    throat.y + half * 0.86,
  ]);
  inside.fill(0xffffff);
  const dots = new TilingSprite({
    texture: textures.dots,
    width: f.width - 2 * wall,
    height: f.height - 2 * wall,
    position: { x: f.x + wall, y: f.y + wall },
    visible: false,
  });
  let glow = -1;
  let airStep = -1;
  let dotAlpha = 0;
  return {
    fixed: drawWalls(context, wall, half),
    node: new Container({ children: [air, inside, dots] }),
    show(view) {
      const look = pipeLook(
        'air',
        false,
        readAt(view.values, flow) / context.flowScale,
        Number.NaN,
      );
      if (look.fillStep !== airStep) {
        airStep = look.fillStep;
        air.tint = mixColours(palette.faint, palette.air, (AIR_SHADE * airStep) / FILL_STEPS);
      }
      const warm = wallGlow(readAt(view.values, temperature, 293));
      if (warm !== glow) {
        glow = warm;
        inside.tint = mixColours(palette.furnaceCold, palette.furnaceHot, glow);
      }
      const shown = teaching ? gasDots(readAt(view.values, combustible)) : 0;
      if (shown !== dotAlpha) {
        dotAlpha = shown;
        dots.visible = shown > 0;
        dots.alpha = shown * 0.8;
      }
      if (shown > 0 && !view.still) {
        dots.tilePosition.x = (dots.tilePosition.x + view.dtS * 9) % dots.texture.width;
      }
    },
  };
}

/** The lining, open at the throat, and the outlines of furnace and windbox. */
function drawWalls({ layout, palette }: SceneContext, wall: number, half: number): Graphics {
  const { furnace: f, windbox: w, throat, scale: a } = layout;
  const g = new Graphics();
  g.roundRect(w.x, w.y, w.width, w.height, 4 * a).stroke({ width: 2, color: palette.ink });
  const right = f.x + f.width;
  const bottom = f.y + f.height;
  const lining = (points: number[]): void => {
    g.poly(points).fill(layout.wetWalls ? palette.water : palette.refractory);
  };
  lining([f.x, f.y, right, f.y, right - wall, f.y + wall, f.x + wall, f.y + wall]);
  lining([right, f.y, right, bottom, right - wall, bottom - wall, right - wall, f.y + wall]);
  lining([right, bottom, f.x, bottom, f.x + wall, bottom - wall, right - wall, bottom - wall]);
  for (const [end, side] of [
    [f.y, -1],
    [bottom, 1],
  ]) {
    lining([
      f.x,
      end,
      f.x + wall,
      end - side * wall,
      f.x + wall,
      throat.y + side * half * 1.12,
      f.x,
      throat.y + side * half * 0.86,
    ]);
  }
  g.moveTo(f.x, throat.y - half * 0.86)
    .lineTo(f.x, f.y)
    .lineTo(right, f.y);
  g.lineTo(right, bottom)
    .lineTo(f.x, bottom)
    .lineTo(f.x, throat.y + half * 0.86);
  g.stroke({ width: 2.2, color: palette.ink, join: 'round' });
  g.moveTo(f.x, throat.y - half * 0.86).lineTo(f.x + wall, throat.y - half * 1.12);
  g.lineTo(f.x + wall, f.y + wall).lineTo(right - wall, f.y + wall);
  g.lineTo(right - wall, bottom - wall).lineTo(f.x + wall, bottom - wall);
  g.lineTo(f.x + wall, throat.y + half * 1.12).lineTo(f.x, throat.y + half * 0.86);
  return g.stroke({ width: THIN_PX, color: palette.pipeEdge, join: 'round' });
}
