import { Graphics } from 'pixi.js';
import type { PlacedSymbol } from './layout-types.ts';
import { OUTLINE_PX, type SceneContext } from './scene.ts';

const HALF = 15;
const RISE = 10;

/** The bow-tie of a valve, its outline, and the filling that shows its opening. */
export function drawBowTie(context: SceneContext): { outline: Graphics; filling: Graphics } {
  const { palette } = context;
  const outline = new Graphics();
  bowTie(outline).fill(palette.body);
  const filling = new Graphics();
  bowTie(filling).fill(palette.ink);
  bowTie(outline).stroke({ width: OUTLINE_PX, color: palette.ink, join: 'round' });
  fillTo(filling, 0);
  return { outline, filling };
}

export function fillTo(filling: Graphics, share: number): void {
  filling.visible = share > 0;
  filling.scale.y = share;
}

function bowTie(g: Graphics): Graphics {
  g.poly([-HALF, -RISE, 0, 0, -HALF, RISE], true);
  return g.poly([HALF, -RISE, 0, 0, HALF, RISE], true);
}

/** Turns a symbol drawn for a level pipe onto an upright one, its actuator to the left. */
export function turnOf(place: PlacedSymbol): number {
  if (!place.upright) return 0;
  return place.actuator === 'right' ? Math.PI / 2 : -Math.PI / 2;
}
