/**
 * The invariants of the sequence, watched in a run: what the burner was told, in which step, with
 * the flame input as it was. The exhaustive proof over the machine alone stands with the machines.
 */
import type { StepName, Timings, Variant } from '../../machines/burner/index.ts';
import type { Run, RunEvent } from '../../src/engine/index.ts';

interface Told {
  readonly t: number;
  readonly step: StepName;
  readonly on: ReadonlySet<string>;
  readonly flame: boolean;
}

const MAIN_STEPS: readonly StepName[] = [
  'main trial',
  'main proving',
  'low-fire hold',
  'modulation',
  'run down',
];
const STEPS_WITHOUT_LIMIT: readonly StepName[] = ['standby', 'modulation', 'lockout'];
/** The word of the inputs and the machine's answer fall in the same step of 10 ms. */
const ONE_STEP_S = 0.0101;

/** Each invariant that did not hold, with its moment; none in a run that is in order. */
export function brokenInvariants(run: Run): string[] {
  const { variant } = run.setup.plant;
  const { timings } = run.setup.profile;
  const history = told(run);
  return [
    ...mainValvesElsewhere(history, variant),
    ...sparkElsewhere(history, variant),
    ...fuelUnprepared(run.events(), variant),
    ...fuelWithoutFlame(history, variant, timings),
    ...ventAgainstMain(history),
    ...lockoutsLeft(run.events()),
    ...silentWaits(run, timings),
  ];
}

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

function mainValvesElsewhere(history: readonly Told[], variant: Variant): string[] {
  const downstream = [...MAIN_STEPS];
  if (variant.vent === 'none') downstream.push('valve proving: empty');
  const upstream: StepName[] = [...MAIN_STEPS, 'valve proving: fill'];
  return history.flatMap(({ t, step, on }) => [
    ...(on.has('downstream valve') && !downstream.includes(step)
      ? [`downstream valve open in ${step} at ${t} s`]
      : []),
    ...(on.has('upstream valve') && !upstream.includes(step)
      ? [`upstream valve open in ${step} at ${t} s`]
      : []),
  ]);
}

function trialOf(variant: Variant): StepName {
  return variant.ignition === 'direct spark' ? 'main trial' : 'pilot trial';
}

function sparkElsewhere(history: readonly Told[], variant: Variant): string[] {
  const allowed: StepName[] = ['spark check', trialOf(variant)];
  return history.flatMap(({ t, step, on }) =>
    on.has('spark') && !allowed.includes(step) ? [`spark in ${step} at ${t} s`] : [],
  );
}

/** Fuel before a whole purge and, where the valves are proved before a start, before that. */
function fuelUnprepared(events: readonly RunEvent[], variant: Variant): string[] {
  const broken: string[] = [];
  let purged = false;
  let proved = variant.valveProving !== 'before start';
  let before: StepName = 'standby';
  for (const event of events) {
    if (event.type === 'step') {
      if (before === 'purge' && event.step === 'drive to light-off') purged = true;
      if (before === 'valve proving: hold full' && event.step === 'drive to purge') proved = true;
      if (event.step === 'standby' || event.step === 'lockout' || event.step === 'post-purge') {
        purged = false;
        proved = variant.valveProving !== 'before start';
      }
      before = event.step;
    }
    if (event.type !== 'command' || event.to !== 'open') continue;
    const emptying = before === 'valve proving: empty';
    const fuel =
      event.device === 'pilot valve' || (event.device === 'downstream valve' && !emptying);
    if (fuel && !purged) broken.push(`fuel without a purge at ${event.t} s`);
    if (fuel && !proved) broken.push(`fuel without valve proving at ${event.t} s`);
  }
  return broken;
}

function fuelWithoutFlame(history: readonly Told[], variant: Variant, timings: Timings): string[] {
  const trialS = variant.ignition === 'direct spark' ? timings.mainTrialS : timings.pilotTrialS;
  const broken: string[] = [];
  let darkSince: number | null = null;
  for (const { t, step, on, flame } of history) {
    if (darkSince !== null && t - darkSince > trialS + ONE_STEP_S) {
      broken.push(`fuel without flame from ${darkSince} to ${t} s`);
    }
    const emptying = step === 'valve proving: empty';
    const fuel = on.has('pilot valve') || (on.has('downstream valve') && !emptying);
    if (fuel && !flame) darkSince ??= t;
    else darkSince = null;
  }
  return broken;
}

function ventAgainstMain(history: readonly Told[]): string[] {
  return history.flatMap(({ t, on }) =>
    on.has('vent valve') && (on.has('upstream valve') || on.has('downstream valve'))
      ? [`vent and main valve open together at ${t} s`]
      : [],
  );
}

function lockoutsLeft(events: readonly RunEvent[]): string[] {
  const broken: string[] = [];
  let locked = false;
  let reset = false;
  for (const event of events) {
    if (event.type === 'reset') reset = true;
    if (event.type !== 'step') continue;
    if (locked && event.step !== 'lockout' && !reset) {
      broken.push(`lockout left without a reset at ${event.t} s`);
    }
    locked = event.step === 'lockout';
    if (locked) reset = false;
  }
  return broken;
}

/** Longest that any step with a limit may take: the sum of its phases, taken from the profile. */
function longestStepS(timings: Timings): number {
  return Math.max(
    timings.atRestLimitS,
    timings.prePurgeLimitS,
    timings.driveLightOffLimitS,
    timings.warmUpLimitS,
    timings.postPurgeS + timings.flameOutS,
  );
}

function silentWaits(run: Run, timings: Timings): string[] {
  const longestS = longestStepS(timings) + ONE_STEP_S;
  const steps = run.events().filter((event) => event.type === 'step');
  return steps.flatMap((event, i) => {
    if (STEPS_WITHOUT_LIMIT.includes(event.step)) return [];
    const stoodS = (steps[i + 1]?.t ?? run.timeS()) - event.t;
    return stoodS > longestS ? [`${event.step} stood ${stoodS} s from ${event.t} s`] : [];
  });
}
