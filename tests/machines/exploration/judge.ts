import type { AnyStateMachine } from 'xstate';
import {
  type Cause,
  INPUT_BITS,
  type InputName,
  outputsFor,
  STEP_INFO,
  type StateMeta,
  type StepName,
  type Timings,
  type Variant,
  WATCHES,
} from '../../../machines/index.ts';
import { alwaysIs } from './cubes.ts';
import { createEvaluator, type Evaluator } from './evaluator.ts';
import { type Configuration, type Counts, explore, type Move } from './explore.ts';
import { commands, commandsFuel } from './monitor.ts';

export interface Verdict {
  readonly counts: Counts;
  /** Each as `IN-n: what was seen where`, without repetition. */
  readonly violations: readonly string[];
  readonly configurations: readonly Configuration[];
  readonly evaluator: Evaluator;
}

const MAIN_STEPS: ReadonlySet<string> = new Set([
  'main trial',
  'main proving',
  'low-fire hold',
  'modulation',
  'run down',
]);

/** What shows that a cause still stands; written again here, because the machine's own table is on trial. */
const STANDS: { readonly [C in Cause]?: readonly [InputName, boolean][] } = {
  'safety relay did not follow': [['safetyRelayFeedback', true]],
  'air proved with fan at rest': [['airProved', true]],
  'flame seen at rest': [['flame', true]],
  'flame seen before fuel': [['flame', true]],
  'gas pressure low': [['gasPressureAboveLow', false]],
  'gas pressure high': [['gasPressureBelowHigh', false]],
  'water low': [['waterAboveFirst', false]],
  'water very low': [['waterAboveSecond', false]],
  'high limit open': [['highLimitMade', false]],
  'furnace pressure high': [['furnacePressureInBand', false]],
  'emergency stop': [['emergencyStopClear', false]],
  'supply out of band': [['supplyInBand', false]],
  'control fuse open': [['controlFuseMade', false]],
};
const VALVES_STAND: readonly [InputName, boolean][] = [
  ['upstreamValveClosed', false],
  ['downstreamValveClosed', false],
];

/** Explores the machine for one variant and holds it to the seven invariants; may stop at so many violations. */
export function judge(
  machine: AnyStateMachine,
  variant: Variant,
  timings: Timings,
  stopAt = Number.POSITIVE_INFINITY,
): Verdict {
  const evaluator = createEvaluator(machine, variant, timings);
  const violations = new Set<string>();
  const configurations: Configuration[] = [];
  const counts = explore(evaluator, (move) => {
    const { to } = move;
    if (to.arrivals.length === 1) {
      configurations.push(to);
      for (const text of judgeConfiguration(to, variant)) violations.add(text);
    }
    for (const text of judgeMove(move, variant)) violations.add(text);
    return violations.size < stopAt;
  });
  return { counts, violations: [...violations], configurations, evaluator };
}

/** Vent and kind of pilot change only what is driven, so that one exploration judges them all. */
export function drivenAlike({ ignition, ...rest }: Variant): Variant[] {
  const ignitions =
    ignition === 'direct spark'
      ? [ignition]
      : (['interrupted pilot', 'intermittent pilot'] as const);
  const vents = ['none', 'proving', 'normally open'] as const;
  return ignitions.flatMap((one) => vents.map((vent) => ({ ...rest, vent, ignition: one })));
}

function* judgeConfiguration(at: Configuration, variant: Variant): Generator<string> {
  const { meta, snapshot, timers } = at;
  for (const driven of drivenAlike(variant)) yield* judgeOutputs(meta, driven);

  const inSequence = timers.filter(({ owner }) => owner.path[0] === 'sequence');
  const mayRest = meta.limit === null;
  const restsAllowed = ['idle', 'modulation', 'lockout'].includes(meta.phase);
  if (mayRest && !restsAllowed) yield `IN-7: ${meta.step} (${meta.phase}) has no limit`;
  if (!mayRest && !inSequence.some(({ delay }) => delay === meta.limit)) {
    yield `IN-7: ${meta.step} (${meta.phase}) says it is limited by ${meta.limit}, which does not run`;
  }
  if (meta.lasts !== null && !inSequence.some(({ delay }) => delay === meta.lasts)) {
    yield `IN-7: ${meta.step} (${meta.phase}) says it lasts ${meta.lasts}, which does not run`;
  }
  const selfClearing = snapshot._nodes.some(({ id }) => SELF_CLEARING_STATES.has(id));
  if (selfClearing && WATCHES[meta.watch].gasPressure) {
    yield `IN-7: ${meta.step} (${meta.phase}) goes on against a limit that clears itself`;
  }
  if (snapshot.context.step !== meta.step || snapshot.context.watch !== meta.watch) {
    yield `IN-7: ${meta.step} (${meta.phase}) is supervised as ${snapshot.context.step}`;
  }
}

const SELF_CLEARING_STATES: ReadonlySet<string> = new Set([
  'burner.limits.waterLow',
  'burner.supply.out',
]);

