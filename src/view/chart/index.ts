import { indexChannels } from '../channels.ts';
import { paletteOf } from '../palette.ts';
import { siReading } from '../reading.ts';
import { textWidth } from '../text-width.ts';
import { alignExpected, expectedTimeAt, type Stretch } from './alignment.ts';
import { frameOf, standingOf } from './band.ts';
import { type BandPainter, createBandPainter } from './band-painter.ts';
import { createCursorSlider, movedCursor } from './cursor-slider.ts';
import { type ExpectedRun, readExpected } from './expected-run.ts';
import { type ChartGeometry, chartGeometry } from './geometry.ts';
import { laneReading, widestLaneReading } from './lane-reading.ts';
import { createLaneStore, valueAt } from './lane-store.ts';
import { type Lane, type LaneLine, lanesOf } from './lanes.ts';
import { createLayers } from './layers.ts';
import { type Callout, paintFrame, paintReadings } from './overlay-painter.ts';
import { groupSpans, placeStepLabels, spansOf } from './step-labels.ts';
import { gridTimes, lengthFor, type TimeScale } from './time-scale.ts';
import { createTracePainter, type TracePainter } from './trace-painter.ts';
import type { StartChart, StartChartOptions } from './types.ts';

const FRAME_S = 0.1;
const DEFAULT_FONT = '"IBM Plex Sans", "DejaVu Sans", sans-serif';
/** Bands to come and readings are painted this often at most; lines and cursor every frame. */
const BAND_MS = 500;
const READING_MS = 200;
/** A longer batch than this is painted anew rather than added on. */
const LONG_BATCH = 60;
/** So many CSS pixels are whole device pixels at 1.25, 1.5 and 1.75 of them to one. */
const FRACTIONAL_GRAIN_PX = 4;
/** A lane must have been off for so long before it is said; two lanes are said at most. */
const CALLOUT_AFTER_S = 2;
const MOST_CALLOUTS = 2;

