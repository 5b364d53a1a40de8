import './ladder.css';
import { indexChannels } from '../channels.ts';
import { wrapText } from '../schematic/wrap-text.ts';
import { textWidth } from '../text-width.ts';
import { ladderLayout } from './layout.ts';
import type { LadderLayout } from './layout-types.ts';
import { createLeadControl } from './lead-control.ts';
import { type HeldLeads, type Lead, NO_LEADS, putLead, takeLead, tapPlace } from './leads.ts';
import { createLiveBits } from './live-bits.ts';
import { elementName } from './names.ts';
import { type OverlayState, paintOverlay, reachOfPlace } from './overlay.ts';
import { type DrawnLadder, drawLadder } from './painter.ts';
import { ladderPlaces } from './places.ts';
import { newInStep, rungsOfStep } from './rung-words.ts';
import { createScrollControl } from './scroll-control.ts';
import { signalWires } from './signal-wires.ts';
import { symbolsOf } from './symbol-sets.ts';
import type { LadderSymbol } from './symbols.ts';
import { type Terminal, terminalsOf } from './terminals.ts';
import type { Ladder, LadderOptions, LadderStep } from './types.ts';

export { findPlaces, ladderPlaces } from './places.ts';
export { createRungWords } from './rung-words.ts';

const FONT_PX = 16;
const NARROWEST_PX = 300;
const MOST_NAME_LINES = 3;

/**
 * The wiring as a ladder in a host element, which scrolls. Made of SVG: the state changes a
 * few times a second at most, and letters stay sharp at any zoom.
 */
