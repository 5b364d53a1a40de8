import { AIR_PATH_FAULTS } from './air-path.ts';
import { BURNER_FAULTS } from './burner.ts';
import type { Fault } from './fault.ts';
import { FUEL_TRAIN_FAULTS } from './fuel-train.ts';
import { IGNITION_FAULTS, SENSING_FAULTS } from './ignition-and-sensing.ts';
import type { FaultSubject } from './subject.ts';
import { PEOPLE_FAULTS, SUPPLY_FAULTS, VESSEL_FAULTS } from './vessel-and-supply.ts';

/** Every fault, in the order of the families; the order in which standing faults are applied. */
export const FAULTS: readonly Fault[] = [
  ...FUEL_TRAIN_FAULTS,
  ...AIR_PATH_FAULTS,
  ...IGNITION_FAULTS,
  ...SENSING_FAULTS,
  ...BURNER_FAULTS,
  ...VESSEL_FAULTS,
  ...SUPPLY_FAULTS,
  ...PEOPLE_FAULTS,
];

const BY_ID: ReadonlyMap<string, Fault> = new Map(FAULTS.map((fault) => [fault.id, fault]));

export function findFault(id: string): Fault | undefined {
  return BY_ID.get(id);
}

export function faultsOf(subject: FaultSubject): readonly Fault[] {
  return FAULTS.filter((fault) => fault.appliesTo(subject));
}

/**
 * Applies faults to a working copy of sound parameters, in catalogue order, so that the
 * outcome does not depend on the order in which they were inserted.
 */
export function applyFaults(
  subject: FaultSubject,
  standing: readonly { readonly fault: string; readonly severity: number }[],
): void {
  for (const fault of FAULTS) {
    for (const one of standing) {
      if (one.fault === fault.id) fault.apply(subject, one.severity);
    }
  }
}
