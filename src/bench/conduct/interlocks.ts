import { describeWiring, type PlantFile } from '../../engine/index.ts';

/** Contacts that only say what is wanted. A jumper across one of them bypasses nothing that protects. */
const OPERATING = new Set([
  'burner-switch',
  'remote-enable',
  'operating-control',
  'time-clock',
  'night-clock',
  'second-setpoint',
  'reset-button',
  'warm-up',
]);

/** The contacts that lie directly between two places of the wiring. */
export function contactsBetween(plant: PlantFile, from: string, to: string): readonly string[] {
  const { elements } = describeWiring(plant);
  const wire = (place: string) => {
    const element = elements.find(({ name }) => `${name}:1` === place || `${name}:2` === place);
    if (element === undefined) return place;
    return place.endsWith(':1') ? element.from : element.to;
  };
  const [one, other] = [wire(from), wire(to)];
  return elements
    .filter(
      (element) =>
        element.kind === 'contact' &&
        ((element.from === one && element.to === other) ||
          (element.from === other && element.to === one)),
    )
    .map(({ name }) => name);
}

/** Those of them that protect: limits, proofs, the safety relay, output contacts. */
export function interlocksBetween(plant: PlantFile, from: string, to: string): readonly string[] {
  return contactsBetween(plant, from, to).filter((name) => !isOperating(plant, name));
}

function isOperating({ field }: PlantFile, name: string): boolean {
  return (
    OPERATING.has(name) ||
    field.timeClocks.some(({ id }) => id === name) ||
    field.remoteContacts.some(({ id }) => id === name)
  );
}

/** Dials on which safety rests, and the way in which moving them protects less. */
const PROTECTIVE: Readonly<Record<string, 'higher' | 'lower' | 'either'>> = {
  'airflow switch': 'lower',
  'low-gas switch': 'lower',
  'high-gas switch': 'higher',
  'furnace pressure switch': 'higher',
  'high limit': 'higher',
  'first low-water cut-off': 'lower',
  'second low-water cut-off': 'lower',
  'flame amplifier': 'lower',
  'upstream valve proof of closure': 'either',
  'downstream valve proof of closure': 'either',
};

/** Which way this part's dials protect less; null where no safety rests on them. */
export function lessSafe(part: string): 'higher' | 'lower' | 'either' | null {
  return PROTECTIVE[part] ?? null;
}

/** What shows that a limit works: the proof of the run that goes when it trips. */
const SHOWN_BY: Readonly<Record<string, string>> = {
  'airflow switch': 'airflow',
  'low-gas switch': 'gas pressure above low',
  'high-gas switch': 'gas pressure below high',
  'furnace pressure switch': 'furnace pressure in band',
  'high limit': 'high limit',
  'first low-water cut-off': 'water above first cut-off',
  'second low-water cut-off': 'water above second cut-off',
  'flame amplifier': 'flame',
  'flame relay': 'flame',
  scanner: 'flame',
  'flame rod': 'flame',
  'upstream valve proof of closure': 'upstream valve closed',
  'downstream valve proof of closure': 'downstream valve closed',
};

/** The proof of the run by which a limit, or its wiring, is seen to work; null for what is no limit. */
export function shownBy(part: string): string | null {
  return SHOWN_BY[part.replace(/ wiring$/, '')] ?? null;
}
