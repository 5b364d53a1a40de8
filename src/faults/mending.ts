/** Short ways to write the remedies of a fault. */
import type { PartName } from './parts.ts';
import type { HandAct, Remedy, RepairWay } from './remedy.ts';

/** The ways that end a fault of one part: `by('scanner', 'clean', 'replace')`. */
export function by(part: PartName, ...ways: readonly (RepairWay | HandAct)[]): Remedy[] {
  return ways.map((way) => ({ part, way }));
}

export function adjusting(part: PartName, ...settings: readonly string[]): Remedy[] {
  return settings.map((setting) => ({ part, way: 'adjust', setting }));
}