/** The start chart in a host element: lanes against time, drawn on plain canvases. */
export function createStartChart(host: HTMLElement, options: StartChartOptions): StartChart {
  const channels = indexChannels(options.channels);
  const { vocabulary } = options;
  const frameS = options.frameS ?? FRAME_S;
  const fontFamily = options.fontFamily ?? DEFAULT_FONT;
  const lanes: readonly Lane[] = lanesOf(options.channels, options.plant);
  const store = createLaneStore(lanes, channels, vocabulary, frameS);
  let message = options.message;
  let reading = options.reading ?? siReading;
  let stepName = options.stepName ?? ((step: string) => step);
  let palette = paletteOf(options.theme ?? 'light');
  let expected: ExpectedRun | null = null;
  let bandPainter: BandPainter | null = null;
  let stretches: readonly Stretch[] = [];
  let alignedMarks = -1;
  let scales: readonly (LaneLine | null)[] = lanes.map((lane) => lane.line);
  let nowS = 0;
  let cursorS: number | null = null;
  let lengthS = 0;
  let g: ChartGeometry;
  let scale: TimeScale;
  let tracePainter: TracePainter;
  let bandsAt = 0;
  let readingsAt = 0;
  let settleTimer: ReturnType<typeof setTimeout> | null = null;
  let alive = true;

  const layers = createLayers(host);
  const slider = createCursorSlider((move) => {
    const times = store.marks.map((mark) => mark.tS);
    scrubTo(movedCursor(move, shownS(), nowS, times), true);
  });
  layers.body.append(slider.element);
  const stopScrubbing = listenToScrub();
  resize();
  void Promise.all(
    ['400', '600'].map((weight) => document.fonts.load(`${weight} 16px ${fontFamily}`)),
  ).then(() => {
    if (alive) paintAll();
  });

  function shownS(): number {
    return cursorS ?? nowS;
  }
  function xOf(tS: number): number {
    return g.plotX + tS * scale.pxPerS;
  }

  function resize(): void {
    g = chartGeometry(
      Math.max(200, host.clientWidth),
      Math.max(60, host.clientHeight),
      lanes.map((lane) => message(lane.name)),
      widestLaneReading(lanes, scales, message, reading),
    );
    layers.resize(g, window.devicePixelRatio || 1);
    slider.reach(g.height - g.headPx - g.footPx);
    paintAll();
  }

  function align(): void {
    stretches =
      expected === null
        ? []
        : alignExpected(store.marks, expected.marks, expected.endS, Math.max(nowS, store.endS));
    alignedMarks = store.marks.length;
  }

  /** Everything anew: after a resize, a longer time axis, another theme or another past. */
  function paintAll(): void {
    align();
    lengthS = lengthFor(lengthS, Math.max(nowS, store.endS), expectedEnd());
    scale = { lengthS, pxPerS: g.plotWidth / lengthS };
    options.onScale?.({ leftPx: g.plotX, pxPerS: scale.pxPerS });
    tracePainter = createTracePainter({
      store,
      g,
      scale,
      palette,
      frameS,
      scales,
      grainPx: Number.isInteger(window.devicePixelRatio) ? 1 : FRACTIONAL_GRAIN_PX,
      isOutside,
    });
    layers.host.style.color = palette.ink;
    paintBands();
    layers.clear('traces');
    tracePainter.paintAll(layers.traces);
    paintNow(true);
  }

  function expectedEnd(): number {
    return stretches[stretches.length - 1]?.untilS ?? expected?.endS ?? 0;
  }

  function paintBands(): void {
    bandsAt = performance.now();
    const labels = placeStepLabels(
      groupSpans(spansOf(store.marks, stretches, nowS), familyOf),
      (tS) => tS * scale.pxPerS,
      g.plotWidth,
      (text, isCurrent) => textWidth(text, g.fontPx, isCurrent ? 600 : 400),
    );
    layers.clear('bands');
    layers.clear('head');
    bandPainter?.paint(layers.bands, stretches, g, scale, palette);
    paintFrame(layers, {
      g,
      scale,
      palette,
      fontFamily,
      laneNames: lanes.map((lane) => message(lane.name)),
      labels,
      stepTimes: spansOf(store.marks, stretches, nowS).map((span) => span.atS),
      gridTimes: gridTimes(scale, 90),
    });
  }

  function familyOf(step: number): string {
    return stepName(vocabulary.steps[step] ?? String(step)).split(':')[0];
  }

  function isOutside(lane: number, value: number, tS: number): boolean {
    const band = expected?.bands[lane] ?? null;
    const at = band === null ? null : expectedTimeAt(stretches, tS);
    if (band === null || at === null) return false;
    const frame = frameOf(band, at);
    return value < band.low[frame] || value > band.high[frame];
  }

  function paintNow(whole: boolean): void {
    const tS = shownS();
    slider.place(xOf(tS));
    const now = performance.now();
    if (!whole && now - readingsAt < READING_MS) {
      settleTimer ??= setTimeout(settle, READING_MS);
      return;
    }
    readingsAt = now;
    layers.clear('overlay');
    paintReadings(layers.overlay, {
      g,
      palette,
      fontFamily,
      nowX: cursorS === null ? null : xOf(nowS),
      cursorX: xOf(tS),
      readings: store.tracks.map((track) =>
        laneReading(track.lane, valueAt(track.line, store, tS, frameS), message, reading),
      ),
      callouts: cursorS === null ? calloutsNow() : [],
    });
    slider.say({
      minS: 0,
      maxS: nowS,
      tS,
      label: message('view.chart.cursor'),
      text: message('view.chart.cursor-at', {
        seconds: tS.toFixed(1),
        step: stepName(vocabulary.steps[stepAt(tS)] ?? ''),
      }),
    });
  }

  function settle(): void {
    settleTimer = null;
    if (alive) paintNow(true);
  }

  function stepAt(tS: number): number {
    return store.marks.filter((mark) => mark.tS <= tS + frameS / 2).pop()?.step ?? -1;
  }

  function calloutsNow(): Callout[] {
    const found: Callout[] = [];
    const current = stretches.filter((stretch) => !stretch.isFuture).pop();
    const lastMark = store.marks[store.marks.length - 1];
    if (expected === null || current === undefined || current.step !== lastMark?.step) return found;
    const endS = store.endS - frameS;
    const at = Math.min(current.toS - frameS, current.fromS + endS - current.atS);
    const overrunS = Math.max(0, endS - current.atS - (current.toS - current.fromS));
    store.tracks.forEach((track, lane) => {
      const band = expected?.bands[lane] ?? null;
      if (band === null || track.line.buckets === 0) return;
      const value = track.line.lastOf(track.line.buckets - 1);
      const standing = standingOf(band, value, at, current, overrunS);
      if (standing.type === 'as expected' || found.length >= MOST_CALLOUTS) return;
      const beforeS = endS - CALLOUT_AFTER_S;
      if (!isOutside(lane, valueAt(track.line, store, beforeS, frameS), beforeS)) return;
      const name = message(track.lane.name);
      found.push({
        lane,
        text:
          standing.type === 'outside'
            ? message('view.chart.outside', { lane: name })
            : message(`view.chart.${standing.type}`, {
                lane: name,
                seconds: Math.round(standing.seconds),
              }),
      });
    });
    return found;
  }

  function scrubTo(tS: number, settled: boolean): void {
    const bounded = Math.min(nowS, Math.max(0, tS));
    cursorS = bounded;
    paintNow(false);
    options.onScrub?.(bounded, settled);
  }

  function listenToScrub(): () => void {
    const at = (event: PointerEvent): number =>
      (event.clientX - layers.body.getBoundingClientRect().left - g.plotX) / scale.pxPerS;
    let dragging = false;
    const down = (event: PointerEvent): void => {
      if (event.button !== 0) return;
      dragging = true;
      layers.body.setPointerCapture(event.pointerId);
      slider.element.focus({ preventScroll: true });
      event.preventDefault();
      scrubTo(at(event), false);
    };
    const move = (event: PointerEvent): void => {
      if (dragging) scrubTo(at(event), false);
    };
    const up = (event: PointerEvent): void => {
      if (!dragging) return;
      dragging = false;
      scrubTo(at(event), true);
    };
    layers.body.addEventListener('pointerdown', down);
    layers.body.addEventListener('pointermove', move);
    layers.body.addEventListener('pointerup', up);
    layers.body.addEventListener('pointercancel', up);
    return () => {
      layers.body.removeEventListener('pointerdown', down);
      layers.body.removeEventListener('pointermove', move);
      layers.body.removeEventListener('pointerup', up);
      layers.body.removeEventListener('pointercancel', up);
    };
  }

  return {
    append(frames, t0S) {
      const isNewPast = store.count > 0 && t0S < store.endS - frameS / 2;
      store.append(frames, t0S);
      nowS = Math.max(isNewPast ? 0 : nowS, store.endS - frameS);
      const longer = lengthFor(lengthS, nowS, expectedEnd());
      if (isNewPast || frames.length > LONG_BATCH || longer !== lengthS) {
        paintAll();
        return;
      }
      if (store.marks.length !== alignedMarks) {
        align();
        paintBands();
      }
      tracePainter.paintOn(layers.traces);
    },
    clear() {
      store.clear();
      nowS = 0;
      cursorS = null;
      lengthS = 0;
      paintAll();
    },
    setExpected(frames) {
      expected =
        frames === null || frames.length === 0
          ? null
          : readExpected(frames, lanes, channels, frameS);
      bandPainter = expected === null ? null : createBandPainter(expected);
      scales = expected?.scales ?? lanes.map((lane) => lane.line);
      lengthS = 0;
      resize();
    },
    showNow(tS) {
      nowS = tS;
      const current = stretches.find((stretch) => stretch.isFuture);
      const pushed = current !== undefined && current.atS < nowS;
      if (pushed && performance.now() - bandsAt > BAND_MS) {
        align();
        if (lengthFor(lengthS, nowS, expectedEnd()) !== lengthS) paintAll();
        else paintBands();
      }
      paintNow(false);
    },
    setCursor(tS) {
      cursorS = tS;
      paintNow(false);
    },
    resize,
    setTheme(theme) {
      palette = paletteOf(theme);
      paintAll();
    },
    setWords(words) {
      message = words.message ?? message;
      reading = words.reading ?? reading;
      stepName = words.stepName ?? stepName;
      resize();
    },
    destroy() {
      alive = false;
      if (settleTimer !== null) clearTimeout(settleTimer);
      stopScrubbing();
      layers.destroy();
    },
  };
}
