/** Readings that prove what a seeded plant has, chosen as one would look for it. */
import {
  type Belief,
  type Observation,
  partsOfCheck,
  REDUNDANT_BITS,
  rankChecks,
  sharesOf,
} from '../../diagnosis/index.ts';
import type { QuizPlant } from '../item/maker.ts';
import { beliefOf, causeSharesOf } from './belief-of.ts';
import { oddsFactor, saysIt } from './odds.ts';
import { type QuizTables, quizTablesOf } from './quiz-tables.ts';
import type { SeededPlant } from './seeded-plant.ts';
import { observationsAt, toldInWords, toldOnArrival } from './told.ts';

/** What each of the two proofs gives the causes with some readings. */
export interface Proofs {
  /** By what the stem says in words. */
  readonly byWords: (readings: readonly Observation[]) => Belief;
  /** By all that the start chart shows. */
  readonly byChart: (readings: readonly Observation[]) => Belief;
}

export const PROVED_SHARE = 0.9;
/** One looks no further than this, and what of it is not needed is left out again. */
const MOST_LOOKS = 7;
/** Of so many checks that promise most for the minute, the one that here tells most is taken. */
const PROMISING = 60;
/** What does not make the odds at least this much better is beside the point. */
const LEAST_FACTOR = 1.5;
type Question = QuizTables['questions'][number];

/**
 * What promises most and tells most, again and again, until the cause is proved both by the words of
 * the stem and by the whole chart; then without what is not needed. What says the answer itself is taken
 * only where measuring does not do.
 *
 * @returns at least one, in the order in which they were taken; null where the cause stays unproved
 */
export function provingReadings(
  plant: QuizPlant,
  seeded: SeededPlant,
  proofs: Proofs,
): readonly Observation[] | null {
  const open = quizTablesOf(plant).questions.flatMap((question) =>
    observationsAt(plant, seeded, question.keys).flatMap((seen) =>
      seen.bin >= 0 && isFairToSay(plant, seen) ? [{ question, seen }] : [],
    ),
  );
  const measured = open.filter(({ seen }) => !saysIt(plant, seeded, seen));
  return (
    lookOn(plant, seeded, proofs, measured) ??
    (measured.length < open.length ? lookOn(plant, seeded, proofs, open) : null)
  );
}

export function proofsOf(plant: QuizPlant, seeded: SeededPlant): Proofs {
  const with_ = (told: readonly Observation[]) => (readings: readonly Observation[]) =>
    beliefOf(plant, eachOnce([...told, ...readings]));
  return {
    byWords: with_(toldInWords(plant, seeded)),
    byChart: with_(toldOnArrival(plant, seeded)),
  };
}

/** A thing that is shown and named is one thing seen. */
export function eachOnce(seen: readonly Observation[]): readonly Observation[] {
  return [...new Map(seen.map((one) => [one.key, one] as const)).values()];
}

/** That a wire is off somewhere, no eye would leave at that. */
function isFairToSay({ atlas }: QuizPlant, { key, bin }: Observation): boolean {
  const at = atlas.keys[key];
  return at?.check !== 'look|terminal strip' || at.bins[bin]?.endsWith('wire-out') !== true;
}

interface Open {
  readonly question: Question;
  readonly seen: Observation;
}

function lookOn(
  plant: QuizPlant,
  seeded: SeededPlant,
  { byWords, byChart }: Proofs,
  all: readonly Open[],
): readonly Observation[] | null {
  const { atlas } = plant;
  const { cause } = seeded;
  const { costOf } = quizTablesOf(plant);
  const isBy = (belief: Belief) => (causeSharesOf(plant, belief)[cause] as number) >= PROVED_SHARE;
  const isProved = (readings: readonly Observation[]) =>
    readings.length > 0 && isBy(byWords(readings)) && isBy(byChart(readings));
  const taken: Observation[] = [];
  let open = all;
  while (!isProved(taken)) {
    if (taken.length === MOST_LOOKS) return null;
    const words = byWords(taken);
    const leading = taken.length > 0 && isBy(words) ? byChart(taken) : words;
    const seenOf = new Map(open.map(({ question, seen }) => [question, seen] as const));
    const promising = rankChecks(atlas, words, [...seenOf.keys()], costOf)
      .filter(({ bits }) => bits >= REDUNDANT_BITS)
      .slice(0, PROMISING);
    const shares = sharesOf(leading);
    let best: Observation | null = null;
    let most = LEAST_FACTOR;
    for (const { question } of promising) {
      const seen = seenOf.get(question);
      if (seen === undefined) continue;
      const factor = oddsFactor(plant, shares, cause, seen);
      if (factor <= most) continue;
      best = seen;
      most = factor;
    }
    if (best === null) return null;
    taken.push(best);
    const name = sourceOf(plant, best);
    open = open.filter(({ seen }) => sourceOf(plant, seen) !== name);
  }
  return withoutIdle(taken, isProved);
}

/** The same thing seen twice, at another moment or in other words, is no second reading. */
function sourceOf({ atlas }: QuizPlant, { key }: Observation): string {
  const { check = '', aspect = '' } = atlas.keys[key] ?? {};
  const { place } = partsOfCheck(check);
  return place === '' ? `${check}#${aspect}` : check;
}

function withoutIdle(
  taken: readonly Observation[],
  isProved: (readings: readonly Observation[]) => boolean,
): readonly Observation[] {
  return taken.reduce((left, one) => {
    const rest = left.filter((other) => other !== one);
    return isProved(rest) ? rest : left;
  }, taken);
}
