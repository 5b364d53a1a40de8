import { Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import { sway } from './flame-view.ts';
import { HEAD_BEFORE_THROAT_PX } from './layout.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const SPARK_SEEN_W = 1;
const SPARK_JUMPS_HZ = 11;

/** The burner cut open: windbox, gas lance and head, air register, pilot tube, electrode. */
export function createBurnerSymbol(context: SceneContext): Drawn {
  const { palette, layout, channels } = context;
  const { windbox, throat, scale: a } = layout;
  const power = channels.indexOf('spark.power');
  const ink = { width: OUTLINE_PX * a, color: palette.ink };
  const g = new Graphics();
  const head = throat.x - HEAD_BEFORE_THROAT_PX * a;
  g.poly([
    head,
    throat.y - 11 * a,
    head + 9 * a,
    throat.y - 7 * a,
    head + 9 * a,
    throat.y + 7 * a,
    head,
    throat.y + 11 * a,
  ]);
  g.fill(palette.ink);
  for (const side of [-1, 1]) {
    for (const step of [0, 1, 2]) {
      const y = throat.y + side * (17 + step * 7) * a;
      g.moveTo(throat.x - 15 * a, y).lineTo(throat.x - 6 * a, y - side * 5 * a);
    }
  }
  g.stroke({ ...ink, cap: 'round' });
  const electrode = { x: throat.x - 2 * a, y: throat.y + 15 * a };
  g.moveTo(electrode.x - 34 * a, windbox.y + windbox.height - 34 * a);
  g.lineTo(electrode.x - 20 * a, electrode.y + 3 * a).lineTo(electrode.x, electrode.y);
  g.stroke(ink);
  const spark = new Graphics();
  spark.poly([0, 0, 7, -5, 5, -8, 14, -14]).stroke({ width: 2.6, color: SPARK_COLOUR });
  spark.poly([0, 0, 9, -3, 8, -7, 15, -12]).stroke({ width: 1.4, color: SPARK_CORE });
  spark.position.set(electrode.x, electrode.y);
  spark.scale.set(a);
  spark.visible = false;
  let alpha = 0;
  return {
    fixed: g,
    node: spark,
    show(view) {
      const on = readAt(view.values, power) > SPARK_SEEN_W;
      const jump = view.still ? 1 : 0.55 + 0.45 * sway(view.clockS * SPARK_JUMPS_HZ * 0.25, 1);
      const next = on ? Math.round(jump * 10) / 10 : 0;
      if (next === alpha) return;
      alpha = next;
      spark.visible = alpha > 0;
      spark.alpha = alpha;
      spark.scale.y = a * (0.8 + 0.4 * alpha);
    },
  };
}
const SPARK_COLOUR = 0x6f7cff;
const SPARK_CORE = 0xffffff;
