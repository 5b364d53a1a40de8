/** A plant with something wrong that a seed picked, put through its start once. */
import {
  binsOf,
  keyName,
  LOCKED_OUT,
  type MomentPassed,
  type Sample,
  STANDING,
  sampleStart,
  WATCH_A_START,
} from '../../diagnosis/index.ts';
import { faultsFor } from '../../engine/index.ts';
import { createRandom, nextUniform, type RandomState } from '../../numeric/index.ts';
import type { ItemRun } from '../item/item.ts';
import type { QuizPlant } from '../item/maker.ts';
import { FIRST_TOLERANCES, pickTolerances } from '../item/other-plant.ts';
import { setupOfRun } from '../item/setup-of-run.ts';

export interface SeededPlant {
  readonly plant: string;
  readonly seed: number;
  readonly run: ItemRun;
  /** Null: nothing is wrong. */
  readonly fault: string | null;
  /** Place in the causes of the atlas. */
  readonly cause: number;
  readonly severity: number;
  readonly sample: Sample;
  /** Of each key of the atlas; -1 for one that no particle has. */
  readonly bins: Int16Array;
  /** The step in which the record ends. */
  readonly endsIn: string;
  readonly lockout: { readonly cause: string; readonly step: string } | null;
  /** The situations of the start in their order. */
  readonly passed: readonly MomentPassed[];
  /** When each of them ended on the record, s. */
  readonly momentsS: Readonly<Record<string, number>>;
}

const MOST_KEPT = 12;

const kept = new WeakMap<QuizPlant, Map<string, SeededPlant>>();

/**
 * The same plant and seed give the same start everywhere; the last few are kept.
 *
 * @param seed whole, 0 to 2³¹ − 1
 * @param of causes to pick from, null being a sound plant; all faults of the atlas if left out
 */
export function seededPlant(
  plant: QuizPlant,
  seed: number,
  of?: readonly (string | null)[],
): SeededPlant {
  const name = JSON.stringify([seed, of ?? 'faults']);
  const known = kept.get(plant) ?? new Map<string, SeededPlant>();
  kept.set(plant, known);
  const made = known.get(name) ?? startOf(plant, seed, of);
  known.delete(name);
  known.set(name, made);
  for (const oldest of known.keys()) {
    if (known.size <= MOST_KEPT) break;
    known.delete(oldest);
  }
  return made;
}

function startOf(
  plant: QuizPlant,
  seed: number,
  of: readonly (string | null)[] | undefined,
): SeededPlant {
  const { atlas, id } = plant;
  const chance = createRandom(seed, `quiz plant of ${id}`);
  const cause = pickCause(plant, of, chance);
  const fault = atlas.causes[cause]?.fault ?? null;
  const severity = fault === null ? 0 : severityOf(plant, fault, chance);
  const tolerances = pickTolerances(chance);
  return plantWith(plant, { seed, fault, severity, tolerances });
}

/** The start of one plant of this kind; its cause is -1 where the atlas has no such fault. */
export function plantWith(
  { atlas, plan, id }: QuizPlant,
  {
    fault,
    severity,
    seed = 0,
    tolerances = FIRST_TOLERANCES,
  }: Pick<SeededPlant, 'fault' | 'severity'> & {
    readonly seed?: number;
    readonly tolerances?: number;
  },
): SeededPlant {
  const whole = {
    plant: id,
    tolerances,
    faults: fault === null ? [] : [{ fault, severity, onset: { kind: 'start' as const } }],
    actions: [],
  };
  const { sample, passed } = sampleStart(setupOfRun(plan, whole), plan);
  const textAt = (check: string, moment: string, aspect: string) => {
    const value = sample.get(keyName(check, moment, aspect));
    return value === undefined ? null : String(value);
  };
  const lockout = textAt('history|', LOCKED_OUT, 'cause');
  return {
    plant: id,
    seed,
    run: { ...whole, untilS: passed.at(-1)?.toS ?? 0 },
    fault,
    cause: atlas.causes.findIndex((one) => one.fault === fault),
    severity,
    sample,
    bins: binsOf(atlas, sample),
    endsIn: textAt(WATCH_A_START, STANDING, 'ends in') ?? '',
    lockout:
      lockout === null
        ? null
        : { cause: lockout, step: textAt('history|', LOCKED_OUT, 'step') ?? '' },
    passed,
    momentsS: Object.fromEntries(passed.map(({ moment, toS }) => [moment, toS])),
  };
}

/** By the root of the prior: what is common comes more often, and what is rare comes too. */
function pickCause(
  { atlas }: QuizPlant,
  of: readonly (string | null)[] | undefined,
  chance: RandomState,
): number {
  const weights = atlas.causes.map(({ fault, priorWeight }) => {
    const wanted = of === undefined ? fault !== null : of.includes(fault);
    return wanted ? Math.sqrt(priorWeight) : 0;
  });
  let left = nextUniform(chance) * weights.reduce((sum, one) => sum + one, 0);
  for (let cause = 0; cause < weights.length; cause++) {
    left -= weights[cause] as number;
    if (left < 0) return cause;
  }
  return Math.max(
    0,
    weights.findIndex((one) => one > 0),
  );
}

function severityOf({ plan }: QuizPlant, fault: string, chance: RandomState): number {
  const severity = faultsFor(plan.setup.plant).find(({ id }) => id === fault)?.severity;
  if (severity === undefined) return 1;
  const { low, typical, high } = severity;
  return low === high ? typical : low + (high - low) * nextUniform(chance);
}
