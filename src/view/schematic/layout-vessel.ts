import { addLabel, type LayoutContext } from './layout-parts.ts';
import { type Point, type Rect, rectAround } from './layout-types.ts';
import type { VesselKind } from './plant.ts';
import { shellTopAt } from './vessel-view.ts';

export interface VesselLayout {
  readonly shell: Rect;
  readonly gauge: Rect | null;
  readonly steamEnd: Point;
  readonly stackTop: Point;
}

export const FLUE_PX = 32;
const STEAM_PIPE_PX = 12;
const TUBE_PX = 9;
const GAUGE_PX = 14;
const STEAM_LABEL_PX = 22;
const SHORTEST_OUTLET_PX = 26;
const NARROWEST_BESIDE_PX = 190;
/** Share of the furnace's height at which the flue leaves it. */
const FLUE_HEIGHT_SHARE = 0.58;

/** The vessel above the furnace, its outlet and gauge, and the flue at the right. */
/** @param leftX what stands to the left of the vessel ends here */
export function layVessel(
  kind: VesselKind,
  furnace: Rect,
  leftX: number,
  context: LayoutContext,
): VesselLayout {
  const { a, lineHeightPx: line, marginPx: margin, size } = context.m;
  const furnaceRight = furnace.x + furnace.width;
  const stackX = size.width - margin - (FLUE_PX / 2 + 8) * a;
  const flueY = furnace.y + furnace.height * FLUE_HEIGHT_SHARE;
  const stackTop = { x: stackX, y: margin + 44 * a };

  const outletY = margin + line / 2;
  const top = outletY + Math.max(line / 2 + 6, 18 * a);
  const shellX = Math.max(furnace.x + 24 * a, leftX + 12);
  const room = stackX - (FLUE_PX / 2) * a - 12 * a - shellX;
  const gaugeRoom = kind === 'hot water' ? 0 : (GAUGE_PX + 14) * a;
  const besideRoom = gaugeRoom === 0 ? 0 : 12 * a + context.sizeOf('level').width;
  /** On a narrow screen the level stands under its gauge, so that the vessel keeps its width. */
  const levelBeside = room - gaugeRoom - besideRoom > NARROWEST_BESIDE_PX * a;
  const width = Math.min(room - gaugeRoom - (levelBeside ? besideRoom : 0), 330 * a);
  const attached = kind === 'fire-tube' && levelBeside;
  const bottom = furnace.y - (attached ? 0 : 18 * a);
  const fullHeight = bottom - top - (levelBeside || gaugeRoom === 0 ? 0 : 2 * line - 8 * a);
  const shell: Rect = { x: shellX, y: top, width, height: Math.min(fullHeight, width * 0.62) };
  const hot = kind === 'hot water';
  const furthestX = size.width - margin - context.sizeOf('steam').width - STEAM_LABEL_PX * a;
  const outletX = Math.min(shell.x + shell.width / 2, furthestX - SHORTEST_OUTLET_PX * a);

  context.parts.pipes.push({
    id: 'flue',
    medium: 'flue',
    widthPx: FLUE_PX * a,
    flow: 'air.flow',
    points: [{ x: furnaceRight, y: flueY }, { x: stackX, y: flueY }, stackTop],
  });
  const steamEnd = { x: Math.min(outletX + 64 * a, furthestX), y: outletY };
  context.parts.pipes.push({
    id: 'outlet',
    medium: hot ? 'water' : 'steam',
    widthPx: STEAM_PIPE_PX * a,
    arrow: true,
    ...(!hot && { flow: 'vessel.steam' }),
    points: [
      { x: outletX, y: shellTopAt(shell, kind, outletX) },
      { x: outletX, y: outletY },
      steamEnd,
    ],
  });
  if (kind === 'water-tube') {
    for (const share of levelBeside ? [0.2, 0.4, 0.6, 0.8] : [0.1, 0.27, 0.44, 0.61]) {
      const x = shell.x + shell.width * share;
      context.parts.pipes.push({
        id: `tube:${share}`,
        medium: 'water',
        widthPx: TUBE_PX * a,
        points: [
          { x, y: shell.y + shell.height * 0.6 },
          { x, y: furnace.y },
        ],
      });
    }
  }
  addLabel(context, 'vessel', 'right', (label) => ({
    x: outletX - 14 * a - label.width,
    y: outletY - line / 2,
  }));
  addLabel(context, 'steam', 'left', (label) => ({
    x: steamEnd.x + STEAM_LABEL_PX * a,
    y: outletY - label.height / 2,
  }));
  addLabel(context, 'stack', 'left', () => ({
    x: furnaceRight + 10 * a,
    y: flueY + (FLUE_PX / 2) * a + 8 * a,
  }));
  context.parts.symbols.push({
    id: 'stack',
    kind: 'stack',
    x: stackX,
    y: (stackTop.y + flueY) / 2,
    upright: true,
    box: rectAround(stackX, (stackTop.y + flueY) / 2, FLUE_PX * a, flueY - stackTop.y),
  });
  if (hot) return { shell, gauge: null, steamEnd, stackTop };

  const gauge: Rect = {
    x: shell.x + shell.width + 12 * a,
    y: shell.y,
    width: GAUGE_PX * a,
    height: shell.height,
  };
  context.parts.symbols.push({
    id: 'level-gauge',
    kind: 'level-gauge',
    x: gauge.x + gauge.width / 2,
    y: gauge.y + gauge.height / 2,
    upright: true,
    box: gauge,
  });
  addLabel(context, 'level', levelBeside ? 'left' : 'right', (label) =>
    levelBeside
      ? { x: gauge.x + gauge.width + 6 * a, y: gauge.y + gauge.height / 2 - label.height / 2 }
      : {
          x: stackX - (FLUE_PX / 2) * a - 8 - label.width,
          y: gauge.y + gauge.height + 4,
        },
  );
  return { shell, gauge, steamEnd, stackTop };
}
