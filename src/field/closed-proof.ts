import { choice, name, number, type ParameterTable, type Values } from '../quantity/index.ts';
import type { ContactBoard } from './contact.ts';
import {
  CONTACT_CONDITIONS,
  createSnapSwitch,
  prepareSnapSwitch,
  type SnapSwitch,
  stepSnapSwitch,
} from './snap-switch.ts';

/**
 * Proof of closure: a switch on a valve's stem that makes only in the over-travel after the seat
 * has sealed, so that made means shut. Out of adjustment (> 1) it makes before the seat seals;
 * below 0 the stem never reaches it.
 */
export const closedProofParameters = {
  id: name('name of the switch'),
  valve: choice(['upstream valve', 'downstream valve'], 'whose stem'),
  overTravelStem: number(
    '1',
    0.001,
    0.2,
    'stem position at which the seat seals, as the valve has it',
    0.02,
  ),
  adjustment: number('1', -1, 20, 'switch point as a share of the over-travel', 0.6),
  differentialStem: number('1', 0.0005, 0.1, 'how much further it breaks when opening', 0.005),
  contact: choice(CONTACT_CONDITIONS, 'welded: stuck made; open: stuck open', 'sound'),
} as const satisfies ParameterTable;
export type ClosedProofParameters = Values<typeof closedProofParameters>;

export interface ClosedProof {
  readonly parameters: ClosedProofParameters;
  readonly snap: SnapSwitch;
  readonly upstream: boolean;
}

export function createClosedProof(
  parameters: ClosedProofParameters,
  board: ContactBoard,
): ClosedProof {
  const proof: ClosedProof = {
    parameters,
    snap: createSnapSwitch(board),
    upstream: parameters.valve === 'upstream valve',
  };
  prepareClosedProof(proof);
  return proof;
}

export function prepareClosedProof(proof: ClosedProof): void {
  const p = proof.parameters;
  const makeAt = p.adjustment * p.overTravelStem;
  prepareSnapSwitch(proof.snap, false, makeAt, makeAt + p.differentialStem, 0, false, p.contact);
}

/** @param stem 0 at the end of its travel, 1 fully open */
export function stepClosedProof(proof: ClosedProof, stem: number, stepS: number): void {
  stepSnapSwitch(proof.snap, stem, false, stepS);
}
