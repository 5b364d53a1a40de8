import type { ActionType, RunSetup, TimedAction } from '../../engine/index.ts';
import type { Plan } from '../atlas/plan.ts';
import { type Sample, takeSample } from '../atlas/take-sample.ts';

/** What the script does itself, and what changes nothing. */
const NOT_TAKEN_OVER: ReadonlySet<ActionType> = new Set([
  'call-for-heat',
  'reset',
  'reset-limits',
  'set-load',
  'check',
  'supply',
]);
const BEFORE_S = 1;

/**
 * The plant of a case, with its faults and what people did to it, put through the script of the atlas.
 * A fault that comes and goes stands, as it does with the particles of the atlas: otherwise the start
 * would be that of a sound plant, and whether it is caught is luck.
 */
export function sampleOfCase(plan: Plan, own: RunSetup): Sample {
  const actions = own.actions
    .filter(({ type }) => !NOT_TAKEN_OVER.has(type))
    .map((action) => ({ ...settled(action), t: BEFORE_S }));
  return takeSample(
    {
      ...plan.setup,
      plant: own.plant,
      profile: own.profile,
      initial: own.faults.length === 0 ? own.initial : initialOf(plan, own),
      faults: own.faults.map(standing),
      seed: own.seed,
      actions: [...actions, ...plan.setup.actions],
    },
    plan,
  );
}

/** What grows, or comes and goes, stands as it ends. */
function settled(action: TimedAction): TimedAction {
  if (action.type !== 'ramp-fault' && action.type !== 'intermittent-fault') return action;
  const { t, fault, severity } = action;
  return severity === 0
    ? { t, type: 'clear-fault', fault }
    : { t, type: 'insert-fault', fault, severity };
}

function standing(order: RunSetup['faults'][number]): RunSetup['faults'][number] {
  const { kind } = order.onset;
  return kind === 'step' ? order : { ...order, onset: { kind: 'start' } };
}

/**
 * As the atlas finds its plants, but for the time of day: how warm a boiler happened to be is no sign of
 * its fault. Where no fault stands, how the plant was left is what the case is about.
 */
function initialOf({ setup }: Plan, { initial }: RunSetup): RunSetup['initial'] {
  return initial.hour === undefined ? setup.initial : { ...setup.initial, hour: initial.hour };
}
