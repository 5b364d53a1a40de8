/**
 * What the sequence does next. The record of a start ends just before something happens; the right answer
 * is what the run does when it runs on. Proved by running on other plants that look the same at that
 * moment, twenty at least: a counted ensemble of starts run again, since an atlas does not say what stands
 * in the middle of a step. The others are what the machine itself would do from there, were one or two of
 * its inputs to stand otherwise than they do.
 */

import { describePhase, type InputName } from '../../../machines/burner/index.ts';
import { inputReadings } from '../../engine/index.ts';
import { createRandom, nextUniform, type RandomState, shuffled } from '../../numeric/index.ts';
import type { Item, ItemRun } from '../item/item.ts';
import { itemId } from '../item/item-id.ts';
import type { ItemMaker, Made, QuizPlant, Rejection } from '../item/maker.ts';
import { setupOfRun } from '../item/setup-of-run.ts';
import { alikeStarts } from './what-follows/alike-starts.ts';
import { type Cut, cutBefore } from './what-follows/cut.ts';
import { type OtherOutcome, otherOutcomes } from './what-follows/other-outcomes.ts';
import { pickRun } from './what-follows/pick-run.ts';
import { isStrange, placesToAsk } from './what-follows/places-to-ask.ts';
import { recordStart, type TakenStart } from './what-follows/start-record.ts';
import { whyUnproved } from './what-follows/why-unproved.ts';
import { cutTells, otherOption, rightOption, toldInputs } from './what-follows/words.ts';

/** The record ends so long before it happens, s. */
const LEADS_S = [1, 1.5, 2, 3, 5, 8];
const PLACES_TRIED = 3;
/** So many of the seeds are kept where all goes on as ever. */
const KEPT_AS_EVER = 0.3;
const MOST_READINGS = 7;
const MOST_TRENDS = 3;
/** Of outcomes that are about as near, chance picks. */
const ABOUT_AS_NEAR = 1.2;

export const whatFollowsMaker: ItemMaker = { kind: 'what follows', make };

function make(plant: QuizPlant, seed: number): Made {
  const chance = createRandom(seed, `what follows at ${plant.id}`);
  const picked = pickRun(plant, chance);
  const { plan, sound } = plant;
  const channels = channelsOfInputs(plant);
  const taken = recordStart(setupOfRun(plan, picked), plan.serviceS, channels);
  let why: Rejection = 'nothing goes wrong';
  const keepsAsEver = nextUniform(chance) < KEPT_AS_EVER;
  for (const place of placesToAsk(taken, chance).slice(0, PLACES_TRIED)) {
    const cut = cutSomewhere(plant, taken, place, chance);
    if (cut === null || (!keepsAsEver && !isStrange(taken.record.passed, place))) {
      why = 'not worth asking';
      continue;
    }
    const others = otherOutcomes(sound, taken.record, cut.frame, cut.phase, cut.right);
    if (others.length < 2) {
      why = 'too few neighbours';
      continue;
    }
    const chosen = nearestOf(others, chance);
    const run = { ...picked, untilS: Math.round(10 * cut.frame * taken.record.frameS) / 10 };
    const alike = alikeStarts(plant, run, taken, cut, channels);
    const unproved = whyUnproved(alike, cut, chosen);
    if (unproved === null)
      return { ok: true, item: itemOf(plant, seed, run, taken, cut, chosen, chance) };
    why = unproved;
  }
  return { ok: false, why };
}

function cutSomewhere(
  plant: QuizPlant,
  { record }: TakenStart,
  place: number,
  chance: RandomState,
): Cut | null {
  for (const leadS of shuffled(LEADS_S, chance)) {
    const cut = cutBefore(plant.sound, record, place, leadS);
    if (cut !== null) return cut;
  }
  return null;
}

function nearestOf(others: readonly OtherOutcome[], chance: RandomState): readonly OtherOutcome[] {
  return others
    .map((one) => ({ one, at: one.likeness + ABOUT_AS_NEAR * nextUniform(chance) }))
    .sort((a, b) => b.at - a.at)
    .slice(0, 2)
    .map(({ one }) => one);
}

function itemOf(
  plant: QuizPlant,
  seed: number,
  run: ItemRun,
  { record }: TakenStart,
  cut: Cut,
  others: readonly OtherOutcome[],
  chance: RandomState,
): Item {
  const word = record.words[cut.frame] as number;
  const { step } = cut.passed;
  const waited = describePhase(cut.phase, plant.sound.plant.variant).waitsFor.map(
    ({ input }) => input,
  );
  const asked = distinct([...waited, ...cut.changes, ...others.flatMap(({ flips }) => flips)]);
  const options = others.map((one) => otherOption(cut, word, one));
  const place = Math.floor(nextUniform(chance) * (options.length + 1));
  options.splice(place, 0, rightOption(plant, cut, word));
  return {
    id: itemId({ kind: 'what follows', plant: plant.id, seed }),
    kind: 'what follows',
    plant: plant.id,
    topic: `what follows/${step}`,
    skills: ['sequence'],
    difficulty: difficultyOf(cut, others),
    stem: {
      tells: cutTells(plant, cut),
      asks: { code: 'quiz.follows.asks' },
      readings: toldInputs(step, word, asked.slice(0, MOST_READINGS)),
      shows: { chart: true, trends: trendsOf(plant, cut, asked) },
    },
    run,
    caution: null,
    answer: 'choice',
    options,
    key: place,
  };
}

/** What moves first; then what stands behind the inputs that the step waits for. */
function trendsOf(plant: QuizPlant, { heading }: Cut, asked: readonly InputName[]): string[] {
  const readings = inputReadings(plant.sound.plant, plant.sound.profile);
  const moving = heading.map(({ reading }) => reading.channel);
  return distinct([...moving, ...asked.flatMap((input) => readings[input].channel ?? [])]).slice(
    0,
    MOST_TRENDS,
  );
}

function channelsOfInputs({ sound }: QuizPlant): readonly string[] {
  const readings = inputReadings(sound.plant, sound.profile);
  return distinct(Object.values(readings).flatMap(({ channel }) => channel ?? []));
}

/** Own training values: to go on is what a start does; what moves, or is away for a while, is harder. */
function difficultyOf({ right, standing, passed }: Cut, others: readonly OtherOutcome[]): number {
  const isBack = right.cause === null && right.step === passed.step;
  const two = others.filter(({ flips }) => flips.length > 1).length;
  const all =
    -1.8 + (right.cause === null ? 0 : 0.9) + (isBack ? 1 : 0) + (standing ? 0 : 0.8) + 0.3 * two;
  return Math.round(100 * Math.max(-2.5, Math.min(2, all))) / 100 || 0;
}

function distinct<T>(all: readonly T[]): T[] {
  return [...new Set(all)];
}
