import type { LadderLayout, Point } from './layout-types.ts';
import { drawClamp, drawJumper, drawPointer, drawProbe } from './lead-painter.ts';
import type { HeldLeads, Lead } from './leads.ts';
import type { DrawnLadder } from './painter.ts';
import { svgNode } from './svg.ts';
import { type Terminal, terminalsOf } from './terminals.ts';
import type { LadderTag } from './types.ts';

/** A lead on its way: under the pointer, or already over a terminal. */
export interface CarriedLead {
  readonly lead: Lead;
  readonly at: Point;
  readonly over: Terminal | null;
}

/** What lies on the ladder and comes and goes with hands; it is all drawn again on every change. */
export interface OverlayState {
  leads: HeldLeads | null;
  single: boolean;
  tags: readonly LadderTag[];
  carried: CarriedLead | null;
  pointed: {
    readonly terminal: Terminal;
    readonly label: string;
    readonly isCursor: boolean;
  } | null;
  found: string | null;
}

const BOX_PX = 30;

export function paintOverlay(drawn: DrawnLadder, layout: LadderLayout, state: OverlayState): void {
  const terminals = placesOf(layout);
  drawn.below.replaceChildren(...foundMarks(drawn, layout, terminals, state.found));
  const marks: SVGElement[] = [];
  const put = (lead: Lead, place: string | null, single: boolean, tag: string): void => {
    const at = place === null ? undefined : terminals.get(place);
    if (at === undefined) return;
    if (single) {
      if (lead === 'from') marks.push(drawClamp(at, tag));
    } else marks.push(drawProbe(lead, at, tag));
  };
  for (const { kind, tag, from, to } of state.tags) {
    if (kind === 'jumper') {
      const a = from === null ? undefined : terminals.get(from);
      const b = to === null ? undefined : terminals.get(to);
      if (a !== undefined && b !== undefined) marks.push(drawJumper(a, b, tag));
      continue;
    }
    put('from', from, to === null, tag);
    put('to', to, false, tag);
  }
  const { leads, single, carried, pointed } = state;
  if (leads !== null) {
    for (const lead of ['from', 'to'] as const) {
      if (carried?.lead !== lead) put(lead, leads[lead], single, '');
    }
  }
  if (pointed !== null && carried === null) {
    marks.push(drawPointer(pointed.terminal, pointed.label, layout.width, pointed.isCursor));
  }
  if (carried !== null) {
    const at = carried.over ?? { ...carried.at, side: 'right' as const };
    const probe = single ? drawClamp(at) : drawProbe(carried.lead, at);
    probe.classList.add('is-carried');
    if (pointed !== null && carried.over !== null) {
      marks.push(drawPointer(carried.over, pointed.label, layout.width, false));
    }
    marks.push(probe);
  }
  drawn.above.replaceChildren(...marks);
}

/** Every place a lead may be said to be on: terminals, and wires where they are first drawn. */
export function placesOf(layout: LadderLayout): ReadonlyMap<string, Terminal> {
  const places = new Map<string, Terminal>();
  for (const each of terminalsOf(layout)) if (!places.has(each.id)) places.set(each.id, each);
  for (const { wire, points } of layout.pieces) {
    const first = points[0];
    if (first !== undefined && !places.has(wire)) {
      places.set(wire, { id: wire, ...first, side: 'right' });
    }
  }
  return places;
}

/** Where a found thing is, from top to bottom of the drawing. */
export function reachOfPlace(
  layout: LadderLayout,
  id: string,
): { readonly top: number; readonly bottom: number } | null {
  const device = layout.elements.find(({ name }) => name === id.replace(/:[12]$/, ''));
  if (device !== undefined) return { top: device.linesTopY - 12, bottom: device.y + 36 };
  const first =
    layout.pieces.find(({ wire }) => wire === id)?.points[0]?.y ??
    layout.rails.find(({ wire }) => wire === id)?.top;
  return first === undefined ? null : { top: first - 40, bottom: first + 40 };
}

function foundMarks(
  drawn: DrawnLadder,
  layout: LadderLayout,
  terminals: ReadonlyMap<string, Terminal>,
  id: string | null,
): SVGElement[] {
  if (id === null) return [];
  const device = layout.elements.find(({ name }) => name === id);
  if (device !== undefined) {
    return [
      svgNode('rect', {
        class: 'ladder-found',
        x: device.x - BOX_PX - 6,
        y: device.y - BOX_PX + 6,
        width: 2 * BOX_PX + 12,
        height: 2 * BOX_PX,
        rx: 8,
      }),
    ];
  }
  const terminal = terminals.get(id);
  if (terminal !== undefined && id.includes(':')) {
    return [svgNode('circle', { class: 'ladder-found', cx: terminal.x, cy: terminal.y, r: 15 })];
  }
  return (drawn.wirePlaces.get(id) ?? []).flatMap((each) => {
    const d = each.getAttribute('d');
    return d === null ? [] : [svgNode('path', { class: 'ladder-found-wire', d })];
  });
}
