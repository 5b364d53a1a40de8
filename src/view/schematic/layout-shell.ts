import { addLabel, type LayoutContext } from './layout-parts.ts';
import type { Point, Rect } from './layout-types.ts';
import {
  addGauge,
  GAUGE_PX,
  layFlue,
  layOutlet,
  outletPlace,
  type VesselLayout,
  type VesselRoom,
} from './layout-vessel-parts.ts';
import { GLASS_SHARE, shellTopAt } from './vessel-view.ts';

const WIDEST_PX = 340;
const NARROWEST_PX = 140;
const TUBES_PX = 18;
const TUBES_A_PASS = 3;
/** Shares of the shell's height at which the gases go back to the burner's end, and out again. */
const BACK_SHARE = 0.88;
const OUT_SHARE = 0.68;
const GLASS_FROM_END_PX = 30;

/**
 * A shell around furnace and fire tubes: the gases turn at the furnace's far end, go back
 * through the tubes under the water to the burner's end, and out through those above them.
 */
export function layShell(room: VesselRoom, context: LayoutContext): VesselLayout {
  const { a } = context.m;
  const { furnace, top, left, right } = room;
  const labelRoom = 8 * a + context.sizeOf('level').width;
  // Where a reading beside it would leave a shell too narrow, the free room left of it takes that.
  const isNarrow = right - left - labelRoom < NARROWEST_PX * a;
  const width = Math.min(right - left - (isNarrow ? 0 : labelRoom), WIDEST_PX * a);
  const shell: Rect = { x: left, y: top, width, height: furnace.y - top };
  const outletX = outletPlace(shell.x + shell.width / 2, context);
  const from = { x: outletX, y: shellTopAt(shell, 'fire-tube', outletX) };
  const steamEnd = layOutlet('steam', 'vessel.steam', from, room.outletY, context);

  const end = shell.x + shell.width;
  const backY = shell.y + shell.height * BACK_SHARE;
  const outY = shell.y + shell.height * OUT_SHARE;
  const turnX = end - 22 * a;
  const frontX = shell.x + 20 * a;
  const pass = (id: string, points: readonly Point[]): void => {
    context.parts.pipes.push({
      id,
      medium: 'flue',
      widthPx: TUBES_PX * a,
      flow: 'air.flow',
      inVessel: true,
      tubes: TUBES_A_PASS,
      points,
    });
  };
  pass('pass:back', [
    { x: turnX, y: furnace.y + 12 * a },
    { x: turnX, y: backY },
    { x: frontX, y: backY },
    { x: frontX, y: outY },
    { x: end, y: outY },
  ]);
  layFlue({ x: end, y: outY }, room, context);

  const gauge: Rect = {
    x: isNarrow ? shell.x + (GLASS_FROM_END_PX - GAUGE_PX) * a : end - GLASS_FROM_END_PX * a,
    y: shell.y + 6 * a,
    width: GAUGE_PX * a,
    height: shell.height * GLASS_SHARE - 6 * a,
  };
  addGauge('level-gauge', gauge, context);
  addLabel(context, 'level', isNarrow ? 'right' : 'left', (label) => ({
    x: isNarrow ? shell.x - 8 * a - label.width : end + 8 * a,
    y: Math.min(gauge.y + gauge.height / 2 - label.height / 2, outY - 16 * a - 4 - label.height),
  }));
  return { shell, gauge, steamEnd, stackTop: room.stackTop };
}
