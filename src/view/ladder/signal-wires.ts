import type { LadderWiring } from './types.ts';

/** What measures or divides a signal; the wire before it carries no supply. */
const SIGNAL_KINDS = new Set(['burden', 'wiper']);

/**
 * Wires whose volts mean a quantity: loops, feedback tracks, the flame signal. Half the volts of
 * a source tells nothing of them, so they are neither live nor dead.
 */
export function signalWires({ sources, elements, rungs }: LadderWiring): ReadonlySet<string> {
  const supplies = new Set(sources.flatMap(({ live, neutral }) => [live, neutral]));
  const kinds = new Map(elements.map(({ name, kind }) => [name, kind]));
  const found = new Set<string>();
  for (const parts of rungs) {
    parts.forEach((part, i) => {
      if (i % 2 === 0 || !SIGNAL_KINDS.has(kinds.get(part) ?? '')) return;
      for (const wire of [parts[i - 1], parts[i + 1]]) {
        if (wire !== undefined && wire !== EARTH && !supplies.has(wire)) found.add(wire);
      }
    });
  }
  return found;
}
const EARTH = 'earth';
