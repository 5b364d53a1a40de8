import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';
import { createFollower, type Follower, follow } from './follower.ts';
import { CONTACT_CONDITIONS } from './snap-switch.ts';

/**
 * The flame relay of the amplifier: it makes when the signal has stood above the threshold for the
 * pull-in time, and breaks when it has been below the drop-out level for the whole of the
 * flame-failure response time (terms of EN 298). An amplifier out of calibration adds its error
 * to both levels.
 */
export const flameRelayParameters = {
  id: name('name of the relay'),
  sensor: name('id of the flame sensor it listens to'),
  thresholdMicroamps: number('µA', 0.01, 50, 'signal at which it makes', 1),
  dropOutMicroamps: number('µA', 0.005, 50, 'signal below which it breaks', 0.7),
  thresholdErrorMicroamps: number('µA', -50, 50, 'error of the amplifier, added to both', 0),
  pullInS: number('s', 0, 5, 'how long the signal must stand before it makes', 0.3),
  responseS: number('s', 0, 30, 'flame-failure response time', 2),
  contact: choice(CONTACT_CONDITIONS, 'condition of the contact', 'sound'),
} as const satisfies ParameterTable;
export type FlameRelayParameters = Values<typeof flameRelayParameters>;

export interface FlameRelay {
  readonly parameters: FlameRelayParameters;
  readonly armature: Follower;
  readonly contact: Contact;
  pullInS: number;
  responseS: number;
  makeMicroamps: number;
  breakMicroamps: number;
  welded: boolean;
  open: boolean;
}

/** With its supply gone the armature falls at once. */
const DROP_OUT_S = 0.03;

export function createFlameRelay(
  parameters: FlameRelayParameters,
  board: ContactBoard,
): FlameRelay {
  const relay: FlameRelay = {
    parameters,
    armature: createFollower(false),
    contact: createContact(board, false),
    pullInS: 0,
    responseS: 0,
    makeMicroamps: 0,
    breakMicroamps: 0,
    welded: false,
    open: false,
  };
  prepareFlameRelay(relay);
  return relay;
}

export function prepareFlameRelay(relay: FlameRelay): void {
  const p = relay.parameters;
  relay.pullInS = p.pullInS;
  relay.responseS = p.responseS;
  relay.makeMicroamps = p.thresholdMicroamps + p.thresholdErrorMicroamps;
  relay.breakMicroamps =
    Math.min(p.dropOutMicroamps, p.thresholdMicroamps) + p.thresholdErrorMicroamps;
  relay.welded = p.contact === 'welded';
  relay.open = p.contact === 'open';
  showFlame(relay);
}

export function stepFlameRelay(
  relay: FlameRelay,
  microamps: number,
  powered: boolean,
  stepS: number,
): void {
  const armature = relay.armature;
  const wanted =
    powered && microamps >= (armature.made ? relay.breakMicroamps : relay.makeMicroamps);
  if (wanted !== armature.made || armature.pendingS !== 0) {
    moveArmature(relay, wanted, powered, stepS);
  }
}

function moveArmature(relay: FlameRelay, wanted: boolean, powered: boolean, stepS: number): void {
  const delayS = wanted ? relay.pullInS : powered ? relay.responseS : DROP_OUT_S;
  follow(relay.armature, wanted, delayS, stepS);
  showFlame(relay);
}

function showFlame(relay: FlameRelay): void {
  moveContact(relay.contact, relay.welded || (relay.armature.made && !relay.open));
}
