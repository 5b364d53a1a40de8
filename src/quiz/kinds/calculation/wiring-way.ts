/** The way from the supply to a wire of the ladder, as it stands at one moment of a run. */
import {
  BITS_A_WORD,
  type DescribedElement,
  describeWiring,
  type PlantFile,
  type Run,
} from '../../../engine/index.ts';

export interface WayPart {
  readonly element: DescribedElement;
  /** Conducts: a contact that is made, a whole fuse, an output that is switched on. */
  readonly made: boolean;
  /** The wire that leads on from it. */
  readonly next: string;
}

export interface Way {
  /** The last wire that many things hang on and that has volts. */
  readonly from: string;
  readonly to: string;
  readonly neutral: string;
  readonly parts: readonly WayPart[];
}

const LEADS_ON: ReadonlySet<string> = new Set(['contact', 'fuse', 'output']);
/** Elements at a wire that make it a rail of the ladder. */
const RAIL = 5;

/** Every wire that the mains reach over one way only, with at least one contact behind a live rail. */
export function waysOf(run: Run): readonly Way[] {
  const { plant } = run.setup;
  const { wires, elements } = describeWiring(plant);
  const mains = plant.wiring.sources.find(({ kind }) => kind === 'alternating');
  if (mains === undefined) return [];
  const made = madeOf(run, plant);
  const whole = new Map<string, readonly WayPart[]>([[mains.live, []]]);
  const waiting = [mains.live];
  const twice = new Set<string>();
  for (let at = waiting.shift(); at !== undefined; at = waiting.shift()) {
    for (const element of elements) {
      if (!LEADS_ON.has(element.kind)) continue;
      const next = element.from === at ? element.to : element.to === at ? element.from : null;
      if (next === null) continue;
      const before = whole.get(at) as readonly WayPart[];
      if (before.some((part) => part.element.name === element.name)) continue;
      if (whole.has(next)) {
        twice.add(next);
        continue;
      }
      whole.set(next, [...before, { element, made: made(element.name), next }]);
      waiting.push(next);
    }
  }
  const isRail = (wire: string) =>
    elements.filter(({ from, to }) => from === wire || to === wire).length >= RAIL;
  return wires.flatMap((to): Way[] => {
    const parts = whole.get(to) ?? [];
    if (parts.length === 0 || isTwice(parts, twice)) return [];
    const fed = lastFedRail(parts, isRail, mains.live);
    const rest = parts.slice(fed.place);
    return rest.length === 0 ? [] : [{ from: fed.wire, to, neutral: mains.neutral, parts: rest }];
  });
}

/** Null where something in the way is open. */
export function firstOpen({ parts }: Way): WayPart | null {
  return parts.find(({ made }) => !made) ?? null;
}

/** Whether an element conducts at the end of the run so far. */
function madeOf(run: Run, plant: PlantFile): (name: string) => boolean {
  const { elements } = describeWiring(plant);
  const words = run.channels.flatMap(({ id }, i) => (id.startsWith('wiring.made.') ? [i] : []));
  const frame = run.frame(run.frameCount() - 1);
  const places = new Map(elements.map(({ name }, i) => [name, i]));
  return (name) => {
    const i = places.get(name) as number;
    const word = frame[words[Math.floor(i / BITS_A_WORD)] as number] as number;
    return ((word >> (i % BITS_A_WORD)) & 1) === 1;
  };
}

function isTwice(parts: readonly WayPart[], twice: ReadonlySet<string>): boolean {
  return parts.some(({ next }) => twice.has(next));
}

function lastFedRail(
  parts: readonly WayPart[],
  isRail: (wire: string) => boolean,
  live: string,
): { readonly wire: string; readonly place: number } {
  let fed = { wire: live, place: 0 };
  for (let i = 0; i < parts.length - 1; i++) {
    const part = parts[i] as WayPart;
    if (!part.made) break;
    if (isRail(part.next)) fed = { wire: part.next, place: i + 1 };
  }
  return fed;
}