function* judgeOutputs(meta: StateMeta, variant: Variant): Generator<string> {
  const outputs = outputsFor(meta, variant);
  const on = (command: Parameters<typeof commands>[1]): boolean => commands(outputs, command);
  const where = `${meta.step} (${meta.phase}; vent ${variant.vent}, ${variant.ignition})`;
  if (!MAIN_STEPS.has(meta.step)) {
    const filling = meta.step === 'valve proving: fill';
    const emptying = meta.step === 'valve proving: empty' && variant.vent === 'none';
    if (on('upstreamValve') && !filling) yield `IN-1: upstream valve in ${where}`;
    if (on('downstreamValve') && !emptying) yield `IN-1: downstream valve in ${where}`;
  }
  const sparkSteps =
    variant.ignition === 'direct spark'
      ? ['spark check', 'main trial']
      : ['spark check', 'pilot trial'];
  if (on('spark') && !sparkSteps.includes(meta.step)) yield `IN-2: spark in ${where}`;
  if (on('ventValve') && (on('upstreamValve') || on('downstreamValve'))) {
    yield `IN-5: vent and main valve in ${where}`;
  }
}

function* judgeMove(move: Move, variant: Variant): Generator<string> {
  const { from, event, cube, to, lockoutStep, cancelled } = move;
  const path = `${from?.meta.step ?? 'power up'} → ${to.meta.step}`;

  if (to.monitor.fuel && !from?.monitor.fuel) {
    if (!to.monitor.purged) yield `IN-3: fuel without a completed purge, ${path}`;
    if (variant.valveProving !== 'none' && !to.monitor.proved) {
      yield `IN-3: fuel without completed valve proving, ${path}`;
    }
  }

  const trial = variant.ignition === 'direct spark' ? 'main trial' : 'pilot trial';
  if (commandsFuel(to) && !alwaysIs(cube, INPUT_BITS.flame, true)) {
    if (to.meta.step !== trial) yield `IN-4: fuel without flame in ${to.meta.step}, ${path}`;
    const again =
      from?.meta.step === trial && [...cancelled].some((timer) => timer.includes('Trial'));
    if (again) yield `IN-4: trial begun again, ${path}`;
  }

  if (from?.meta.step === 'lockout') yield* judgeLeaving(from, event, cube, to, variant);

  if (typeof event === 'object' && 'owner' in event && !cancelled.has(event.event)) {
    yield `IN-7: ${event.delay} of ${event.owner.id} runs out and leads nowhere`;
  }
  if (to.meta.phase === 'idle' && !alwaysIs(cube, INPUT_BITS.callForHeat, false)) {
    yield `IN-7: standby rests although heat is called for, ${path}`;
  }
  const { cause } = to.snapshot.context;
  if (
    typeof event === 'object' &&
    'saved' in event &&
    event.saved !== null &&
    cause !== event.saved
  ) {
    yield `IN-6: power came back without the lockout of ${event.saved}`;
  }
  if (from !== null && to.meta.step === 'lockout' && from.meta.step !== 'lockout') {
    const known = STEP_INFO[lockoutStep as StepName].some(({ meta }) =>
      possibleCauses(meta, variant).has(cause as Cause),
    );
    if (!known) yield `IN-7: ${lockoutStep} does not say that it can fail as ${cause}`;
  }
}

function* judgeLeaving(
  from: Configuration,
  event: Move['event'],
  cube: Move['cube'],
  to: Configuration,
  variant: Variant,
): Generator<string> {
  const { cause } = from.snapshot.context;
  const same = to.meta.step === 'lockout' && to.snapshot.context.cause === cause;
  if (same) return;
  const pressed = from.snapshot._nodes.some(({ path }) => path.join('.') === 'reset.pressed');
  const released = alwaysIs(cube, INPUT_BITS.resetPressed, false);
  if (event !== 'inputs' || !pressed || !released) yield `IN-6: ${cause} left without a reset`;
  const standing = [
    ...(STANDS[cause as Cause] ?? []),
    ...(cause === 'valve not proved closed' && variant.proofOfClosure ? VALVES_STAND : []),
  ];
  for (const [input, at] of standing) {
    if (!alwaysIs(cube, INPUT_BITS[input], !at))
      yield `IN-6: ${cause} cleared while ${input} still shows it`;
  }
}

/** What a state may end in: its own failures, and those that supervision holds it to. */
function possibleCauses(meta: StateMeta, variant: Variant): ReadonlySet<Cause> {
  const watch = WATCHES[meta.watch];
  const causes = new Set<Cause>(meta.failsAs.map(({ cause }) => cause));
  for (const cause of ALWAYS_WATCHED) causes.add(cause);
  if (watch.gasPressure) causes.add('gas pressure low').add('gas pressure high');
  if (watch.safetyRelay) causes.add('safety relay did not follow');
  if (watch.airLost !== null) causes.add(watch.airLost);
  if (watch.keepsTo === 'light-off') causes.add('light-off position not proved');
  if (watch.keepsTo === 'curve') {
    causes.add('position left its curve');
    if (variant.fan === 'variable speed') causes.add('speed left its curve');
  }
  const dark = !['firing', 'modulating'].includes(meta.watch);
  if (dark) causes.add(watch.flameSeen);
  return causes;
}
const ALWAYS_WATCHED = [
  'emergency stop',
  'water very low',
  'high limit open',
  'furnace pressure high',
  'control fuse open',
] as const;
