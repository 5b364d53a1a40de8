import type { LookWhat } from '../../engine/index.ts';
import { partsOf } from '../../wording/index.ts';

/** Parts of a plant, or lines of thought, to which a check belongs. */
export const REGIONS = [
  'gas',
  'pilot gas',
  'air',
  'flue gas',
  'tightness',
  'train by eye',
  'air by eye',
  'flue by eye',
  'ignition by eye',
  'flame by eye',
  'sensor by eye',
  'water by eye',
  'panel by eye',
  'signal',
  'speed',
  'motor',
  'warmth',
  'volts',
  'wiring',
  'start',
  'history',
  'settings',
  'sounds',
  'smell',
] as const;
export type Region = (typeof REGIONS)[number];

const AIR_POINTS: ReadonlySet<string> = new Set(['windbox', 'furnace', 'flue']);
const OF_TOOL: Readonly<Record<string, Region>> = {
  'leak spray': 'tightness',
  'flue-gas analyser': 'flue gas',
  'flame-signal meter': 'signal',
  strobe: 'speed',
  multimeter: 'motor',
  thermometer: 'warmth',
  volts: 'volts',
  continuity: 'wiring',
  'watch one start': 'start',
  history: 'history',
  'commissioning sheet': 'settings',
  listen: 'sounds',
  smell: 'smell',
};
const OF_LOOK: Readonly<Record<LookWhat, Region>> = {
  'sight glass': 'flame by eye',
  'pilot flame': 'ignition by eye',
  spark: 'ignition by eye',
  'manual cock': 'train by eye',
  strainer: 'train by eye',
  'regulator breather': 'train by eye',
  'upstream valve indicator': 'train by eye',
  'downstream valve indicator': 'train by eye',
  'vent valve indicator': 'train by eye',
  'upstream valve proof switch': 'train by eye',
  'downstream valve proof switch': 'train by eye',
  'fuel valve shaft': 'train by eye',
  'gas joints': 'train by eye',
  'fuel valve servo pointer': 'train by eye',
  'damper blade': 'air by eye',
  'damper servo pointer': 'air by eye',
  'purge end switch': 'air by eye',
  'drive display': 'air by eye',
  belt: 'air by eye',
  'fan rotation': 'air by eye',
  'fan contactor': 'air by eye',
  'air switch tube': 'air by eye',
  'air inlet screen': 'air by eye',
  'boiler room openings': 'air by eye',
  flue: 'flue by eye',
  'stack damper': 'flue by eye',
  'boiler passes': 'flue by eye',
  electrode: 'ignition by eye',
  'ignition lead': 'ignition by eye',
  lens: 'sensor by eye',
  'scanner sight line': 'sensor by eye',
  'flame rod': 'sensor by eye',
  'pilot burner': 'ignition by eye',
  nozzle: 'flame by eye',
  diffuser: 'flame by eye',
  'gauge glass': 'water by eye',
  'boiler gauge': 'water by eye',
  'level probe': 'water by eye',
  'feed valve': 'water by eye',
  'water pump': 'water by eye',
  'safety valve': 'water by eye',
  'blow-down drain': 'water by eye',
  'limit buttons': 'panel by eye',
  'panel switches': 'panel by eye',
  'time clock': 'panel by eye',
  fuses: 'panel by eye',
  'control relays': 'panel by eye',
  'terminal strip': 'panel by eye',
};

/** Where a check leads one's thoughts, without saying what to do there. */
export function regionOf(check: string): Region {
  const { what, place } = partsOf(check);
  if (what === 'look') return OF_LOOK[place as LookWhat] ?? 'train by eye';
  if (what !== 'manometer') return OF_TOOL[what] ?? 'start';
  if (AIR_POINTS.has(place)) return 'air';
  return place.startsWith('pilot') ? 'pilot gas' : 'gas';
}
