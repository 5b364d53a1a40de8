import { describeWiring, type MeterReading, type PlantFile } from '../../engine/index.ts';
import { checkName, type Reading } from './reading.ts';

/** Half of what a wire should have counts as live. */
const LIVE_SHARE = 0.5;
const BEEPS_OHM = 30;
const OPEN_OHM = 1e6;

/** Places of a plant for a meter: the wire of each place, and what each wire is measured against. */
export interface WirePlaces {
  readonly wires: readonly string[];
  /** Wire on which a terminal lies, or the wire itself. */
  readonly wireAt: ReadonlyMap<string, string>;
  /** What a volts lead goes to for this wire. */
  readonly neutralOf: ReadonlyMap<string, string>;
  readonly neutrals: ReadonlySet<string>;
  /** Volts that a wire has when its source reaches it. */
  readonly nominalOf: ReadonlyMap<string, number>;
  /** Elements with their wires, for continuity. */
  readonly elements: readonly {
    readonly name: string;
    readonly from: string;
    readonly to: string;
  }[];
}

export function wirePlacesOf(plant: PlantFile): WirePlaces {
  const { wires, elements } = describeWiring(plant);
  const { sources } = plant.wiring;
  const wireAt = new Map<string, string>(wires.map((wire) => [wire, wire]));
  for (const { name, from, to } of elements) {
    wireAt.set(`${name}:1`, from);
    wireAt.set(`${name}:2`, to);
  }
  const mains = sources.find(({ kind }) => kind === 'alternating');
  const neutralOf = new Map(wires.map((wire) => [wire, mains?.neutral ?? 'earth']));
  const nominalOf = new Map(wires.map((wire) => [wire, plant.field.supply.nominalVolts]));
  for (const { kind, live, neutral, volts } of sources) {
    if (kind !== 'direct') continue;
    for (const wire of fedBy(live, elements)) {
      neutralOf.set(wire, neutral);
      nominalOf.set(wire, volts);
    }
  }
  const neutrals = new Set(sources.map(({ neutral }) => neutral));
  return { wires, wireAt, neutralOf, neutrals, nominalOf, elements };
}

/** Wires that hang on a direct source by loops, tracks and fuses. */
function fedBy(live: string, elements: WirePlaces['elements']): ReadonlySet<string> {
  const fed = new Set([live]);
  for (let found = true; found; ) {
    found = false;
    for (const { from, to } of elements) {
      if (fed.has(from) && !fed.has(to) && !to.startsWith('M') && to !== 'N') {
        fed.add(to);
        found = true;
      }
    }
  }
  return fed;
}

/** Volts on a wire; null where the leads are on places that tell nothing of one wire. */
export function voltsReading(
  { wireAt, neutralOf, neutrals }: WirePlaces,
  place: string,
  other: string,
  volts: number,
): Reading | null {
  const a = wireAt.get(place) ?? place;
  const b = wireAt.get(other) ?? other;
  const isReference = (wire: string) => wire === 'earth' || neutrals.has(wire);
  const wire = isReference(b) ? a : isReference(a) ? b : null;
  if (wire === null || !neutralOf.has(wire)) return null;
  return { check: checkName('volts', wire), aspect: 'value', value: Math.abs(volts) };
}

/** Whether a wire has what its source gives. */
export function liveReading(wire: string, live: boolean): Reading {
  return { check: checkName('volts', wire), aspect: 'live', value: live ? 'live' : 'dead' };
}

export function isLive({ nominalOf }: WirePlaces, wire: string, volts: number): boolean {
  return Math.abs(volts) >= LIVE_SHARE * (nominalOf.get(wire) ?? 0);
}

/** What lies between two places, supply off: a way, a load, or nothing. */
export function continuityReading(
  place: string,
  other: string,
  { value, overload, live }: Pick<MeterReading, 'value' | 'overload' | 'live'>,
): Reading | null {
  if (live) return null;
  const word = overload || value >= OPEN_OHM ? 'open' : value < BEEPS_OHM ? 'through' : 'some ohms';
  const [first, second] = [place, other].sort();
  return { check: checkName('continuity', first, second), aspect: 'value', value: word };
}
