import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';
import { createFollower, type Follower, follow } from './follower.ts';

/**
 * A relay: coil, armature, main contact and feedback contact.
 *
 * The coil pulls in and drops out by its volts in the wiring network, the armature follows after
 * its own times, the contact follows the armature unless it is welded or does not close. The
 * feedback contact is forcibly guided: it shows the armature, and cannot open while the main
 * contact is welded.
 */
export const relayParameters = {
  id: name('name of the relay'),
  terminal: choice(
    [
      'safetyRelay',
      'fan',
      'spark',
      'pilotValve',
      'upstreamValve',
      'downstreamValve',
      'ventValve',
      'alarm',
    ],
    'command that it carries out',
  ),
  energises: choice(
    ['on command', 'without command'],
    'a load that is energised to shut, such as a normally open vent valve told to open, is fed without command',
    'on command',
  ),
  pullInS: number('s', 0, 1, 'from coil energised to contact made', 0.02),
  dropOutS: number('s', 0, 2, 'from coil dead to contact open', 0.03),
  pullInVolts: number('V', 0, 480, 'volts at which the coil pulls in', 90),
  dropOutVolts: number('V', 0, 480, 'volts below which it lets go', 40),
  coilOhm: number('Ω', 10, 1e6, 'resistance of the coil, inductance included', 4000),
  coil: choice(['sound', 'open'], 'condition of the coil', 'sound'),
  contact: choice(['sound', 'welded', 'not closing'], 'condition of the contact', 'sound'),
} as const satisfies ParameterTable;
export type RelayParameters = Values<typeof relayParameters>;

export interface Relay {
  readonly parameters: RelayParameters;
  readonly armature: Follower;
  readonly contact: Contact;
  readonly feedback: Contact;
  /** The coil has volts enough. */
  energised: boolean;
  welded: boolean;
  closes: boolean;
}

export function createRelay(parameters: RelayParameters, board: ContactBoard): Relay {
  const relay: Relay = {
    parameters,
    armature: createFollower(false),
    contact: createContact(board, false),
    feedback: createContact(board, false),
    energised: false,
    welded: false,
    closes: true,
  };
  prepareRelay(relay);
  return relay;
}

export function prepareRelay(relay: Relay): void {
  const p = relay.parameters;
  relay.welded = p.contact === 'welded';
  relay.closes = p.contact !== 'not closing';
}

/**
 * Returns whether it is still on its way: a relay that is not, and whose coil stays as it is, need
 * not be stepped.
 */
export function stepRelay(relay: Relay, stepS: number): boolean {
  const p = relay.parameters;
  const { armature, energised } = relay;
  follow(armature, energised, energised ? p.pullInS : p.dropOutS, stepS);
  moveContact(relay.contact, relay.welded || (armature.made && relay.closes));
  moveContact(relay.feedback, relay.welded || armature.made);
  return armature.pendingS > 0;
}
