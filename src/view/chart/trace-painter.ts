import { cssColour, mixColours, type Palette } from '../palette.ts';
import type { DecimatedSeries } from './decimated-series.ts';
import { shareOf } from './expected-run.ts';
import { type ChartGeometry, laneInside, PROVED_PX } from './geometry.ts';
import type { LaneStore, LaneTrack } from './lane-store.ts';
import type { LaneLine } from './lanes.ts';
import type { TimeScale } from './time-scale.ts';

/** Paints what was told, done and proved; goes on from where it stopped, or starts over. */
export interface TracePainter {
  /** Paint all that is kept. */
  paintAll(pen: CanvasRenderingContext2D): void;
  /** Paint only what came since the last painting. */
  paintOn(pen: CanvasRenderingContext2D): void;
}

export interface TraceContext {
  readonly store: LaneStore;
  readonly g: ChartGeometry;
  readonly scale: TimeScale;
  readonly palette: Palette;
  readonly frameS: number;
  readonly scales: readonly (LaneLine | null)[];
  /** Width of the columns painted at a time, CSS px: whole device pixels. */
  readonly grainPx: number;
  /** Whether a lane's value at a moment was outside its expected band. */
  isOutside(lane: number, value: number, tS: number): boolean;
}

/** Two whole pixels: a line at rest covers them exactly, whatever pieces it is painted in. */
const LINE_PX = 2;
const BAR_SHARE = 0.62;
const BAR_STRENGTH = 0.38;

export function createTracePainter(context: TraceContext): TracePainter {
  const { store, g, scale, palette } = context;
  const barColour = cssColour(mixColours(palette.panel, palette.accent, BAR_STRENGTH));
  let lastColumn = g.plotX;
  const xOfFrame = (frame: number): number =>
    g.plotX + (store.originS + frame * context.frameS) * scale.pxPerS;

  /**
   * Whole pixel columns, each painted once from a path that goes on to both sides: pieces
   * that merely touched would show a seam, and pieces that overlap a dark one.
   */
  function paintRange(pen: CanvasRenderingContext2D, from: number, to: number): void {
    const column = columnAt(xOfFrame(to - 1));
    if (column <= lastColumn) return;
    pen.save();
    pen.beginPath();
    pen.rect(lastColumn, 0, column - lastColumn, g.height);
    pen.clip();
    store.tracks.forEach((track, lane) => {
      paintBars(pen, track, lane, lastColumn, column);
      paintLine(pen, track, lane, from, to, true);
      paintLine(pen, track, lane, from, to, false);
    });
    pen.restore();
    lastColumn = column;
  }

  function frameAt(x: number): number {
    return Math.floor(((x - g.plotX) / scale.pxPerS - store.originS) / context.frameS);
  }

  function columnAt(x: number): number {
    return g.plotX + Math.floor((x - g.plotX) / context.grainPx) * context.grainPx;
  }

  function paintBars(
    pen: CanvasRenderingContext2D,
    track: LaneTrack,
    lane: number,
    from: number,
    to: number,
  ): void {
    const { top, height, provedY } = laneInside(g, lane);
    const bars = track.commanded.length;
    const thickness = (height * BAR_SHARE) / Math.max(1, bars);
    track.commanded.forEach((series, i) => {
      const y = top + height - thickness * (i + 1) + (i > 0 ? -1 : 0);
      paintBar(pen, series, y, thickness, i === 0 ? barColour : palette.accent, from, to);
    });
    paintBar(pen, track.proved, provedY, PROVED_PX, palette.good, from, to);
  }

  function paintBar(
    pen: CanvasRenderingContext2D,
    series: DecimatedSeries,
    y: number,
    thickness: number,
    colour: string,
    from: number,
    to: number,
  ): void {
    pen.fillStyle = colour;
    let start = -1;
    for (let x = from; x <= to; x += 1) {
      const on = x < to && isOnAt(series, x);
      if (on && start < 0) start = x;
      if (!on && start >= 0) {
        pen.fillRect(start, y, x - start, thickness);
        start = -1;
      }
    }
  }

  /** Whether a series is on anywhere in a pixel column. */
  function isOnAt(series: DecimatedSeries, x: number): boolean {
    const framesPerColumn = 1 / (scale.pxPerS * context.frameS);
    const frame = (x - g.plotX) * framesPerColumn - store.originS / context.frameS;
    if (frame + framesPerColumn <= 0) return false;
    const first = Math.max(0, Math.floor(frame / series.bucketSize));
    const end = Math.max(first + 1, Math.floor((frame + framesPerColumn) / series.bucketSize));
    for (let b = first; b < Math.min(end, series.buckets); b += 1) {
      if (series.greatestOf(b) > 0) return true;
    }
    return false;
  }

  function paintLine(
    pen: CanvasRenderingContext2D,
    track: LaneTrack,
    lane: number,
    from: number,
    to: number,
    isAsked: boolean,
  ): void {
    const line = context.scales[lane];
    if (line === null || (isAsked && track.lane.asked === null)) return;
    const series = isAsked ? track.asked : track.line;
    const { top, height } = laneInside(g, lane);
    const yOf = (value: number): number => top + height * (1 - shareOf(line, value));
    const size = series.bucketSize;
    const firstBucket = Math.max(0, Math.floor(from / size) - 1);
    const lastBucket = Math.min(series.buckets - 1, Math.floor(to / size));
    pen.lineWidth = isAsked ? 1 : LINE_PX;
    pen.lineJoin = 'round';
    let outside: boolean | null = null;
    let open = false;
    for (let b = firstBucket; b <= lastBucket; b += 1) {
      const x = xOfFrame(b * size);
      const now =
        !isAsked &&
        context.isOutside(lane, series.lastOf(b), store.originS + b * size * context.frameS);
      if (now !== outside) {
        if (open) {
          pen.lineTo(x, yOf(series.lastOf(b)));
          pen.stroke();
        }
        pen.strokeStyle = isAsked ? palette.dim : now ? palette.wrong : palette.accent;
        pen.beginPath();
        pen.moveTo(x, yOf(series.lastOf(b)));
        open = true;
        outside = now;
        continue;
      }
      if (size > 1) {
        pen.lineTo(x, yOf(series.leastOf(b)));
        pen.lineTo(x, yOf(series.greatestOf(b)));
      }
      pen.lineTo(x, yOf(series.lastOf(b)));
    }
    if (open) pen.stroke();
  }

  return {
    paintAll(pen) {
      lastColumn = columnAt(xOfFrame(0));
      if (store.count > 0) paintRange(pen, 0, store.count);
    },
    paintOn(pen) {
      paintRange(pen, Math.max(0, frameAt(lastColumn) - 2), store.count);
    },
  };
}
