import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';

/** What may be wrong with the contact itself, whatever the mechanism behind it does. */
export const CONTACT_CONDITIONS = ['sound', 'welded', 'open'] as const;
export type ContactCondition = (typeof CONTACT_CONDITIONS)[number];

/**
 * The mechanism of every two-point switch on a measured quantity: it makes at one value, breaks at
 * another, each after the value has stood there for the dwell, and may latch open until reset.
 * The devices around it say what is measured, in which unit and what can go wrong.
 */
export interface SnapSwitch {
  readonly contact: Contact;
  /** What the mechanism does, whatever its latch and its contact then make of it. */
  made: boolean;
  pendingS: number;
  /** Latched open since it last broke. */
  tripped: boolean;
  /** While the value is strictly between these two, a step changes nothing. */
  idleAbove: number;
  idleBelow: number;
  makesOnRise: boolean;
  makeAt: number;
  breakAt: number;
  dwellS: number;
  latches: boolean;
  welded: boolean;
  open: boolean;
}

const ROUNDING_S = 1e-9;

export function createSnapSwitch(board: ContactBoard): SnapSwitch {
  return {
    contact: createContact(board, false),
    made: false,
    pendingS: 0,
    tripped: false,
    idleAbove: Number.POSITIVE_INFINITY,
    idleBelow: Number.NEGATIVE_INFINITY,
    makesOnRise: true,
    makeAt: 0.5,
    breakAt: 0.25,
    dwellS: 0,
    latches: false,
    welded: false,
    open: false,
  };
}

export function prepareSnapSwitch(
  snap: SnapSwitch,
  makesOnRise: boolean,
  makeAt: number,
  breakAt: number,
  dwellS: number,
  latches: boolean,
  condition: ContactCondition,
): void {
  snap.makesOnRise = makesOnRise;
  snap.makeAt = makeAt;
  snap.breakAt = breakAt;
  snap.dwellS = dwellS;
  snap.latches = latches;
  snap.welded = condition === 'welded';
  snap.open = condition === 'open';
  disturbSnapSwitch(snap);
}

/** After a change of a set point: look again in the next step, wherever the value is. */
export function disturbSnapSwitch(snap: SnapSwitch): void {
  snap.idleAbove = Number.POSITIVE_INFINITY;
  snap.idleBelow = Number.NEGATIVE_INFINITY;
}

/** A latched switch resets only while its quantity is back past the make point: it is trip-free. */
export function stepSnapSwitch(
  snap: SnapSwitch,
  value: number,
  resetPressed: boolean,
  stepS: number,
): void {
  if (value > snap.idleAbove && value < snap.idleBelow) return;
  moveSnapSwitch(snap, value, resetPressed, stepS);
}

function moveSnapSwitch(
  snap: SnapSwitch,
  value: number,
  resetPressed: boolean,
  stepS: number,
): void {
  const wasMade = snap.made;
  const { makesOnRise, makeAt, breakAt } = snap;
  const wanted = makesOnRise
    ? wasMade
      ? value > breakAt
      : value >= makeAt
    : wasMade
      ? value < breakAt
      : value <= makeAt;
  if (wanted === wasMade) {
    snap.pendingS = 0;
  } else {
    snap.pendingS += stepS;
    if (snap.pendingS >= snap.dwellS - ROUNDING_S) {
      snap.made = wanted;
      snap.pendingS = 0;
    }
  }
  const made = snap.made;
  if (snap.latches) {
    if (wasMade && !made) snap.tripped = true;
    else if (made && resetPressed) snap.tripped = false;
  }
  moveContact(snap.contact, snap.welded || (made && !snap.tripped && !snap.open));

  if (snap.pendingS > 0 || snap.tripped) {
    disturbSnapSwitch(snap);
  } else if (makesOnRise === made) {
    snap.idleAbove = made ? breakAt : makeAt;
    snap.idleBelow = Number.POSITIVE_INFINITY;
  } else {
    snap.idleAbove = Number.NEGATIVE_INFINITY;
    snap.idleBelow = made ? breakAt : makeAt;
  }
}
