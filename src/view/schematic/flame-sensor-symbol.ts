import { Container, Graphics } from 'pixi.js';
import { readAt } from '../channels.ts';
import type { PlacedSymbol } from './layout-types.ts';
import { createLetters } from './letters.ts';
import { placed } from './placed.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';

const SIGNAL_SEEN_UA = 0.3;
const DASH_PX = 6;
const WEAK_SIGHT = 0.4;
const SEEN_SIGHT = 0.85;
const BODY_RADIUS = 14;
const LETTERS: Readonly<Record<string, string>> = { UV: 'UV', IR: 'IR' };

/** The flame sensor: a cell that looks at the flame's foot, or a rod that stands in the flame. */
export function createFlameSensorSymbol(
  place: PlacedSymbol,
  sensorKind: string,
  context: SceneContext,
): Drawn {
  return sensorKind === 'ionisation'
    ? createRod(place, context)
    : createCell(place, LETTERS[sensorKind] ?? '', context);
}

/** A sight tube with its cell's letters; the line of sight firms with a signal. */
function createCell(place: PlacedSymbol, kind: string, context: SceneContext): Drawn {
  const { palette, channels, layout } = context;
  const signal = channels.indexOf('flame.signal');
  const a = layout.scale;
  const target = { x: layout.throat.x + 46 * a, y: layout.throat.y };
  const angle = Math.atan2(target.y - place.y, target.x - place.x);
  const reach = Math.hypot(target.x - place.x, target.y - place.y) / a;
  const sight = new Graphics();
  for (let at = BODY_RADIUS + 12; at < reach; at += 2 * DASH_PX) {
    sight.moveTo(at, 0).lineTo(Math.min(reach, at + DASH_PX), 0);
  }
  sight.stroke({ width: 1.6, color: palette.ink });
  sight.alpha = WEAK_SIGHT;
  const tube = new Graphics();
  tube.rect(BODY_RADIUS - 3, -4.5, 12, 9).fill(palette.body);
  tube.rect(BODY_RADIUS - 3, -4.5, 12, 9).stroke({ width: OUTLINE_PX, color: palette.ink });
  tube.circle(0, 0, BODY_RADIUS).fill(palette.body);
  tube.circle(0, 0, BODY_RADIUS).stroke({ width: OUTLINE_PX, color: palette.ink });
  const letters = createLetters(kind, 13, context);
  const upright = new Container({ children: [letters.sprite] });
  upright.rotation = -angle;
  let seen = false;
  return {
    fixed: placed([tube, upright], place, a, angle),
    node: placed([sight], place, a, angle),
    show(view) {
      const sees = readAt(view.values, signal) > SIGNAL_SEEN_UA;
      if (sees === seen) return;
      seen = sees;
      sight.alpha = seen ? SEEN_SIGHT : WEAK_SIGHT;
    },
    sharpen: letters.sharpen,
  };
}

/** Insulator and rod, bent into the flame; marks between rod and burner while a current flows. */
function createRod(place: PlacedSymbol, context: SceneContext): Drawn {
  const { palette, channels, layout } = context;
  const signal = channels.indexOf('flame.signal');
  const a = layout.scale;
  const at = (x: number, y: number) => ({ x: (x - place.x) / a, y: (y - place.y) / a });
  const foot = at(layout.throat.x - 13 * a, layout.throat.y - 30 * a);
  const tip = at(layout.throat.x + 44 * a, layout.throat.y - 7 * a);
  const g = new Graphics();
  g.moveTo(0, 0)
    .lineTo(foot.x, foot.y)
    .lineTo(tip.x - 12, tip.y - 3)
    .lineTo(tip.x, tip.y);
  g.stroke({ width: 2.4, color: palette.ink, join: 'round', cap: 'round' });
  g.roundRect(-7, -12, 14, 24, 3).fill(palette.body);
  g.roundRect(-7, -12, 14, 24, 3).stroke({ width: OUTLINE_PX, color: palette.ink });
  for (const y of [-5, 1, 7]) g.moveTo(-7, y).lineTo(7, y);
  g.stroke({ width: 1.2, color: palette.ink });
  const marks = new Graphics();
  for (const along of [0.25, 0.55, 0.85]) {
    const x = foot.x + (tip.x - foot.x) * along;
    const y = foot.y + (tip.y - foot.y) * along;
    marks.moveTo(x, y + 5).lineTo(x - 2, y + 12);
  }
  marks.stroke({ width: 1.8, color: palette.ink, cap: 'round' });
  marks.visible = false;
  return {
    fixed: placed([g], place, a),
    node: placed([marks], place, a),
    show(view) {
      const flows = readAt(view.values, signal) > SIGNAL_SEEN_UA;
      if (flows !== marks.visible) marks.visible = flows;
    },
  };
}
