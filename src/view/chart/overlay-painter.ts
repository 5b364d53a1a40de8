import type { Palette } from '../palette.ts';
import { textWidth } from '../text-width.ts';
import { type ChartGeometry, laneInside } from './geometry.ts';
import type { Layers } from './layers.ts';
import type { StepLabel } from './step-labels.ts';
import { gridText, type TimeScale } from './time-scale.ts';

export interface FrameParts {
  readonly g: ChartGeometry;
  readonly scale: TimeScale;
  readonly palette: Palette;
  readonly fontFamily: string;
  readonly laneNames: readonly string[];
  readonly labels: readonly StepLabel[];
  readonly stepTimes: readonly number[];
  readonly gridTimes: readonly number[];
}

const BASELINE_EM = 0.34;

/** Lane names and lines, step marks with their names, times under the lanes. */
export function paintFrame(layers: Layers, parts: FrameParts): void {
  const { g, scale, palette, fontFamily } = parts;
  const { bands: pen, head } = layers;
  const lanesHeight = parts.laneNames.length * g.laneHeightPx;
  const right = g.plotX + g.plotWidth;
  pen.lineWidth = 1;
  pen.strokeStyle = palette.faint;
  pen.beginPath();
  parts.laneNames.forEach((_name, i) => {
    const y = (i + 1) * g.laneHeightPx - 0.5;
    pen.moveTo(g.plotX, y);
    pen.lineTo(right, y);
  });
  pen.stroke();
  pen.strokeStyle = palette.line;
  pen.setLineDash([2, 3]);
  pen.beginPath();
  for (const tS of parts.stepTimes) {
    const x = Math.round(g.plotX + tS * scale.pxPerS) + 0.5;
    if (x > right + 1) continue;
    pen.moveTo(x, 0);
    pen.lineTo(x, lanesHeight);
  }
  pen.stroke();
  pen.setLineDash([]);

  pen.font = `400 ${g.fontPx}px ${fontFamily}`;
  pen.fillStyle = palette.ink;
  pen.textAlign = 'right';
  parts.laneNames.forEach((name, i) => {
    pen.fillText(name, g.plotX - 12, (i + 0.5) * g.laneHeightPx + g.fontPx * BASELINE_EM);
  });
  if (g.footPx > 0) {
    pen.fillStyle = palette.dim;
    pen.textAlign = 'center';
    for (const tS of parts.gridTimes) {
      const x = g.plotX + tS * scale.pxPerS;
      if (x > right - 16) continue;
      pen.fillText(gridText(tS), x, lanesHeight + g.footPx / 2 + g.fontPx * BASELINE_EM + 1);
    }
  }

  head.fillStyle = palette.panel;
  head.fillRect(0, 0, g.width, g.headPx);
  head.textAlign = 'left';
  for (const label of parts.labels) {
    head.font = `${label.isCurrent ? 600 : 400} ${g.fontPx}px ${fontFamily}`;
    head.fillStyle = label.isCurrent ? palette.ink : palette.dim;
    head.globalAlpha = label.isFuture ? 0.75 : 1;
    head.fillText(label.text, g.plotX + label.x, g.headPx / 2 + g.fontPx * BASELINE_EM);
  }
  head.globalAlpha = 1;
}

export interface Callout {
  readonly lane: number;
  readonly text: string;
}

export interface ReadingParts {
  readonly g: ChartGeometry;
  readonly palette: Palette;
  readonly fontFamily: string;
  /** The present, while the cursor looks back. */
  readonly nowX: number | null;
  readonly cursorX: number;
  readonly readings: readonly string[];
  readonly callouts: readonly Callout[];
}

const CALLOUT_PADDING_PX = 8;

/** What the lanes read at the cursor, the present's line, and what is not as expected. */
export function paintReadings(pen: CanvasRenderingContext2D, parts: ReadingParts): void {
  const { g, palette, fontFamily } = parts;
  const lanesHeight = parts.readings.length * g.laneHeightPx;
  if (parts.nowX !== null) {
    pen.strokeStyle = palette.dim;
    pen.lineWidth = 1;
    pen.setLineDash([4, 3]);
    pen.beginPath();
    pen.moveTo(Math.round(parts.nowX) + 0.5, 0);
    pen.lineTo(Math.round(parts.nowX) + 0.5, lanesHeight);
    pen.stroke();
    pen.setLineDash([]);
  }
  pen.font = `600 ${g.fontPx}px ${fontFamily}`;
  pen.textAlign = 'left';
  pen.fillStyle = palette.ink;
  parts.readings.forEach((text, i) => {
    pen.fillText(text, g.readingX, (i + 0.5) * g.laneHeightPx + g.fontPx * BASELINE_EM);
  });
  for (const { lane, text } of parts.callouts) {
    const width = textWidth(text, g.fontPx, 400) + 2 * CALLOUT_PADDING_PX;
    const right = g.plotX + g.plotWidth;
    const fits = parts.cursorX + 10 + width <= right;
    const x = fits ? parts.cursorX + 10 : parts.cursorX - 10 - width;
    const { top, height } = laneInside(g, lane);
    const boxHeight = Math.max(g.laneHeightPx - 4, g.fontPx + 2);
    const y = top + height / 2 - boxHeight / 2;
    pen.fillStyle = palette.panel;
    pen.strokeStyle = palette.wrong;
    pen.lineWidth = 1.2;
    pen.beginPath();
    pen.roundRect(x, y, width, boxHeight, 4);
    pen.fill();
    pen.stroke();
    pen.font = `400 ${g.fontPx}px ${fontFamily}`;
    pen.fillStyle = palette.wrong;
    pen.fillText(text, x + CALLOUT_PADDING_PX, y + boxHeight / 2 + g.fontPx * BASELINE_EM);
  }
}
