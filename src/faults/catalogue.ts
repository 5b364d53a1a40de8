import { AIRFLOW_FAULTS } from './airflow.ts';
import { BURNER_FAULTS } from './burner.ts';
import { COMBUSTION_FAULTS } from './combustion.ts';
import { FAN_FAULTS } from './fan.ts';
import type { Fault } from './fault.ts';
import { SENSING_FAULTS } from './flame-sensing.ts';
import { GAS_LEAK_FAULTS } from './gas-leaks.ts';
import { GAS_LINE_FAULTS } from './gas-line.ts';
import { GAS_SENSING_FAULTS } from './gas-sensing.ts';
import { GAS_VALVE_FAULTS } from './gas-valves.ts';
import { IGNITION_FAULTS } from './ignition.ts';
import { JOINT_FAULTS } from './joints.ts';
import { JUMPER_FAULTS } from './jumpers.ts';
import { LIMIT_FAULTS } from './limits.ts';
import { PEOPLE_FAULTS } from './people.ts';
import { SERVO_FAULTS } from './servos.ts';
import type { FaultSubject } from './subject.ts';
import { SUPPLY_FAULTS } from './supply.ts';
import { VESSEL_FAULTS } from './vessel.ts';
import { WIRES_OFF } from './wires-off.ts';

/** Every fault, in the order of the families; the order in which standing faults are applied. */
export const FAULTS: readonly Fault[] = [
  ...GAS_VALVE_FAULTS,
  ...GAS_LINE_FAULTS,
  ...GAS_SENSING_FAULTS,
  ...GAS_LEAK_FAULTS,
  ...SERVO_FAULTS,
  ...FAN_FAULTS,
  ...AIRFLOW_FAULTS,
  ...IGNITION_FAULTS,
  ...SENSING_FAULTS,
  ...BURNER_FAULTS,
  ...COMBUSTION_FAULTS,
  ...VESSEL_FAULTS,
  ...LIMIT_FAULTS,
  ...SUPPLY_FAULTS,
  ...WIRES_OFF,
  ...JOINT_FAULTS,
  ...PEOPLE_FAULTS,
  ...JUMPER_FAULTS,
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
