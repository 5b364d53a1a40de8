/**
 * The invariants of the sequence, in closed loop: random faults with random onsets, and a person
 * who does anything at all, against the real plant. The exhaustive proof over the machine alone
 * stands with the machines; here the plant answers.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { StepName } from '../../machines/burner/index.ts';
import {
  type Action,
  createRun,
  type FaultOnset,
  type FaultOrder,
  type TimedAction,
} from '../../src/engine/index.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { brokenInvariants } from '../support/invariants.ts';
import { shippedSetup } from '../support/library.ts';

const UNTIL_S = 420;
const RUNS = 250;
const setup = shippedSetup('healthy-start');
const faults = faultsOf(setup.plant);
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
const anyFault: fc.Arbitrary<FaultOrder> = fc
  .tuple(fc.constantFrom(...faults), fc.integer({ min: 0, max: 100 }), anyOnset)
  .map(([{ id, severity }, percent, onset]) => ({
    fault: id,
    severity: severity.low + ((severity.high - severity.low) * percent) / 100,
    onset,
  }));
const anyAction: fc.Arbitrary<Action> = fc.oneof(
  fc.boolean().map((on): Action => ({ type: 'call-for-heat', on })),
  fc.boolean().map((pressed): Action => ({ type: 'reset', pressed })),
  fc.boolean().map((pressed): Action => ({ type: 'reset-limits', pressed })),
  fc.boolean().map((pressed): Action => ({ type: 'emergency-stop', pressed })),
  fc.boolean().map((on): Action => ({ type: 'supply', on })),
  fc.integer({ min: 0, max: 10 }).map((n): Action => ({ type: 'set-load', load: n / 10 })),
);
const anyLog: fc.Arbitrary<TimedAction[]> = fc
  .array(fc.tuple(fc.integer({ min: 0, max: UNTIL_S * 100 }), anyAction), { maxLength: 10 })
  .map((things) => [
    ...setup.actions,
    ...things.map(([at, action]): TimedAction => ({ t: at / 100, ...action })),
  ])
  .map((log) => log.sort((a, b) => a.t - b.t));

describe('with any faults and any hands', () => {
  it('the invariants of the sequence hold', () => {
    const lockouts = new Map<string, number>();
    fc.assert(
      fc.property(
        fc.array(anyFault, { minLength: 0, maxLength: 3 }),
        anyLog,
        fc.integer({ min: 1, max: 1000 }),
        (orders, actions, seed) => {
          const run = createRun({ ...setup, faults: orders, actions, seed });
          run.advanceTo(UNTIL_S);
          expect(brokenInvariants(run)).toEqual([]);
          for (const event of run.events()) {
            if (event.type === 'lockout') {
              lockouts.set(event.cause, (lockouts.get(event.cause) ?? 0) + 1);
            }
          }
        },
      ),
      { numRuns: RUNS, seed: 2026 },
    );
    // The sweep is worth something only if it went to many places.
    expect(lockouts.size).toBeGreaterThanOrEqual(10);
  }, 240_000);
});
