import { textWidth } from '../text-width.ts';

/** Where things stand in the chart, CSS px. */
export interface ChartGeometry {
  readonly width: number;
  readonly height: number;
  readonly fontPx: number;
  readonly headPx: number;
  /** Height of the row of times under the lanes; 0 where there is no room for it. */
  readonly footPx: number;
  readonly laneHeightPx: number;
  readonly plotX: number;
  readonly plotWidth: number;
  readonly readingX: number;
}

const FONT_PX = 16;
const HEAD_PX = 23;
const FOOT_PX = 22;
/** Letters of 16 px stand in a lane of this height without touching their neighbours. */
const LOWEST_LANE_PX = 18;
const HIGHEST_LANE_PX = 34;
const GAP_PX = 14;

/**
 * Lanes share the height; where they would get too low they keep their least height and
 * the chart is scrolled.
 */
export function chartGeometry(
  width: number,
  hostHeight: number,
  laneNames: readonly string[],
  widestReading: string,
): ChartGeometry {
  const lanes = Math.max(1, laneNames.length);
  const names = Math.max(0, ...laneNames.map((name) => textWidth(name, FONT_PX, 400)));
  const reading = Math.ceil(textWidth(widestReading, FONT_PX, 600));
  const spare = hostHeight - HEAD_PX - FOOT_PX - lanes * (LOWEST_LANE_PX + 1);
  const footPx = spare >= 0 ? FOOT_PX : 0;
  const laneHeightPx = Math.max(
    LOWEST_LANE_PX,
    Math.min(HIGHEST_LANE_PX, Math.floor((hostHeight - HEAD_PX - footPx) / lanes)),
  );
  const plotX = Math.ceil(names) + 2 * GAP_PX;
  const readingX = width - reading - GAP_PX;
  return {
    width,
    height: HEAD_PX + lanes * laneHeightPx + footPx,
    fontPx: FONT_PX,
    headPx: HEAD_PX,
    footPx,
    laneHeightPx,
    plotX,
    plotWidth: Math.max(40, readingX - GAP_PX - plotX),
    readingX,
  };
}

/** So much a chart can make use of: higher, it would leave the rest empty. */
export function tallestChartPx(lanes: number): number {
  return HEAD_PX + lanes * HIGHEST_LANE_PX + FOOT_PX;
}

export interface LaneInside {
  /** Top and height of the part its line moves in. */
  readonly top: number;
  readonly height: number;
  /** Top of the strip under it that says what is proved. */
  readonly provedY: number;
}
export const PROVED_PX = 3;

export function laneInside(g: ChartGeometry, lane: number): LaneInside {
  const top = lane * g.laneHeightPx + 2;
  const provedY = (lane + 1) * g.laneHeightPx - PROVED_PX - 1;
  return { top, height: provedY - 2 - top, provedY };
}
