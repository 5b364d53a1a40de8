import uPlot from 'uplot';
import 'uplot/dist/uPlot.min.css';
import './trends.css';
import type { Display } from '../../quantity/index.ts';
import { gridText } from '../chart/time-scale.ts';
import { paletteOf } from '../palette.ts';
import { figures } from '../reading.ts';
import { textWidth } from '../text-width.ts';
import { axesOf, TREND_STROKES, tickDigits } from './axes.ts';
import { createReadOut } from './read-out.ts';
import { createSampledRun } from './sampled-columns.ts';
import { siDisplay } from './si-display.ts';
import type { Trends, TrendsOptions } from './types.ts';

const FRAME_S = 0.1;
const FONT_PX = 16;
const DEFAULT_FONT = '"IBM Plex Sans", "DejaVu Sans", sans-serif';
/** A growing run is drawn anew this often at most. */
const REDRAW_MS = 400;
const SHORTEST_S = 30;
const CLOSEST_S = 2;
const NOT_THERE = '–';

/** The trends in a host element: any recorded quantities against time. */
export function createTrends(host: HTMLElement, options: TrendsOptions): Trends {
  const { channels } = options;
  const frameS = options.frameS ?? FRAME_S;
  const fontFamily = options.fontFamily ?? DEFAULT_FONT;
  const places = new Map(channels.map((channel, place) => [channel.id, place]));
  const run = createSampledRun(frameS);
  let message = options.message;
  let nameOf = options.nameOf;
  let displayOf = options.displayOf ?? siDisplay(channels);
  let theme = options.theme ?? 'light';
  let chosen: readonly string[] = [];
  let plot: uPlot | null = null;
  let range: { fromS: number; toS: number } | null = null;
  let nowS = 0;
  let hoverS: number | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;

  const frame = document.createElement('div');
  frame.className = 'trend-frame';
  const readOut = createReadOut();
  const plotHost = document.createElement('div');
  plotHost.className = 'trend-plot';
  frame.append(readOut.element, plotHost);
  host.append(frame);
  build();

  function build(): void {
    plot?.destroy();
    const palette = paletteOf(theme);
    const isDark = theme === 'dark';
    const axes = axesOf(channels, chosen, displayOf);
    readOut.setNames(chosen.map(nameOf), palette, isDark);
    const font = `${FONT_PX}px ${fontFamily}`;
    const grid = { stroke: palette.faint, width: 1 };
    plot = new uPlot(
      {
        width: Math.max(120, plotHost.clientWidth),
        height: Math.max(80, plotHost.clientHeight),
        legend: { show: false },
        cursor: { y: false, drag: { x: true, y: false, setScale: false } },
        scales: {
          x: { time: false },
          ...Object.fromEntries(axes.map(({ symbol }) => [symbol, { auto: true }])),
        },
        axes: [
          {
            stroke: palette.dim,
            font,
            grid,
            ticks: grid,
            size: 34,
            space: 80,
            values: (_plot, splits) => splits.map(gridText),
          },
          ...axes.map(({ symbol }, i) => ({
            scale: symbol,
            side: i % 2 === 0 ? 3 : 1,
            stroke: palette.dim,
            font,
            grid: i === 0 ? grid : { show: false },
            ticks: grid,
            size: (_plot: uPlot, values: string[] | null) =>
              18 + Math.max(20, ...(values ?? []).map((text) => textWidth(text, FONT_PX, 400))),
            values: (_plot: uPlot, splits: number[]) => {
              const digits = tickDigits(Math.abs((splits[1] ?? 1) - (splits[0] ?? 0)) || 1);
              return splits.map((value) => withSymbol(figures(value, digits), symbol));
            },
          })),
        ],
        series: [
          {},
          ...chosen.map((id, i) => {
            const stroke = TREND_STROKES[i % TREND_STROKES.length];
            return {
              scale: displayOf(id).symbol,
              stroke: isDark ? stroke.dark : stroke.light,
              dash: [...stroke.dash],
              width: 2,
              points: { show: false },
            };
          }),
        ],
        hooks: {
          setCursor: [
            (self) => {
              const { left } = self.cursor;
              hoverS = left === undefined || left < 0 ? null : self.posToVal(left, 'x');
              options.onMoment?.(hoverS);
              sayValues();
            },
          ],
          setSelect: [
            (self) => {
              const { left, width } = self.select;
              if (width < 4) return;
              range = { fromS: self.posToVal(left, 'x'), toS: self.posToVal(left + width, 'x') };
              self.setSelect({ left: 0, top: 0, width: 0, height: 0 }, false);
              redraw();
            },
          ],
          draw: [(self) => drawNow(self, palette.dim)],
        },
      },
      [[]],
      plotHost,
    );
    plot.over.addEventListener('dblclick', () => {
      range = null;
      redraw();
    });
    redraw();
  }

  function seen(): { fromS: number; toS: number } {
    return range ?? { fromS: run.originS, toS: Math.max(run.endS, run.originS + SHORTEST_S) };
  }

  function redraw(): void {
    if (timer !== null) clearTimeout(timer);
    timer = null;
    if (plot === null) return;
    const { fromS, toS } = seen();
    const displays = chosen.map(displayOf);
    const { times, values } = run.columns(
      chosen.map((id) => places.get(id) ?? -1),
      fromS,
      toS,
      Math.max(100, plot.width),
    );
    const shown = values.map((column, i) =>
      column.map((value) => value * displays[i].factor + displays[i].offset),
    );
    plot.setData([times, ...shown], false);
    plot.batch(() => {
      plot?.setScale('x', { min: fromS, max: toS });
    });
    sayValues();
  }

  function redrawSoon(): void {
    timer ??= setTimeout(redraw, REDRAW_MS);
  }

  function sayValues(): void {
    const tS = hoverS ?? nowS;
    readOut.say(
      message('view.trends.at', { seconds: tS.toFixed(1) }),
      chosen.map((id) => {
        const value = run.valueAt(places.get(id) ?? -1, tS);
        return value === null ? NOT_THERE : shownValue(value, displayOf(id));
      }),
    );
  }

  function drawNow(self: uPlot, colour: string): void {
    const x = self.valToPos(nowS, 'x', true);
    const { left, top, width, height } = self.bbox;
    if (x < left || x > left + width) return;
    self.ctx.save();
    self.ctx.strokeStyle = colour;
    self.ctx.lineWidth = 1;
    self.ctx.beginPath();
    self.ctx.moveTo(Math.round(x) + 0.5, top);
    self.ctx.lineTo(Math.round(x) + 0.5, top + height);
    self.ctx.stroke();
    self.ctx.restore();
  }

  function move(fromS: number, toS: number): void {
    const all = { fromS: run.originS, toS: Math.max(run.endS, run.originS + SHORTEST_S) };
    const length = Math.min(all.toS - all.fromS, Math.max(CLOSEST_S, toS - fromS));
    if (length >= all.toS - all.fromS) range = null;
    else {
      const start = Math.min(all.toS - length, Math.max(all.fromS, (fromS + toS - length) / 2));
      range = { fromS: start, toS: start + length };
    }
    redraw();
  }

  return {
    setQuantities(channelIds) {
      chosen = channelIds.filter((id) => places.has(id));
      build();
    },
    append(frames, t0S) {
      run.append(frames, t0S);
      redrawSoon();
    },
    clear() {
      run.clear();
      range = null;
      redraw();
    },
    showNow(tS) {
      if (tS === nowS) return;
      nowS = tS;
      redrawSoon();
    },
    zoomTo(next) {
      if (next === null) {
        range = null;
        redraw();
      } else move(next.fromS, next.toS);
    },
    zoomBy(factor) {
      const { fromS, toS } = seen();
      const half = (toS - fromS) / 2 / factor;
      move((fromS + toS) / 2 - half, (fromS + toS) / 2 + half);
    },
    panBy(seconds) {
      const { fromS, toS } = seen();
      move(fromS + seconds, toS + seconds);
    },
    resize() {
      plot?.setSize({
        width: Math.max(120, plotHost.clientWidth),
        height: Math.max(80, plotHost.clientHeight),
      });
      redraw();
    },
    setTheme(next) {
      theme = next;
      build();
    },
    setWords(words) {
      message = words.message ?? message;
      nameOf = words.nameOf ?? nameOf;
      displayOf = words.displayOf ?? displayOf;
      build();
    },
    destroy() {
      if (timer !== null) clearTimeout(timer);
      plot?.destroy();
      plot = null;
      frame.remove();
    },
  };
}

function shownValue(value: number, display: Display): string {
  return withSymbol(
    figures(value * display.factor + display.offset, display.digits),
    display.symbol,
  );
}

function withSymbol(text: string, symbol: string): string {
  return symbol === '' || symbol === '°' ? `${text}${symbol}` : `${text} ${symbol}`;
}
