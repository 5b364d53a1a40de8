/** What is asked of a plant's atlas for every seed, worked out once. */
import {
  type Atlas,
  type AtlasKey,
  ambiguityGroups,
  entropyBits,
  NOT_REACHED,
  partsOfCheck,
  priorBelief,
  type Question,
  questionCost,
  questionsOf,
  sharesOf,
  spansOf,
  WATCH_A_START,
} from '../../diagnosis/index.ts';
import type { QuizPlant } from '../item/maker.ts';
import { isShown } from './told.ts';

export interface QuizTables {
  /** Every single thing that a check tells and that is fit to be named as evidence. */
  readonly questions: readonly Question[];
  /** Minutes with surcharges. */
  readonly costOf: (question: Question) => number;
  /** Of each key, whether it is such a thing. */
  readonly isTelling: readonly boolean[];
  /** Of each cause, the causes that no check tells from it, itself included. */
  readonly alike: readonly (readonly number[])[];
  /** First particle of each cause, and one past the last. */
  readonly spans: Uint32Array;
  readonly prior: Float64Array;
}

/** Of the uncertainty of what it reads, so much at most may be left where the cause is known. */
const MOST_NOISE = 0.35;
/** What an eye gives as a number that one would read off; the rest is in its words. */
const READ_OFF = /(?:Deg|Hz|A|C|Mm)$/;
/** Air never stands quite still there, whatever is wrong. */
const AIR_PLACES: ReadonlySet<string> = new Set(['windbox', 'furnace', 'flue']);
const BY_ID: ReadonlySet<string> = new Set(['fuses', 'limit buttons', 'control relays']);

const kept = new WeakMap<QuizPlant, QuizTables>();

export function quizTablesOf(plant: QuizPlant): QuizTables {
  const known = kept.get(plant);
  if (known !== undefined) return known;
  const made = tablesFor(plant);
  kept.set(plant, made);
  return made;
}

function tablesFor(plant: QuizPlant): QuizTables {
  const { atlas } = plant;
  const prior = sharesOf(priorBelief(atlas));
  const isTelling = atlas.keys.map(
    (key) => canBeNamed(plant, key) && noiseOf(atlas, prior, key) <= MOST_NOISE,
  );
  const questions = questionsOf(
    atlas,
    ({ check, moment, aspect }) => `${check}@${moment}#${aspect}`,
  ).filter(({ keys }) => keys.every((key) => isTelling[key]));
  const costs = new Map(questions.map((one) => [one, questionCost(atlas, one)] as const));
  const groups = ambiguityGroups(atlas);
  return {
    questions,
    costOf: (question) => costs.get(question) ?? 1,
    isTelling,
    alike: atlas.causes.map((_, cause) => groups.find((one) => one.includes(cause)) ?? [cause]),
    spans: spansOf(atlas),
    prior,
  };
}

function canBeNamed(plant: QuizPlant, key: AtlasKey): boolean {
  const { check, aspect } = key;
  const { what, place } = partsOfCheck(check);
  if (what === 'leak spray' && !hasTimeToFoam(key)) return false;
  if (what === 'manometer' && AIR_PLACES.has(place) && aspect !== 'value') return false;
  if (what !== 'look') return check !== WATCH_A_START || isShown(plant, aspect);
  return aspect === 'words' || READ_OFF.test(aspect) || BY_ID.has(place);
}

/** Foam tells of a joint where gas stands behind it on a sound plant, and for long enough to be judged. */
function hasTimeToFoam({ bins, column }: AtlasKey): boolean {
  return bins[column[0] as number] === 'spray-none' && !bins.includes('spray-watch');
}

/**
 * How far what is read hangs on anything but the cause, 0 to 1, among plants that come to it.
 *
 * Equation: H(bin | cause) / H(bin).
 */
function noiseOf(
  { causes, causeOf }: Atlas,
  prior: Float64Array,
  { bins, column }: AtlasKey,
): number {
  const missing = bins.indexOf(NOT_REACHED);
  const ofCause = causes.map(() => new Float64Array(bins.length));
  const all = new Float64Array(bins.length);
  for (let p = 0; p < column.length; p++) {
    const bin = column[p] as number;
    if (bin === missing) continue;
    const own = ofCause[causeOf[p] as number] as Float64Array;
    own[bin] = (own[bin] as number) + (prior[p] as number);
    all[bin] = (all[bin] as number) + (prior[p] as number);
  }
  const whole = massBits(all);
  return whole > 0 ? ofCause.reduce((bits, own) => bits + massBits(own), 0) / whole : 1;
}

/** Uncertainty over masses that need not sum to 1, times their sum. */
function massBits(masses: Float64Array): number {
  const whole = masses.reduce((a, b) => a + b, 0);
  return whole > 0 ? whole * entropyBits(masses.map((one) => one / whole)) : 0;
}
