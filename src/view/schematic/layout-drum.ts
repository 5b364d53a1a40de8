import { addLabel, type LayoutContext } from './layout-parts.ts';
import type { Rect } from './layout-types.ts';
import {
  addGauge,
  FLUE_PX,
  GAUGE_PX,
  layFlueFromFurnace,
  layOutlet,
  outletPlace,
  type VesselLayout,
  type VesselRoom,
} from './layout-vessel-parts.ts';
import { shellTopAt } from './vessel-view.ts';

const TUBE_PX = 9;
const NARROWEST_BESIDE_PX = 190;
const WIDEST_PX = 330;

/** A drum over its water tubes, the level gauge beside it. */
export function layDrum(room: VesselRoom, context: LayoutContext): VesselLayout {
  const { a, lineHeightPx: line } = context.m;
  const { furnace, top, left, right } = room;
  const gaugeRoom = (GAUGE_PX + 14) * a;
  const besideRoom = 12 * a + context.sizeOf('level').width;
  /** On a narrow screen the level stands under its gauge, so that the vessel keeps its width. */
  const levelBeside = right - left - gaugeRoom - besideRoom > NARROWEST_BESIDE_PX * a;
  const width = Math.min(right - left - gaugeRoom - (levelBeside ? besideRoom : 0), WIDEST_PX * a);
  const under = levelBeside ? 0 : 2 * line - 8 * a;
  const height = Math.min(furnace.y - 18 * a - top - under, width * 0.62);
  const shell: Rect = { x: left, y: top, width, height };
  const outletX = outletPlace(shell.x + shell.width / 2, context);

  layFlueFromFurnace(room, context);
  const from = { x: outletX, y: shellTopAt(shell, 'water-tube', outletX) };
  const steamEnd = layOutlet('steam', 'vessel.steam', from, room.outletY, context);
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
  const gauge: Rect = {
    x: shell.x + shell.width + 12 * a,
    y: shell.y,
    width: GAUGE_PX * a,
    height: shell.height,
  };
  addGauge('level-gauge', gauge, context);
  addLabel(context, 'level', levelBeside ? 'left' : 'right', (label) =>
    levelBeside
      ? { x: gauge.x + gauge.width + 11 * a, y: gauge.y + gauge.height / 2 - label.height / 2 }
      : {
          x: room.stackTop.x - (FLUE_PX / 2) * a - 8 - label.width,
          y: gauge.y + gauge.height + 4,
        },
  );
  return { shell, gauge, steamEnd, stackTop: room.stackTop };
}
