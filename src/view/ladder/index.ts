import './ladder.css';
import { indexChannels } from '../channels.ts';
import { wrapText } from '../schematic/wrap-text.ts';
import { textWidth } from '../text-width.ts';
import { ladderLayout } from './layout.ts';
import type { LadderLayout } from './layout-types.ts';
import { createLiveBits } from './live-bits.ts';
import { elementName } from './names.ts';
import { type DrawnLadder, drawLadder } from './painter.ts';
import { newInStep, rungsOfStep } from './rung-words.ts';
import { createScrollControl } from './scroll-control.ts';
import { signalWires } from './signal-wires.ts';
import { iecSymbols, type LadderSymbol } from './symbols.ts';
import type { Ladder, LadderOptions, LadderStep } from './types.ts';

export { createRungWords } from './rung-words.ts';

const FONT_PX = 16;
const NARROWEST_PX = 300;
const MOST_NAME_LINES = 3;

/**
 * The wiring as a live ladder in a host element, which scrolls. Made of SVG: the state changes a
 * few times a second at most, and letters stay sharp at any zoom.
 */
export function createLadder(host: HTMLElement, options: LadderOptions): Ladder {
  const { wiring, message } = options;
  const channels = indexChannels(options.channels);
  const live = createLiveBits('wiring.live', wiring.wires.length, channels);
  const made = createLiveBits('wiring.made', wiring.elements.length, channels);
  const symbols = new Map<string, LadderSymbol>(
    wiring.elements.map((element) => [element.name, iecSymbols(element)]),
  );
  const signals = signalWires(wiring);
  const names = new Map(wiring.elements.map((each) => [each.name, elementName(each, message)]));
  const symbolOf = (element: string): LadderSymbol =>
    symbols.get(element) ?? iecSymbols({ kind: '' });
  let layout: LadderLayout;
  let drawn: DrawnLadder;
  let width = 0;
  let step: LadderStep = { commands: [], inputs: [] };

  const control = createScrollControl(host, (zoom) => {
    drawn.svg.setAttribute('width', String(layout.width * zoom));
    drawn.svg.setAttribute('height', String(layout.height * zoom));
  });
  build();

  function build(): void {
    width = host.clientWidth;
    layout = ladderLayout(wiring, {
      widthPx: Math.max(NARROWEST_PX, width),
      fontPx: FONT_PX,
      reachOf: (element) => symbolOf(element).reach,
      linesOf: (element, roomPx) =>
        wrapText(names.get(element) ?? element, roomPx, widthOf).slice(0, MOST_NAME_LINES),
      widthOf,
    });
    drawn = drawLadder(layout, symbolOf, signals);
    host.replaceChildren(drawn.svg);
    control.fit();
    showState();
    drawn.markRungs(rungsOfStep(wiring, step));
  }

  function showState(): void {
    wiring.wires.forEach((wire, place) => {
      if (!signals.has(wire)) drawn.setWire(wire, live.isSet(place));
    });
    wiring.elements.forEach(({ name }, place) => {
      drawn.setElement(name, made.isSet(place));
    });
  }

  return {
    showFrame(frame) {
      const wiresMoved = live.take(frame);
      const elementsMoved = made.take(frame);
      if (wiresMoved || elementsMoved) showState();
    },
    setStep(next, follow) {
      const rungs = rungsOfStep(wiring, next);
      const { commands, inputs } = newInStep(next, step);
      const told = rungsOfStep(wiring, { commands, inputs: [] });
      const fresh = told.size > 0 ? told : rungsOfStep(wiring, { commands: [], inputs });
      step = next;
      drawn.markRungs(rungs);
      const wanted = fresh.size > 0 ? fresh : rungs;
      const rows = layout.rows.filter(({ rung }) => wanted.has(rung));
      if (!follow || rows.length === 0) return;
      const last = rows[rows.length - 1];
      control.bringIntoView(rows[0].top, last.top + last.height);
    },
    zoomBy: control.zoomBy,
    resize() {
      if (host.clientWidth !== width) build();
    },
    destroy() {
      control.stop();
      host.replaceChildren();
    },
  };
}

function widthOf(text: string): number {
  return textWidth(text, FONT_PX, 400);
}
