import type { Palette } from '../palette.ts';
import type { Stretch } from './alignment.ts';
import { frameOf } from './band.ts';
import { type ExpectedRun, shareOf } from './expected-run.ts';
import { type ChartGeometry, laneInside } from './geometry.ts';
import type { TimeScale } from './time-scale.ts';

/** Paths of one step of the expected run: x in its seconds, y from 0 (top) to 1 (bottom). */
interface StepPaths {
  readonly under: readonly (Path2D | null)[];
  readonly strip: readonly (Path2D | null)[];
}

/** Paints what was expected, behind everything else. */
export interface BandPainter {
  paint(
    pen: CanvasRenderingContext2D,
    stretches: readonly Stretch[],
    g: ChartGeometry,
    scale: TimeScale,
    palette: Palette,
  ): void;
}

/** No step is drawn with more points than this. */
const MOST_POINTS = 120;

/** The paths are made once; each painting only lays them out along the actual run. */
export function createBandPainter(run: ExpectedRun): BandPainter {
  const byStart = new Map<number, StepPaths>();
  run.marks.forEach((mark, i) => {
    byStart.set(mark.tS, pathsOf(run, mark.tS, run.marks[i + 1]?.tS ?? run.endS));
  });
  return {
    paint(pen, stretches, g, scale, palette) {
      for (const stretch of stretches) {
        const paths = byStart.get(stretch.fromS);
        if (paths === undefined) continue;
        paintStretch(pen, stretch, paths, run, g, scale, palette);
      }
    },
  };
}

function paintStretch(
  pen: CanvasRenderingContext2D,
  stretch: Stretch,
  paths: StepPaths,
  run: ExpectedRun,
  g: ChartGeometry,
  scale: TimeScale,
  palette: Palette,
): void {
  const x = (tS: number): number => g.plotX + tS * scale.pxPerS;
  const length = stretch.toS - stretch.fromS;
  const shownEnd = Math.min(stretch.untilS, stretch.atS + length);
  const clipped = shownEnd < stretch.atS + length - 1e-9;
  pen.save();
  if (clipped) {
    pen.beginPath();
    pen.rect(x(stretch.atS), 0, (shownEnd - stretch.atS) * scale.pxPerS, g.height);
    pen.clip();
  }
  const base = pen.getTransform();
  for (let lane = 0; lane < paths.under.length; lane += 1) {
    const { top, height } = laneInside(g, lane);
    const under = paths.under[lane];
    const strip = paths.strip[lane];
    pen.setTransform(base);
    pen.translate(x(stretch.atS - stretch.fromS), top);
    pen.scale(scale.pxPerS, height);
    if (under !== null) {
      pen.fillStyle = palette.faint;
      pen.fill(under);
    }
    if (strip !== null) {
      pen.fillStyle = palette.line;
      pen.fill(strip);
    }
  }
  pen.restore();
  if (stretch.untilS > shownEnd + 1e-9) {
    paintHeld(pen, stretch, x(shownEnd), x(stretch.untilS), run, g, palette);
  }
}

/** What was expected at the end of a step goes on while the actual step lasts longer. */
function paintHeld(
  pen: CanvasRenderingContext2D,
  stretch: Stretch,
  fromX: number,
  toX: number,
  run: ExpectedRun,
  g: ChartGeometry,
  palette: Palette,
): void {
  run.bands.forEach((band, lane) => {
    const scale = run.scales[lane];
    if (band === null || scale === null) return;
    const last = frameOf(band, stretch.toS - run.frameS);
    const { top, height } = laneInside(g, lane);
    const y = (value: number): number => top + height * (1 - shareOf(scale, value));
    pen.fillStyle = palette.faint;
    pen.fillRect(fromX, y(band.value[last]), toX - fromX, top + height - y(band.value[last]));
    pen.fillStyle = palette.line;
    pen.fillRect(fromX, y(band.high[last]), toX - fromX, y(band.low[last]) - y(band.high[last]));
  });
}

function pathsOf(run: ExpectedRun, fromS: number, toS: number): StepPaths {
  const first = Math.round(fromS / run.frameS);
  const last = Math.max(first, Math.round(toS / run.frameS) - 1);
  const stride = Math.max(1, Math.ceil((last - first) / MOST_POINTS));
  const frames: number[] = [];
  for (let i = first; i < last; i += stride) frames.push(i);
  frames.push(last);
  const time = (i: number): number => (i === last ? toS : i * run.frameS);
  const under: (Path2D | null)[] = [];
  const strip: (Path2D | null)[] = [];
  run.bands.forEach((band, lane) => {
    const scale = run.scales[lane];
    if (band === null || scale === null) {
      under.push(null);
      strip.push(null);
      return;
    }
    const depth = (value: number): number => 1 - shareOf(scale, value);
    const area = new Path2D();
    area.moveTo(fromS, 1);
    for (const i of frames) area.lineTo(time(i), depth(band.value[i]));
    area.lineTo(toS, 1);
    area.closePath();
    const hull = new Path2D();
    frames.forEach((i, k) => {
      if (k === 0) hull.moveTo(fromS, depth(band.high[i]));
      else hull.lineTo(time(i), depth(band.high[i]));
    });
    for (let k = frames.length - 1; k >= 0; k -= 1) {
      const i = frames[k];
      hull.lineTo(k === 0 ? fromS : time(i), depth(band.low[i]));
    }
    hull.closePath();
    under.push(area);
    strip.push(hull);
  });
  return { under, strip };
}
