import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';
import { CONTACT_CONDITIONS, type ContactCondition } from './snap-switch.ts';

/** What a clock or a contact from outside may switch. */
const SWITCHES = ['call for heat', 'second setpoint'] as const;

/**
 * A time clock of the simulated day: its contact is made from one hour to another, over midnight
 * where the first is the later. It stands in the call for heat, or changes over to the second
 * setpoint while it is made.
 */
export const timeClockParameters = {
  id: name('name of the clock'),
  switches: choice(SWITCHES, 'which circuit its contact stands in'),
  onHour: number('1', 0, 24, 'hour of the day at which it makes'),
  offHour: number('1', 0, 24, 'hour of the day at which it breaks'),
  aheadHours: number('1', -12, 12, 'hours that the clock is ahead of the day', 0),
  contact: choice(CONTACT_CONDITIONS, 'condition of the contact', 'sound'),
} as const satisfies ParameterTable;
export type TimeClockParameters = Values<typeof timeClockParameters>;

/** A contact from outside the boiler house, such as a building's control. */
export const remoteContactParameters = {
  id: name('name of the contact'),
  switches: choice(SWITCHES, 'which circuit it stands in'),
  contact: choice(CONTACT_CONDITIONS, 'condition of the contact', 'sound'),
} as const satisfies ParameterTable;
export type RemoteContactParameters = Values<typeof remoteContactParameters>;

export interface TimeClock {
  readonly parameters: TimeClockParameters;
  readonly contact: Contact;
}

export interface RemoteContact {
  readonly parameters: RemoteContactParameters;
  readonly contact: Contact;
}

export function createTimeClock(parameters: TimeClockParameters, board: ContactBoard): TimeClock {
  return { parameters, contact: createContact(board, false) };
}

export function createRemoteContact(
  parameters: RemoteContactParameters,
  board: ContactBoard,
): RemoteContact {
  return { parameters, contact: createContact(board, false) };
}

const HOURS = 24;

/** @param hour of the simulated day, 0 to 24 */
export function stepTimeClock(clock: TimeClock, hour: number): void {
  const p = clock.parameters;
  const ahead = hour + p.aheadHours;
  const shown = ahead - HOURS * Math.floor(ahead / HOURS);
  const made =
    p.onHour <= p.offHour
      ? shown >= p.onHour && shown < p.offHour
      : shown >= p.onHour || shown < p.offHour;
  moveContact(clock.contact, asItIs(made, p.contact));
}

export function stepRemoteContact(remote: RemoteContact, made: boolean): void {
  moveContact(remote.contact, asItIs(made, remote.parameters.contact));
}

function asItIs(made: boolean, condition: ContactCondition): boolean {
  return condition === 'welded' || (made && condition !== 'open');
}
