import { type Contact, type ContactBoard, createContact, moveContact } from './contact.ts';
import { followWithLag, lagGain } from './lag.ts';

/**
 * Proof that a position or a speed stands at a point: within the make band, and steady, for the
 * dwell; lost as soon as the value is outside the wider break band.
 *
 * Steady means that the value is within half the make band of its own lagged self (lag half the
 * dwell): one that passes by more than about 1.2 make bands in a dwell proves nothing.
 */
export interface PointProof {
  readonly contact: Contact;
  point: number;
  makeBand: number;
  breakBand: number;
  dwellS: number;
  /** Inside the make band, not proved yet. */
  waiting: boolean;
  laggedValue: number;
  steadyS: number;
  /** While the value is strictly between these two, a step changes nothing. */
  idleAbove: number;
  idleBelow: number;
}

const ROUNDING_S = 1e-9;

export function createPointProof(board: ContactBoard): PointProof {
  return {
    contact: createContact(board, false),
    point: 0,
    makeBand: 1,
    breakBand: 2,
    dwellS: 0,
    waiting: false,
    laggedValue: 0,
    steadyS: 0,
    idleAbove: Number.POSITIVE_INFINITY,
    idleBelow: Number.NEGATIVE_INFINITY,
  };
}

export function preparePointProof(
  proof: PointProof,
  point: number,
  makeBand: number,
  breakBand: number,
  dwellS: number,
): void {
  proof.point = point;
  proof.makeBand = makeBand;
  proof.breakBand = Math.max(makeBand, breakBand);
  proof.dwellS = dwellS;
  disturbPointProof(proof);
}

/** Look again in the next step, wherever the value is. */
function disturbPointProof(proof: PointProof): void {
  proof.idleAbove = Number.POSITIVE_INFINITY;
  proof.idleBelow = Number.NEGATIVE_INFINITY;
}

/** @param allowed a further condition of the proof, such as an end switch */
export function stepPointProof(
  proof: PointProof,
  value: number,
  allowed: boolean,
  stepS: number,
): void {
  if (allowed && value > proof.idleAbove && value < proof.idleBelow) return;
  judge(proof, value, allowed, stepS);
}

function judge(proof: PointProof, value: number, allowed: boolean, stepS: number): void {
  const { point, makeBand, breakBand } = proof;
  const error = Math.abs(value - point);
  if (proof.contact.made) {
    proof.waiting = false;
    if (!allowed || error > breakBand) moveContact(proof.contact, false);
  } else if (!allowed || error > makeBand) {
    proof.waiting = false;
  } else {
    waitSteady(proof, value, stepS);
  }
  if (proof.waiting) {
    disturbPointProof(proof);
  } else if (proof.contact.made) {
    proof.idleAbove = point - breakBand;
    proof.idleBelow = point + breakBand;
  } else {
    proof.idleAbove = value > point ? point + makeBand : Number.NEGATIVE_INFINITY;
    proof.idleBelow = value > point ? Number.POSITIVE_INFINITY : point - makeBand;
  }
}

/** Nothing will change while the value stays what it is. */
export function isProofAtRest(proof: PointProof): boolean {
  return !proof.waiting;
}

function waitSteady(proof: PointProof, value: number, stepS: number): void {
  if (!proof.waiting) {
    proof.waiting = true;
    proof.laggedValue = value;
    proof.steadyS = 0;
  }
  proof.laggedValue = followWithLag(proof.laggedValue, value, lagGain(0.5 * proof.dwellS, stepS));
  const steady = Math.abs(value - proof.laggedValue) <= 0.5 * proof.makeBand;
  proof.steadyS = steady ? proof.steadyS + stepS : 0;
  if (steady && proof.steadyS >= proof.dwellS - ROUNDING_S) {
    proof.waiting = false;
    moveContact(proof.contact, true);
  }
}
