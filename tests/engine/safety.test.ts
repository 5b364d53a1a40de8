/**
 * The invariants of the sequence, in closed loop: random faults with random onsets, and a person
 * who does anything at all, against the real plant. The exhaustive proof over the machine alone
 * stands with the machines; here the plant answers.
 *
 * They are those of the machine: what it commands in which step, given the inputs as it sees them.
 * A jumper, a wrong dial or a welded relay makes inputs untrue and may defeat an interlock, which is
 * what the debrief is about; no hand makes the machine itself command fuel without a purge, hold it
 * without a flame input, spark elsewhere, or leave a lockout without a reset.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StepName } from '../../machines/burner/index.ts';
import {
  type Action,
  createRun,
  type FaultOnset,
  type FaultOrder,
  type RunSetup,
  type TimedAction,
} from '../../src/engine/index.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { soundSetup } from '../faults/exercises.ts';
import { brokenInvariants } from '../support/invariants.ts';
import { anyPanelAct, anyWork } from './any-hands.ts';

const UNTIL_S = 420;
const anyOnset: fc.Arbitrary<FaultOnset> = fc.oneof(
  fc.constant<FaultOnset>({ kind: 'start' }),
  fc.integer({ min: 0, max: 300 }).map((atS): FaultOnset => ({ kind: 'time', atS })),
  fc
    .constantFrom<StepName>('purge', 'spark check', 'pilot trial', 'main trial', 'modulation')
    .map((step): FaultOnset => ({ kind: 'step', step })),
  fc
    .tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 1, max: 60 }))
    .map(([fromS, periodS]): FaultOnset => ({ kind: 'intermittent', fromS, periodS, duty: 0.4 })),
);

function anyFaultOf({ plant }: RunSetup): fc.Arbitrary<FaultOrder> {
  return fc
    .tuple(fc.constantFrom(...faultsOf(plant)), fc.integer({ min: 0, max: 100 }), anyOnset)
    .map(([{ id, severity }, percent, onset]) => ({
      fault: id,
      severity: severity.low + ((severity.high - severity.low) * percent) / 100,
      onset,
    }));
}

function anyLogOf({ plant, actions }: RunSetup): fc.Arbitrary<TimedAction[]> {
  const timed = (act: fc.Arbitrary<Action>) =>
    fc
      .tuple(fc.integer({ min: 0, max: UNTIL_S * 100 }), act)
      .map(([at, action]): TimedAction => ({ t: at / 100, ...action }));
  return fc
    .tuple(
      fc.array(timed(anyPanelAct(plant)), { maxLength: 8 }),
      fc.array(timed(anyWork(plant)), { maxLength: 8 }),
    )
    .map(([panel, work]) => [...actions, ...panel, ...work].sort((a, b) => a.t - b.t));
}

describe('with any faults and any hands', () => {
  it.each([
    ['dairy', 150, 10],
    ['laundry', 80, 8],
    ['school', 80, 8],
  ] as const)(
    '%s: in %d runs the invariants of the machine hold',
    (plant, numRuns, ways) => {
      const setup = soundSetup(plant);
      const lockouts = new Set<string>();
      const reached = new Set<string>();
      fc.assert(
        fc.property(
          fc.array(anyFaultOf(setup), { minLength: 0, maxLength: 3 }),
          anyLogOf(setup),
          fc.integer({ min: 1, max: 1000 }),
          (faults, actions, seed) => {
            const run = createRun({ ...setup, faults, actions, seed });
            run.advanceTo(UNTIL_S);
            expect(brokenInvariants(run)).toEqual([]);
            for (const event of run.events()) {
              if (event.type === 'lockout') lockouts.add(event.cause);
              if (event.type === 'step') reached.add(event.step);
            }
          },
        ),
        { numRuns, seed: 2026 },
      );
      // The sweep is worth something only if it went to many places.
      expect(lockouts.size).toBeGreaterThanOrEqual(ways);
      expect(reached.has('modulation')).toBe(true);
    },
    240_000,
  );
});
