/** What is known before the question: what the start told, and none to two readings after it. */
import {
  afterSeeing,
  type Belief,
  type Observation,
  priorBelief,
  type Told,
} from '../../../diagnosis/index.ts';
import { nextUniform, type RandomState } from '../../../numeric/index.ts';
import { causeSharesOf } from '../../evidence/belief-of.ts';
import type { SeededPlant } from '../../evidence/seeded-plant.ts';
import { toldInWords, toldOf, toldOnArrival } from '../../evidence/told.ts';
import type { QuizPlant } from '../../item/maker.ts';
import { readableKeys } from './readable.ts';
import { worthOfChecks } from './worth.ts';

export interface SoFar {
  /** The record of the start is shown; without it only what the panel keeps is known. */
  readonly chart: boolean;
  readonly readings: readonly Told[];
  readonly seen: readonly Observation[];
  /** Checks that have been made. */
  readonly made: readonly string[];
  readonly belief: Belief;
  /** With the chart not looked at; the same where there is none. */
  readonly inWords: Belief;
  /** Causes that still stand, the likeliest first; places in the atlas. */
  readonly standing: readonly number[];
}

/** What has less is as good as ruled out. */
const STANDS_SHARE = 0.02;
/** So much of the belief is with those that stand. */
const LEAST_OF_ALL = 0.95;
const FEWEST = 2;
const MOST = 6;
const MOST_READINGS = 2;
/** A learner would take one of these next. */
const AMONG_BEST = 3;
/** What one check told at one moment, in so many words. */
const MOST_WORDS = 2;

/** Every state of knowledge that leaves two to six causes, each of them without and with the chart. */
export function waysSoFar(
  plant: QuizPlant,
  seeded: SeededPlant,
  chance: RandomState,
): readonly SoFar[] {
  return [true, false].flatMap((chart) => {
    const found: SoFar[] = [];
    let now = begin(plant, seeded, chart);
    for (let readings = 0; ; readings++) {
      if (isOpen(plant, seeded, now)) found.push(now);
      if (readings === MOST_READINGS || now.standing.length < FEWEST) return found;
      const next = oneMore(plant, seeded, now, chance);
      if (next === null) return found;
      now = next;
    }
  });
}

function begin(plant: QuizPlant, seeded: SeededPlant, chart: boolean): SoFar {
  const prior = priorBelief(plant.atlas);
  const words = toldInWords(plant, seeded);
  const seen = chart ? toldOnArrival(plant, seeded) : words;
  const belief = afterSeeing(prior, plant.atlas, seen);
  const inWords = chart ? afterSeeing(prior, plant.atlas, words) : belief;
  const standing = standingOf(plant, belief);
  return { chart, readings: [], seen, made: [], belief, inWords, standing };
}

/** After one of the checks that are worth most for their minutes. */
function oneMore(
  plant: QuizPlant,
  seeded: SeededPlant,
  now: SoFar,
  chance: RandomState,
): SoFar | null {
  const open = worthOfChecks(plant, seeded, now.belief, now.made)
    .filter((one) => readableKeys(plant, one).length > 0)
    .slice(0, AMONG_BEST);
  const one = open[Math.floor(nextUniform(chance) * open.length)];
  if (one === undefined) return null;
  const keys = readableKeys(plant, one, now.belief).slice(0, MOST_WORDS);
  const seen = keys.map((key) => ({ key, bin: seeded.bins[key] as number }));
  const belief = afterSeeing(now.belief, plant.atlas, seen);
  return {
    ...now,
    readings: [...now.readings, ...toldOf(plant, seeded, keys)],
    seen: [...now.seen, ...seen],
    made: [...now.made, one.check],
    belief,
    standing: standingOf(plant, belief),
  };
}

function standingOf(plant: QuizPlant, belief: Belief): readonly number[] {
  const shares = causeSharesOf(plant, belief);
  return [...shares.keys()]
    .filter((cause) => (shares[cause] as number) >= STANDS_SHARE)
    .sort((a, b) => (shares[b] as number) - (shares[a] as number) || a - b);
}

/** Few enough to think through, its own among them, and none of them that all is well. */
function isOpen(plant: QuizPlant, { cause }: SeededPlant, { belief, standing }: SoFar): boolean {
  const shares = causeSharesOf(plant, belief);
  const all = standing.reduce((sum, one) => sum + (shares[one] as number), 0);
  return (
    standing.length >= FEWEST &&
    standing.length <= MOST &&
    all >= LEAST_OF_ALL &&
    standing.includes(cause) &&
    standing.every((one) => plant.atlas.causes[one]?.fault !== null)
  );
}
