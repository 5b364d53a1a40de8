import type { Palette } from '../palette.ts';
import { TREND_STROKES } from './axes.ts';

/** The row of names and values over the trends: what each line is, and what it reads. */
export interface ReadOut {
  readonly element: HTMLElement;
  setNames(names: readonly string[], palette: Palette, isDark: boolean): void;
  say(time: string, values: readonly string[]): void;
}

export function createReadOut(): ReadOut {
  const element = document.createElement('div');
  element.className = 'trend-read-out';
  const time = document.createElement('span');
  time.className = 'trend-time';
  const list = document.createElement('dl');
  element.append(time, list);
  let cells: HTMLElement[] = [];
  return {
    element,
    setNames(names, palette, isDark) {
      element.style.color = palette.ink;
      time.style.color = palette.dim;
      cells = [];
      list.replaceChildren(
        ...names.map((name, i) => {
          const entry = document.createElement('div');
          const term = document.createElement('dt');
          term.style.color = palette.dim;
          const value = document.createElement('dd');
          term.append(sampleLine(i, isDark), name);
          entry.append(term, value);
          cells.push(value);
          return entry;
        }),
      );
    },
    say(text, values) {
      if (time.textContent !== text) time.textContent = text;
      values.forEach((value, i) => {
        const cell = cells[i];
        if (cell !== undefined && cell.textContent !== value) cell.textContent = value;
      });
    },
  };
}

function sampleLine(i: number, isDark: boolean): SVGElement {
  const stroke = TREND_STROKES[i % TREND_STROKES.length];
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
  svg.setAttribute('width', '28');
  svg.setAttribute('height', '10');
  svg.setAttribute('aria-hidden', 'true');
  const line = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  line.setAttribute('d', 'M1 5H27');
  line.setAttribute('stroke', isDark ? stroke.dark : stroke.light);
  line.setAttribute('stroke-width', '2.5');
  line.setAttribute('stroke-dasharray', stroke.dash.join(' '));
  svg.append(line);
  return svg;
}
