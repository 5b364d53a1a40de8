import { number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';
import { createFollower, type Follower, follow } from './follower.ts';

/**
 * The mains that feed the control circuit, and the monitor in the controller that watches them.
 *
 * What isolator, fuse, load and loose joints make of the volts is the wiring network's business;
 * the monitor sees what arrives at its terminal. It makes when volts and frequency are inside
 * their bands for the dwell, and breaks when either has been outside for it.
 */
export const supplyParameters = {
  mainsVolts: number('V', 0, 480, 'volts of the control circuit'),
  mainsHz: number('Hz', 0, 70, 'frequency of the mains'),
  nominalVolts: number('V', 24, 480, 'volts the plant is built for'),
  lowVolts: number('V', 0, 480, 'lower end of the band'),
  highVolts: number('V', 0, 480, 'upper end of the band'),
  hysteresisVolts: number('V', 0, 50, 'how far back inside the band volts must come', 3),
  lowHz: number('Hz', 0, 70, 'lower end of the band'),
  highHz: number('Hz', 0, 80, 'upper end of the band'),
  hysteresisHz: number('Hz', 0, 5, 'how far back inside the band the frequency must come', 0.3),
  dwellS: number('s', 0, 10, 'how long before the monitor follows', 0.5),
} as const satisfies ParameterTable;
export type SupplyParameters = Values<typeof supplyParameters>;

/** Below this share of nominal volts the controller runs on what its own supply still holds. */
const GONE_SHARE = 0.5;
const HOLD_UP_S = 0.05;

export interface Supply {
  readonly parameters: SupplyParameters;
  lineVolts: number;
  lineHz: number;
  perNominalVolt: number;
  /** At the monitor's terminal. */
  volts: number;
  readonly inBand: Contact;
  readonly monitor: Follower;
  /** The monitor has not come to rest. */
  watching: boolean;
}

export function createSupply(parameters: SupplyParameters, board: ContactBoard): Supply {
  const supply: Supply = {
    parameters,
    lineVolts: 0,
    lineHz: 0,
    perNominalVolt: 0,
    volts: 0,
    inBand: createContact(board, false),
    monitor: createFollower(false),
    watching: true,
  };
  prepareSupply(supply);
  return supply;
}

export function prepareSupply(supply: Supply): void {
  const p = supply.parameters;
  supply.lineVolts = p.mainsVolts;
  supply.lineHz = p.mainsHz;
  supply.perNominalVolt = 1 / p.nominalVolts;
  supply.watching = true;
}

/** What now arrives at the monitor. */
export function feedSupply(supply: Supply, volts: number): void {
  if (volts === supply.volts) return;
  supply.volts = volts;
  supply.watching = true;
}

/** With steady volts the monitor comes to rest and is not looked at again. */
export function watchSupply(supply: Supply, stepS: number): void {
  if (!supply.watching) return;
  const p = supply.parameters;
  const inside = supply.monitor.made;
  const volts = inside ? 0 : p.hysteresisVolts;
  const hz = inside ? 0 : p.hysteresisHz;
  const wanted =
    supply.volts >= p.lowVolts + volts &&
    supply.volts <= p.highVolts - volts &&
    p.mainsHz >= p.lowHz + hz &&
    p.mainsHz <= p.highHz - hz;
  const gone = supply.volts * supply.perNominalVolt < GONE_SHARE;
  const dwellS = gone ? Math.min(p.dwellS, HOLD_UP_S) : p.dwellS;
  moveContact(supply.inBand, follow(supply.monitor, wanted, dwellS, stepS));
  supply.watching = supply.monitor.pendingS > 0;
}
