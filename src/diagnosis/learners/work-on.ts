import { NO_FAULT } from '../../../machines/job/index.ts';
import { findFault, REPAIR_WAYS, type RepairWay, remediesOf } from '../../faults/index.ts';
import type { Case } from '../score/case.ts';

export interface Work {
  readonly part: string;
  readonly way: RepairWay | 'adjust';
}

const kept = new WeakMap<Case, readonly string[]>();

/** How a fault is ended where somebody has to work on a part; null where a hand at a cock or a button does it. */
export function workFor({ plant }: Case, cause: string): Work | null {
  const fault = findFault(cause);
  if (fault === undefined) return null;
  for (const { part, way } of remediesOf(fault, plant)) {
    if (way === 'adjust' || isRepairWay(way)) return { part, way };
  }
  return null;
}

/** Of each cause of the atlas, the part by which it is claimed. */
export function partsClaimed(theCase: Case): readonly string[] {
  const known = kept.get(theCase);
  if (known !== undefined) return known;
  const parts = theCase.atlas.causes.map(({ fault: id }) => {
    const fault = id === null ? undefined : findFault(id);
    if (fault === undefined) return NO_FAULT;
    return remediesOf(fault, theCase.plant)[0]?.part ?? fault.component;
  });
  kept.set(theCase, parts);
  return parts;
}

function isRepairWay(way: string): way is RepairWay {
  return REPAIR_WAYS.some((one) => one === way);
}
