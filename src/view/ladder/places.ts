import type { Message } from '../message.ts';
import { elementName } from './names.ts';
import type { LadderWiring } from './types.ts';

/** Something of the ladder that has a name: what a lead is put on, or what is looked for. */
export interface LadderPlace {
  /** A terminal `fan-relay.coil:1`, a wire, or a device, as the wiring names it. */
  readonly id: string;
  readonly kind: 'terminal' | 'wire' | 'device';
  readonly label: string;
}

/** Every wire, then every device with its two terminals. */
export function ladderPlaces(wiring: LadderWiring, message: Message): readonly LadderPlace[] {
  const wires = new Set(wiring.rungs.flatMap((parts) => parts.filter((_part, i) => i % 2 === 0)));
  const found: LadderPlace[] = [...wires].map((id) => ({
    id,
    kind: 'wire',
    label:
      id === EARTH ? message('ladder.place.earth') : message('ladder.place.wire', { wire: id }),
  }));
  const elements = new Map(wiring.elements.map((element) => [element.name, element]));
  for (const parts of wiring.rungs) {
    parts.forEach((part, i) => {
      const element = elements.get(part);
      if (i % 2 === 0 || element === undefined) return;
      const device = elementName(element, message);
      found.push({ id: part, kind: 'device', label: device });
      for (const [terminal, wire] of [
        [1, parts[i - 1]],
        [2, parts[i + 1]],
      ] as const) {
        const label = message('ladder.place.terminal', { device, terminal, wire: wire ?? '' });
        found.push({ id: `${part}:${terminal}`, kind: 'terminal', label });
      }
    });
  }
  return found;
}

/** Places with every word of a question in their name; names that begin with it come first. */
export function findPlaces(places: readonly LadderPlace[], question: string): LadderPlace[] {
  const asked = question.trim().toLowerCase();
  if (asked === '') return [...places];
  const words = asked.split(/\s+/);
  const rank = ({ id, label }: LadderPlace): number => {
    const name = label.toLowerCase();
    const ways = [id.toLowerCase(), name];
    if (ways.includes(asked)) return 0;
    if (ways.some((way) => way.startsWith(asked))) return 1;
    const own = name.split(/[^\p{L}\p{N}]+/u);
    if (words.every((word) => own.some((each) => each.startsWith(word)))) return 2;
    return words.every((word) => name.includes(word)) ? 3 : NOT_FOUND;
  };
  return places
    .map((place, order) => ({ place, order, rank: rank(place) }))
    .filter((each) => each.rank < NOT_FOUND)
    .sort((a, b) => a.rank - b.rank || a.order - b.order)
    .map(({ place }) => place);
}
const NOT_FOUND = 9;
const EARTH = 'earth';
