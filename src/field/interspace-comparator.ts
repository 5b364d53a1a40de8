import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import type { ContactBoard } from './contact.ts';
import {
  CONTACT_CONDITIONS,
  createSnapSwitch,
  disturbSnapSwitch,
  prepareSnapSwitch,
  type SnapSwitch,
  stepSnapSwitch,
} from './snap-switch.ts';

/**
 * Two comparators on the interspace transmitter, for valve proving by pressure (EN 1643).
 *
 * `empty` makes near zero and is lost above the rise limit; `full` makes at a share of the supply
 * reading and is lost below the fall limit. What a leak must be to cross a limit in the test time
 * is arithmetic of interspace volume and test time, not of this device.
 */
export const interspaceComparatorParameters = {
  id: name('name of the comparator pair'),
  emptyPa: number('Pa', 0, 1e5, 'empty: at or below this'),
  riseLimitPa: number('Pa', 0, 1e6, 'no longer empty: at or above this'),
  fullShare: number('1', 0.2, 1, 'full: at or above this share of the supply reading', 0.9),
  fallLimitPa: number('Pa', 0, 1e6, 'no longer full: at or below this'),
  dwellS: number('s', 0, 5, 'how long before a comparator follows', 0.1),
  emptyContact: choice(CONTACT_CONDITIONS, 'contact of the empty comparator', 'sound'),
  fullContact: choice(CONTACT_CONDITIONS, 'contact of the full comparator', 'sound'),
} as const satisfies ParameterTable;
export type InterspaceComparatorParameters = Values<typeof interspaceComparatorParameters>;

export interface InterspaceComparator {
  readonly parameters: InterspaceComparatorParameters;
  readonly empty: SnapSwitch;
  readonly full: SnapSwitch;
  supplyPa: number;
}

export function createInterspaceComparator(
  parameters: InterspaceComparatorParameters,
  board: ContactBoard,
): InterspaceComparator {
  const comparator: InterspaceComparator = {
    parameters,
    empty: createSnapSwitch(board),
    full: createSnapSwitch(board),
    supplyPa: 0,
  };
  prepareInterspaceComparator(comparator);
  return comparator;
}

export function prepareInterspaceComparator(comparator: InterspaceComparator): void {
  const p = comparator.parameters;
  const { empty, full } = comparator;
  prepareSnapSwitch(empty, false, p.emptyPa, p.riseLimitPa, p.dwellS, false, p.emptyContact);
  prepareSnapSwitch(full, true, 0, p.fallLimitPa, p.dwellS, false, p.fullContact);
  aimFull(comparator);
}

export function stepInterspaceComparator(
  comparator: InterspaceComparator,
  interspacePa: number,
  supplyPa: number,
  stepS: number,
): void {
  if (supplyPa !== comparator.supplyPa) {
    comparator.supplyPa = supplyPa;
    aimFull(comparator);
  }
  stepSnapSwitch(comparator.empty, interspacePa, false, stepS);
  stepSnapSwitch(comparator.full, interspacePa, false, stepS);
}

/** With no supply worth the name there is nothing to be full of. */
function aimFull(comparator: InterspaceComparator): void {
  const p = comparator.parameters;
  const full = comparator.full;
  full.makeAt = Math.max(p.fullShare * comparator.supplyPa, p.fallLimitPa + 1);
  // Once full, only the fall limit counts, and that has not moved.
  if (!full.made) disturbSnapSwitch(full);
}