export function createLadder(host: HTMLElement, options: LadderOptions): Ladder {
  const { wiring, message, live: isLive = true, onLeads, onPointed } = options;
  const channels = indexChannels(options.channels);
  const live = createLiveBits('wiring.live', wiring.wires.length, channels);
  const made = createLiveBits('wiring.made', wiring.elements.length, channels);
  const signals = signalWires(wiring);
  const names = new Map(wiring.elements.map((each) => [each.name, elementName(each, message)]));
  const elements = new Map(wiring.elements.map((each) => [each.name, each]));
  const labels = new Map(ladderPlaces(wiring, message).map(({ id, label }) => [id, label]));
  let symbolSet = symbolsOf(options.symbols ?? 'IEC');
  let symbols = new Map<string, LadderSymbol>();
  let layout: LadderLayout;
  let drawn: DrawnLadder;
  let width = 0;
  let step: LadderStep = { commands: [], inputs: [] };
  const overlay: OverlayState = {
    leads: null,
    single: false,
    tags: [],
    carried: null,
    pointed: null,
    found: null,
  };

  // Before the scrolling: a hand that takes a lead does not move the paper.
  const hands = onLeads === undefined ? null : createLeadControl(host, handsOf(onLeads));
  const control = createScrollControl(host, (zoom) => {
    drawn.svg.setAttribute('width', String(layout.width * zoom));
    drawn.svg.setAttribute('height', String(layout.height * zoom));
  });
  build();

  function build(): void {
    width = host.clientWidth;
    symbols = new Map(wiring.elements.map((element) => [element.name, symbolSet(element)]));
    const symbolOf = (element: string): LadderSymbol =>
      symbols.get(element) ?? symbolSet({ kind: '' });
    layout = ladderLayout(wiring, {
      widthPx: Math.max(NARROWEST_PX, width),
      fontPx: FONT_PX,
      reachOf: (element) => symbolOf(element).reach,
      linesOf: (element, roomPx) =>
        wrapText(names.get(element) ?? element, roomPx, widthOf).slice(0, MOST_NAME_LINES),
      widthOf,
    });
    drawn = drawLadder(layout, symbolOf, signals, isMadeAtRest);
    drawn.svg.classList.toggle('is-paper', !isLive);
    drawn.svg.classList.toggle('takes-leads', hands !== null);
    host.replaceChildren(drawn.svg);
    control.fit();
    if (isLive) showState();
    drawn.markRungs(rungsOfStep(wiring, step));
    hands?.relay(terminalsOf(layout));
    paintOverlay(drawn, layout, overlay);
  }

  /** As it stands with the plant cold and dead: break contacts and fuses carry. */
  function isMadeAtRest(name: string): boolean {
    const element = elements.get(name);
    if (element === undefined) return false;
    return element.kind === 'contact' ? element.breaks === true : WHOLE.has(element.kind);
  }

  function showState(): void {
    wiring.wires.forEach((wire, place) => {
      if (!signals.has(wire)) drawn.setWire(wire, live.isSet(place));
    });
    wiring.elements.forEach(({ name }, place) => {
      drawn.setElement(name, made.isSet(place));
    });
  }

  function handsOf(tell: (leads: HeldLeads) => void) {
    const change = (next: HeldLeads): void => {
      overlay.leads = next;
      paintOverlay(drawn, layout, overlay);
      tell(next);
    };
    const point = (terminal: Terminal | null, isCursor: boolean): void => {
      const label = terminal === null ? '' : (labels.get(terminal.id) ?? terminal.id);
      if (overlay.pointed?.terminal === terminal && overlay.pointed?.isCursor === isCursor) return;
      overlay.pointed = terminal === null ? null : { terminal, label, isCursor };
      paintOverlay(drawn, layout, overlay);
      onPointed?.(isCursor ? label : '');
    };
    const now = (): HeldLeads => overlay.leads ?? NO_LEADS;
    return {
      toDrawing({ clientX, clientY }: Pick<MouseEvent, 'clientX' | 'clientY'>) {
        const box = drawn.svg.getBoundingClientRect();
        const zoom = box.width / layout.width;
        return { x: (clientX - box.left) / zoom, y: (clientY - box.top) / zoom };
      },
      zoom: () => drawn.svg.getBoundingClientRect().width / layout.width,
      leadAt(place: string): Lead | null {
        const { from, to } = now();
        return from === place ? 'from' : to === place ? 'to' : null;
      },
      onPoint(terminal: Terminal | null, isCursor: boolean) {
        point(terminal, isCursor);
        if (terminal === null || !isCursor) return;
        control.bringIntoView(terminal.y - 60, terminal.y + 76);
        control.bringAcross(terminal.x - 60, terminal.x + 60);
      },
      onTap: (terminal: Terminal) => change(tapPlace(now(), terminal.id, overlay.single)),
      onTake: (lead: Lead) => change(takeLead(now(), lead)),
      onDrag(lead: Lead, at: { x: number; y: number }, over: Terminal | null) {
        overlay.carried = { lead, at, over };
        const label = over === null ? '' : (labels.get(over.id) ?? over.id);
        overlay.pointed = over === null ? null : { terminal: over, label, isCursor: false };
        paintOverlay(drawn, layout, overlay);
      },
      onDrop(lead: Lead, over: Terminal | null, outside: boolean) {
        overlay.carried = null;
        if (over !== null) change(putLead(now(), lead, over.id, overlay.single));
        else if (outside) change(takeLead(now(), lead));
        else paintOverlay(drawn, layout, overlay);
      },
    };
  }

  return {
    showFrame(frame) {
      if (!isLive) return;
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
    setSymbols(set) {
      symbolSet = symbolsOf(set);
      build();
    },
    setLeads(leads, single = false) {
      overlay.leads = leads;
      overlay.single = single;
      paintOverlay(drawn, layout, overlay);
    },
    setTags(tags) {
      overlay.tags = tags;
      paintOverlay(drawn, layout, overlay);
    },
    dragLead: (lead, event) => hands?.drag(lead, event),
    showPlace(id) {
      overlay.found = id;
      paintOverlay(drawn, layout, overlay);
      const reach = id === null ? null : reachOfPlace(layout, id);
      if (reach !== null) control.bringIntoView(reach.top, reach.bottom);
    },
    zoomBy: control.zoomBy,
    resize() {
      if (host.clientWidth !== width) build();
    },
    destroy() {
      hands?.stop();
      control.stop();
      host.replaceChildren();
    },
  };
}

const WHOLE = new Set(['fuse', 'wiper']);

function widthOf(text: string): number {
  return textWidth(text, FONT_PX, 400);
}
