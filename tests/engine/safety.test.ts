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
  type Run,
  type RunEvent,
  type TimedAction,
} from '../../src/engine/index.ts';
import { faultsOf } from '../../src/faults/index.ts';
import { shippedSetup } from '../support/library.ts';

const UNTIL_S = 420;
const RUNS = 250;
const setup = shippedSetup('healthy-start');
const faults = faultsOf(setup.plant);
const { timings } = setup.profile;

const MAIN_STEPS: readonly StepName[] = [
  'main trial',
  'main proving',
  'low-fire hold',
  'modulation',
  'run down',
];
const STEPS_WITHOUT_LIMIT: readonly StepName[] = ['standby', 'modulation', 'lockout'];
/** Longest that any step with a limit may take: the sum of its phases, taken from the profile. */
const LONGEST_STEP_S = Math.max(
  timings.atRestLimitS,
  timings.prePurgeLimitS,
  timings.driveLightOffLimitS,
  timings.warmUpLimitS,
  timings.postPurgeS + timings.flameOutS,
);
/** The word of the inputs and the machine's answer fall in the same step of 10 ms. */
const ONE_STEP_S = 0.0101;

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

interface Told {
  readonly t: number;
  readonly step: StepName;
  readonly on: ReadonlySet<string>;
  readonly flame: boolean;
}

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
          const history = told(run);
          checkMainValves(history);
          checkSpark(history);
          checkPurgeBeforeFuel(run.events());
          checkFuelWithoutFlame(history);
          checkVentAgainstMain(history);
          checkLockoutHolds(run.events());
          checkNoSilentWait(run);
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

/** What was commanded, in which step, with the flame input as it was, at every change. */
function told(run: Run): Told[] {
  const history: Told[] = [];
  let step: StepName = 'standby';
  let flame = false;
  const on = new Set<string>();
  for (const event of run.events()) {
    if (event.type === 'step') step = event.step;
    else if (event.type === 'proved' && event.what === 'flame') flame = true;
    else if (event.type === 'lost' && event.what === 'flame') flame = false;
    else if (event.type === 'command') {
      if (event.to === 'open' || event.to === 'on') on.add(event.device);
      else on.delete(event.device);
    } else continue;
    const last = history.at(-1);
    if (last !== undefined && last.t === event.t) history.pop();
    history.push({ t: event.t, step, on: new Set(on), flame });
  }
  history.push({ t: run.timeS(), step, on: new Set(on), flame });
  return history;
}

function checkMainValves(history: readonly Told[]): void {
  for (const { step, on } of history) {
    if (on.has('downstream valve')) expect(MAIN_STEPS).toContain(step);
    if (on.has('upstream valve')) expect([...MAIN_STEPS, 'valve proving: fill']).toContain(step);
  }
}

function checkSpark(history: readonly Told[]): void {
  for (const { step, on } of history) {
    if (on.has('spark')) expect(['spark check', 'pilot trial']).toContain(step);
  }
}

function checkPurgeBeforeFuel(events: readonly RunEvent[]): void {
  let purged = false;
  let proved = false;
  let before: StepName = 'standby';
  for (const event of events) {
    if (event.type === 'step') {
      if (before === 'purge' && event.step === 'drive to light-off') purged = true;
      if (before === 'valve proving: hold full' && event.step === 'drive to purge') proved = true;
      if (event.step === 'standby' || event.step === 'lockout' || event.step === 'post-purge') {
        purged = false;
        proved = false;
      }
      before = event.step;
    }
    if (event.type === 'command' && event.to === 'open') {
      if (event.device === 'pilot valve' || event.device === 'downstream valve') {
        expect({ t: event.t, purged, proved }).toEqual({ t: event.t, purged: true, proved: true });
      }
    }
  }
}

function checkFuelWithoutFlame(history: readonly Told[]): void {
  let darkSince: number | null = null;
  for (const { t, on, flame } of history) {
    if (darkSince !== null) {
      expect(t - darkSince).toBeLessThanOrEqual(timings.pilotTrialS + ONE_STEP_S);
    }
    const fuel = on.has('pilot valve') || on.has('downstream valve');
    if (fuel && !flame) darkSince ??= t;
    else darkSince = null;
  }
}

function checkVentAgainstMain(history: readonly Told[]): void {
  for (const { on } of history) {
    if (on.has('vent valve')) {
      expect(on.has('upstream valve') || on.has('downstream valve')).toBe(false);
    }
  }
}

function checkLockoutHolds(events: readonly RunEvent[]): void {
  let locked = false;
  let reset = false;
  for (const event of events) {
    if (event.type === 'reset') reset = true;
    if (event.type !== 'step') continue;
    if (locked && event.step !== 'lockout') expect(reset).toBe(true);
    locked = event.step === 'lockout';
    if (locked) reset = false;
  }
}

function checkNoSilentWait(run: Run): void {
  const steps = run.events().filter((event) => event.type === 'step');
  for (const [i, event] of steps.entries()) {
    if (STEPS_WITHOUT_LIMIT.includes(event.step)) continue;
    const leftAt = steps[i + 1]?.t ?? run.timeS();
    expect(leftAt - event.t).toBeLessThanOrEqual(LONGEST_STEP_S + ONE_STEP_S);
  }
}
