import type { PlantFile } from '../engine/index.ts';
import type { Issue } from './issue.ts';
import { issueAt } from './issue-at.ts';
import { nearest } from './nearest.ts';
import { NOTHING_TO_ADD, phrase } from './phrase.ts';
import type { Path } from './place.ts';
import type { Source } from './read-source.ts';

/** What a file needs to know of a fault to order it. */
export interface FaultLimits {
  readonly id: string;
  readonly severity: { readonly unit: string; readonly low: number; readonly high: number };
  readonly onsets: readonly string[];
  appliesTo(plant: PlantFile): boolean;
}

/** A fault by name and severity, against the catalogue and (where it is known) the plant. */
export function checkFault(
  name: string,
  severity: number | null,
  source: Source,
  places: { readonly fault: Path; readonly severity: Path | null },
  plant: PlantFile | null,
  faults: readonly FaultLimits[],
): Issue[] {
  const fault = faults.find(({ id }) => id === name);
  if (fault === undefined) {
    const ids = faults.map(({ id }) => id);
    const expected = phrase('expected.known-fault');
    return [issueAt(source, places.fault, 'unknown-name', expected, nearest(name, ids))];
  }
  const issues: Issue[] = [];
  if (plant !== null && !fault.appliesTo(plant)) {
    const expected = phrase('expected.fault-for-plant', { plant: plant.id });
    issues.push(issueAt(source, places.fault, 'not-applicable', expected));
  }
  const { unit, low, high } = fault.severity;
  if (severity !== null && places.severity !== null && (severity < low || severity > high)) {
    const inUnit = unit === '1' ? NOTHING_TO_ADD : phrase('expected.in-unit', { unit });
    const expected = phrase('expected.severity', { low, high, unit: inUnit });
    issues.push(issueAt(source, places.severity, 'out-of-range', expected));
  }
  return issues;
}
