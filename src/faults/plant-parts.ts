/** Which parts a plant has for a technician to act on, and where its gas joints are. */

import { faultsOf } from './catalogue.ts';
import type { Fault } from './fault.ts';
import { PART_NAMES, PARTS, type PartName } from './parts.ts';
import { REPAIR_WAYS, type Remedy, type RepairWay } from './remedy.ts';
import { type Setting, settingsOf } from './settings.ts';
import { driveOf, type FaultSubject } from './subject.ts';

export interface PlantPart {
  readonly part: string;
  /** What may be done to it, whether or not anything is wrong with it. */
  readonly ways: readonly RepairWay[];
  readonly opens: 'gas' | 'water' | null;
  readonly electrical: boolean;
  readonly minutes: Readonly<Partial<Record<RepairWay, number>>>;
  /** Of a new one, in training units. */
  readonly cost: number;
}

/**
 * Every part of this plant that a person may act on or claim: the same whatever stands, so that the
 * list gives nothing away.
 */
export function partsOf(subject: FaultSubject): readonly PlantPart[] {
  const settings = settingsOf(subject);
  const named = new Set<string>(settings.map(({ part }) => part));
  for (const fault of faultsOf(subject)) {
    for (const { part } of remediesWith(fault, settings)) named.add(part);
  }
  for (const part of FUSES) if (fuseOf(subject, part) !== null) named.add(part);
  if (driveOf(subject) !== undefined) named.add('fan motor' satisfies PartName);
  return PART_NAMES.filter((part) => named.has(part)).map(plantPart);
}

/** What ends this fault on this plant: of its remedies those whose dial the plant has. */
export function remediesOf(fault: Fault, subject: FaultSubject): readonly Remedy[] {
  return remediesWith(fault, settingsOf(subject));
}

/** The points of the gas train with joints to spray, in the direction of flow. */
export function leakPlacesOf(subject: FaultSubject): readonly string[] {
  return subject.gasTrain.nodes.map(({ id }) => id);
}

/** The fuse that a part word means; null where it means none. */
export function fuseOf(subject: FaultSubject, part: string): string | null {
  const at = FUSES.indexOf(part);
  return (at < 0 ? undefined : subject.wiring.fuses[at]?.id) ?? null;
}
/** In the order in which a plant file gives its fuses. */
const FUSES: readonly string[] = [
  'control fuse',
  'loop supply fuse',
  'safety fuse',
] satisfies readonly PartName[];

function remediesWith({ remedies }: Fault, settings: readonly Setting[]): readonly Remedy[] {
  return remedies.filter(
    ({ part, way, setting }) =>
      way !== 'adjust' || settings.some((one) => one.part === part && one.setting === setting),
  );
}

function plantPart(part: PartName): PlantPart {
  const { minutes, opens, electrical, cost } = PARTS[part];
  const ways = REPAIR_WAYS.filter((way) => minutes[way] !== undefined);
  return { part, ways, opens, electrical, minutes, cost };
}
