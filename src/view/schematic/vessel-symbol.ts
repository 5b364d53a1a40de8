import { Container, Graphics, Sprite } from 'pixi.js';
import { readAt } from '../channels.ts';
import type { Point } from './layout-types.ts';
import type { VesselKind } from './plant.ts';
import { type Drawn, OUTLINE_PX, type SceneContext } from './scene.ts';
import { bubbleAlpha, glassShare, shellPoints, waterPoints, waterShare } from './vessel-view.ts';

const BUBBLES = 9;
const RISE_PX_S = 26;
/** Golden-ratio steps spread the bubbles evenly without a pattern. */
const SPREAD = 0.618034;

/** A steam vessel: water to its level, bubbles as it steams, the level glass beside or before it. */
export function createVesselSymbol(
  kind: Exclude<VesselKind, 'hot water'>,
  context: SceneContext,
): Drawn & { readonly back: Graphics } {
  const { layout, palette, channels, textures } = context;
  const { vessel: shell, gauge, scale: a } = layout;
  const level = channels.indexOf('vessel.level');
  const inGlass = channels.indexOf('vessel.gauge-glass');
  const steam = channels.indexOf('vessel.steam');
  const outline = shellPoints(shell, kind);

  const back = new Graphics();
  if (gauge !== null && gauge.x > shell.x + shell.width) {
    for (const y of [gauge.y + 14 * a, gauge.y + gauge.height - 14 * a]) {
      back.moveTo(shell.x + shell.width / 2, y).lineTo(gauge.x, y);
    }
    back.stroke({ width: OUTLINE_PX, color: palette.ink });
  }
  back.poly(flat(outline)).fill(palette.body);
  const water = new Graphics();
  const bubbles = Array.from({ length: BUBBLES }, () => {
    const bubble = new Sprite(textures.bubble);
    bubble.anchor.set(0.5);
    return bubble;
  });
  const front = new Graphics();
  front.poly(flat(outline), true).stroke({ width: 2.2, color: palette.ink });
  const glass = new Graphics();
  const column = new Graphics();
  if (gauge !== null) {
    front.roundRect(gauge.x, gauge.y, gauge.width, gauge.height, 5 * a);
    front.stroke({ width: OUTLINE_PX, color: palette.ink });
    const normal = gauge.y + gauge.height * (1 - glassShare(waterShare(0, kind), shell, gauge));
    front.moveTo(gauge.x - 4 * a, normal).lineTo(gauge.x + 3 * a, normal);
    front.moveTo(gauge.x + gauge.width - 3 * a, normal);
    front.lineTo(gauge.x + gauge.width + 4 * a, normal);
    front.stroke({ width: OUTLINE_PX, color: palette.ink });
    glass.roundRect(gauge.x, gauge.y, gauge.width, gauge.height, 5 * a).fill(palette.body);
    column.rect(
      gauge.x + 3 * a,
      -(gauge.height - 6 * a),
      gauge.width - 6 * a,
      gauge.height - 6 * a,
    );
    column.fill(palette.water);
    column.y = gauge.y + gauge.height - 3 * a;
  }
  const swarm = new Container({ children: bubbles, visible: false });
  const phases = bubbles.map((_none, i) => (i * SPREAD) % 1);
  let share = -1;
  let glassFill = -1;
  let steaming = 0;
  return {
    back,
    fixed: front,
    node: new Container({ children: [water, swarm, glass, column] }),
    show(view) {
      const nextShare = waterShare(readAt(view.values, level), kind);
      if (nextShare !== share) {
        share = nextShare;
        const surface = shell.y + shell.height * (1 - share);
        water.clear();
        water.poly(flat(waterPoints(outline, surface))).fill(palette.water);
      }
      const shown = inGlass < 0 ? share : waterShare(readAt(view.values, inGlass), kind);
      if (gauge !== null && shown !== glassFill) {
        glassFill = shown;
        column.scale.y = glassShare(shown, shell, gauge);
      }
      const alpha = bubbleAlpha(readAt(view.values, steam) / context.flowScale);
      const surface = shell.y + shell.height * (1 - share);
      const bottom = shell.y + shell.height * 0.93;
      if (alpha !== steaming) {
        steaming = alpha;
        swarm.visible = alpha > 0;
        swarm.alpha = alpha;
      }
      if (alpha === 0) return;
      const rise = view.still ? 0 : (RISE_PX_S * a * view.dtS) / Math.max(1, bottom - surface);
      for (let i = 0; i < bubbles.length; i += 1) {
        phases[i] = (phases[i] + rise) % 1;
        const inset = 0.16 + 0.68 * ((i * SPREAD * SPREAD * 7.3) % 1);
        bubbles[i].position.set(
          shell.x + shell.width * inset,
          bottom + (surface + 5 * a - bottom) * phases[i],
        );
        bubbles[i].scale.set(a * (0.5 + 0.5 * phases[i]));
      }
    },
  };
}

function flat(points: readonly Point[]): number[] {
  return points.flatMap((point) => [point.x, point.y]);
}
