import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import {
  type Coil,
  type Contact,
  type ContactBoard,
  createCoil,
  createContact,
  energiseCoil,
  moveContact,
} from './contact.ts';
import { createFollower, type Follower, follow } from './follower.ts';

/**
 * A relay between a command terminal and its load: coil, armature, contact, and the load's circuit.
 *
 * The coil pulls in and drops out by volts, the armature follows after its own times, the contact
 * follows the armature unless it is welded or does not close. The feedback contact is forcibly
 * guided: it shows the armature, and cannot open while the main contact is welded.
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
    'command terminal that feeds the coil',
  ),
  energises: choice(
    ['on command', 'without command'],
    'a load that is energised to shut, such as a normally open vent valve told to open, is fed without command',
    'on command',
  ),
  fedBy: choice(
    ['control supply', 'safety relay'],
    'what feeds the contact; fuel and ignition hang on the safety relay',
    'control supply',
  ),
  pullInS: number('s', 0, 1, 'from coil energised to contact made', 0.02),
  dropOutS: number('s', 0, 2, 'from coil dead to contact open', 0.03),
  pullInVolts: number('V', 0, 480, 'volts at which the coil, and the load behind it, pull in', 90),
  dropOutVolts: number('V', 0, 480, 'volts below which they let go', 40),
  coil: choice(['sound', 'open'], 'condition of the coil', 'sound'),
  contact: choice(['sound', 'welded', 'not closing'], 'condition of the contact', 'sound'),
  feedback: choice(['sound', 'lost'], 'circuit of the feedback contact', 'sound'),
  load: choice(['sound', 'open'], 'circuit from the contact through the load and back', 'sound'),
} as const satisfies ParameterTable;
export type RelayParameters = Values<typeof relayParameters>;

export interface Relay {
  readonly parameters: RelayParameters;
  readonly coil: Coil;
  readonly armature: Follower;
  readonly contact: Contact;
  readonly feedback: Contact;
  readonly load: Coil;
  inverts: boolean;
  behindSafetyRelay: boolean;
  coilSound: boolean;
  welded: boolean;
  closes: boolean;
  feedbackSound: boolean;
  loadSound: boolean;
}

export function createRelay(parameters: RelayParameters, board: ContactBoard): Relay {
  const relay: Relay = {
    parameters,
    coil: createCoil(),
    armature: createFollower(false),
    contact: createContact(board, false),
    feedback: createContact(board, false),
    load: createCoil(),
    inverts: false,
    behindSafetyRelay: false,
    coilSound: true,
    welded: false,
    closes: true,
    feedbackSound: true,
    loadSound: true,
  };
  prepareRelay(relay);
  return relay;
}

export function prepareRelay(relay: Relay): void {
  const p = relay.parameters;
  relay.inverts = p.energises === 'without command';
  relay.behindSafetyRelay = p.fedBy === 'safety relay';
  relay.coilSound = p.coil === 'sound';
  relay.welded = p.contact === 'welded';
  relay.closes = p.contact !== 'not closing';
  relay.feedbackSound = p.feedback === 'sound';
  relay.loadSound = p.load === 'sound';
}

/**
 * Returns whether it is still on its way: a relay that is not, and whose inputs stay, need not be
 * stepped.
 *
 * @param controlVolts volts of the control supply behind its fuse
 * @param safetyMade the contact of the safety relay
 */
export function stepRelay(
  relay: Relay,
  commanded: boolean,
  controlVolts: number,
  safetyMade: boolean,
  stepS: number,
): boolean {
  const p = relay.parameters;
  const fed = commanded !== relay.inverts && relay.coilSound;
  energiseCoil(relay.coil, fed ? controlVolts : 0, p.pullInVolts, p.dropOutVolts);
  const wanted = relay.coil.energised;
  const armature = relay.armature;
  follow(armature, wanted, wanted ? p.pullInS : p.dropOutS, stepS);
  const made = relay.welded || (armature.made && relay.closes);
  moveContact(relay.contact, made);
  moveContact(relay.feedback, relay.feedbackSound && (armature.made || relay.welded));
  const path = made && relay.loadSound && (safetyMade || !relay.behindSafetyRelay);
  energiseCoil(relay.load, path ? controlVolts : 0, p.pullInVolts, p.dropOutVolts);
  return armature.pendingS > 0;
}
