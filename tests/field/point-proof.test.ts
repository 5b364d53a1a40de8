import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createContactBoard } from '../../src/field/contact.ts';
import {
  createPointProof,
  preparePointProof,
  stepPointProof,
} from '../../src/field/point-proof.ts';

const STEP_S = 0.01;

function proofAt(point: number, dwellS = 1) {
  const proof = createPointProof(createContactBoard());
  preparePointProof(proof, point, 1.5, 2.5, dwellS);
  return proof;
}

describe('proof of a point', () => {
  it('comes after the value has stood there for the dwell, not a step sooner', () => {
    const proof = proofAt(25);
    for (let i = 0; i < 99; i++) stepPointProof(proof, 25.4, true, STEP_S);
    expect(proof.contact.made).toBe(false);
    stepPointProof(proof, 25.4, true, STEP_S);
    expect(proof.contact.made).toBe(true);
  });

  it('never comes for a value that only passes, at 1.2 bands a dwell or faster', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.8, max: 90, noNaN: true }), (degPerS) => {
        const proof = proofAt(25);
        let everMade = false;
        for (let angle = 30; angle > 20; angle -= degPerS * STEP_S) {
          stepPointProof(proof, angle, true, STEP_S);
          everMade ||= proof.contact.made;
        }
        expect(everMade).toBe(false);
      }),
      { seed: 21, numRuns: 40 },
    );
  });

  it('once there, is kept by any value inside the break band', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 22.5, max: 27.5, noNaN: true }), { maxLength: 100 }),
        (walk) => {
          const proof = proofAt(25, 0);
          stepPointProof(proof, 25, true, STEP_S);
          for (const value of walk) {
            stepPointProof(proof, value, true, STEP_S);
            expect(proof.contact.made).toBe(true);
          }
        },
      ),
      { seed: 22 },
    );
  });

  it('is lost at once beyond the break band or without its further condition', () => {
    for (const [value, allowed] of [
      [27.6, true],
      [22.4, true],
      [25, false],
    ] as const) {
      const proof = proofAt(25, 0);
      stepPointProof(proof, 25, true, STEP_S);
      stepPointProof(proof, value, allowed, STEP_S);
      expect(proof.contact.made).toBe(false);
    }
  });
});
