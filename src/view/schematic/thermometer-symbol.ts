import { Container, Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import type { Rect } from './layout-types.ts';
import { type Drawn, OUTLINE_PX, type SceneContext, THIN_PX } from './scene.ts';
import { thermometerShare } from './vessel-view.ts';

const TICKS = 4;

/** A thermometer on the flow pipe, 0 to 120 °C: bulb, column, and ticks every 30 °C. */
export function createThermometerSymbol(glass: Rect, context: SceneContext): Drawn {
  const { palette, channels, layout } = context;
  const a = layout.scale;
  const temperature = channels.indexOf('vessel.temperature');
  const r = glass.width / 2;
  const x = glass.x + r;
  const bulbY = glass.y + glass.height - r - a;
  const stemWidth = 6 * a;
  const stemTop = glass.y;
  const stemHeight = bulbY - stemTop;
  const ink = { width: OUTLINE_PX, color: palette.ink };
  const g = new Graphics();
  g.moveTo(x + r, bulbY).lineTo(glass.x + glass.width + 10 * a, bulbY);
  g.roundRect(x - stemWidth / 2, stemTop, stemWidth, stemHeight, stemWidth / 2);
  g.stroke(ink);
  g.roundRect(x - stemWidth / 2, stemTop, stemWidth, stemHeight, stemWidth / 2).fill(palette.body);
  for (let i = 1; i < TICKS; i += 1) {
    const y = bulbY - r - ((stemHeight - r) * i) / TICKS;
    g.moveTo(x - stemWidth / 2 - a, y).lineTo(x - stemWidth / 2 - 6 * a, y);
  }
  g.stroke({ width: THIN_PX, color: palette.ink });
  g.circle(x, bulbY, r).fill(palette.ink);
  const column = new Graphics();
  column.rect(x - 1.5 * a, -(stemHeight - r), 3 * a, stemHeight - r).fill(palette.ink);
  column.y = bulbY - r + a;
  let share = -1;
  return {
    node: new Container({ children: [g, column] }),
    show(view) {
      const next = thermometerShare(readAt(view.values, temperature, 293));
      if (next === share) return;
      share = next;
      column.scale.y = share;
    },
  };
}
