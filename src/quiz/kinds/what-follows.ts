/**
 * What the sequence does next. The record of a start ends just before something happens; the right answer
 * is what the run does when it runs on. Proved by running on other plants that look the same at that
 * moment, twenty at least: a counted ensemble of starts run again, since an atlas does not say what stands
 * in the middle of a step. The others are what the machine itself would do from there, were one or two of
 * its inputs to stand otherwise than they do.
 */
import { describePhase, type InputName } from '../../../machines/burner/index.ts';
import { inputReadings } from '../../engine/index.ts';
import { createRandom, nextUniform, type RandomState } from '../../numeric/index.ts';
import type { Item, ItemRun } from '../item/item.ts';
import { itemId } from '../item/item-id.ts';
import type { ItemMaker, Made, QuizPlant, Rejection } from '../item/maker.ts';
import { setupOfRun } from '../item/setup-of-run.ts';
import { type AlikeStart, alikeStarts, LEAST_ALIKE } from './what-follows/alike-starts.ts';
import { type Cut, cutBefore } from './what-follows/cut.ts';
import { type OtherOutcome, otherOutcomes } from './what-follows/other-outcomes.ts';
import { pickRun } from './what-follows/pick-run.ts';
import {
  isSameOutcome,
  type Outcome,
  type PassedStep,
  recordStart,
  type TakenStart,
} from './what-follows/start-record.ts';
import { cutTells, otherOption, rightOption, toldInputs } from './what-follows/words.ts';

const CALL_S = 60;
/** The record ends so long before it happens, s. */
const LEADS_S = [1, 1.5, 2, 3, 5, 8];
/** Steps that take less show nothing, s. */
const SHORTEST_S = 1.8;
const PLACES_TRIED = 3;
/** Own weights: what is not as ever is asked about more often. */
const STRANGE = 8;
const AS_EVER = 1;
/** So many of the seeds are kept where all goes on as ever. */
const KEPT_AS_EVER = 0.3;
const KEY_SHARE = 0.9;
const OTHER_SHARE = 0.05;
const LEAST_OWN = 6;
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

/** Steps that have come to an end after the call, in the order in which they are asked about. */
function placesToAsk({ record: { passed } }: TakenStart, chance: RandomState): readonly number[] {
  return passed
    .flatMap((one, place) =>
      one.fromS >= CALL_S - 1 && one.step !== 'lockout' && one.toS - one.fromS >= SHORTEST_S
        ? [{ place, at: nextUniform(chance) / (isStrange(passed, place) ? STRANGE : AS_EVER) }]
        : [],
    )
    .sort((a, b) => a.at - b.at)
    .map(({ place }) => place);
}

/** It ends in lockout, or in a step that had been left before, or on the way down. */
function isStrange(passed: readonly PassedStep[], place: number): boolean {
  const next = passed[place]?.next;
  if (next === undefined) return false;
  const isBack = passed.slice(0, place).some(({ step }) => step === next.step);
  return next.cause !== null || isBack || next.step === 'post-purge';
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

/** Why what was counted proves nothing; null where it does. */
function whyUnproved(
  alike: readonly AlikeStart[],
  { right }: Cut,
  others: readonly OtherOutcome[],
): Rejection | null {
  const isOutcome = (one: AlikeStart, outcome: Outcome) =>
    one.outcome !== null && isSameOutcome(one.outcome, outcome);
  const own = alike.filter((one) => one.own);
  if (own.some((one) => !isOutcome(one, right))) return 'differs by tolerance';
  if (own.length < LEAST_OWN || alike.length < LEAST_ALIKE) return 'key not proved';
  const all = alike.reduce((sum, { weight }) => sum + weight, 0);
  const shareOf = (outcome: Outcome) =>
    alike.reduce((sum, one) => (isOutcome(one, outcome) ? sum + one.weight : sum), 0) / all;
  if (!(shareOf(right) >= KEY_SHARE)) return 'key not proved';
  return others.every(({ outcome }) => shareOf(outcome) <= OTHER_SHARE)
    ? null
    : 'distractor not ruled out';
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

function shuffled<T>(all: readonly T[], chance: RandomState): T[] {
  return all
    .map((one) => ({ one, at: nextUniform(chance) }))
    .sort((a, b) => a.at - b.at)
    .map(({ one }) => one);
}
