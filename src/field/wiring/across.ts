import type { Wiring } from './wiring.ts';

/** Whether two places, wires or terminals, are the two sides of one contact. */
export function isAcrossContact(w: Wiring, from: string, to: string): boolean {
  const one = wireAt(w, from);
  const other = wireAt(w, to);
  if (one === null || other === null || one === other) return false;
  return w.netlist.elements.some(
    ({ kind, fromWire, toWire }) =>
      kind === 'contact' &&
      ((fromWire === one && toWire === other) || (fromWire === other && toWire === one)),
  );
}

/** The wire of a place as the drawing has it; null where there is no such place. */
export function wireAt(w: Wiring, place: string): string | null {
  if (w.netlist.wires.includes(place)) return place;
  const name = place.replace(/:[12]$/, '');
  const element = w.netlist.elements.find((one) => one.name === name);
  if (element === undefined || name === place) return null;
  return place.endsWith(':1') ? element.fromWire : element.toWire;
}
