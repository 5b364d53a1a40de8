/**
 * Which reading rules one cause out. Proved by the belief: what the start told leaves the cause standing,
 * the right reading takes it down to a twentieth, and each of the others leaves it where it was.
 */

import { afterSeeing, type Belief, priorBelief } from '../../diagnosis/index.ts';
import { faultsFor } from '../../engine/index.ts';
import { createRandom, nextUniform, type RandomState } from '../../numeric/index.ts';
import { causeSharesOf } from '../evidence/belief-of.ts';
import { type SeededPlant, seededPlant } from '../evidence/seeded-plant.ts';
import { toldInWords, toldOf, toldOnArrival } from '../evidence/told.ts';
import type { Item, Option } from '../item/item.ts';
import { itemId } from '../item/item-id.ts';
import type { ItemMaker, Made, QuizPlant, Rejection } from '../item/maker.ts';
import type { Statement, Term } from '../item/statement.ts';
import { cautionOfCheck } from './next-check/caution-of-check.ts';
import { skillsOfCause } from './next-check/skills-of-cause.ts';
import { stoppingFaults } from './next-check/stopping-faults.ts';
import { startTells } from './next-check/tells.ts';
import { type ChosenReadings, chooseReadings } from './ruled-out/choose-readings.ts';
import type { ReadingOn } from './ruled-out/readings-on.ts';

interface Suspected {
  readonly chart: boolean;
  readonly belief: Belief;
  /** Place in the atlas. */
  readonly cause: number;
  readonly share: number;
}

const LEAST_SHARE = 0.1;
const MOST_TRIED = 4;

export const ruledOutMaker: ItemMaker = { kind: 'ruled out', make };

function make(plant: QuizPlant, seed: number): Made {
  const chance = createRandom(seed, `ruled out at ${plant.id}`);
  const seeded = seededPlant(plant, seed, stoppingFaults(plant));
  if (seeded.lockout === null) return { ok: false, why: 'nothing goes wrong' };
  let why: Rejection = 'too few neighbours';
  for (const suspected of suspectedOf(plant, seeded, chance).slice(0, MOST_TRIED)) {
    const { belief, cause } = suspected;
    const chosen = chooseReadings(plant, seeded, belief, cause, chance);
    if (typeof chosen !== 'string') {
      return { ok: true, item: itemOf(plant, seeded, suspected, chosen, chance) };
    }
    why = chosen;
  }
  return { ok: false, why };
}

/** Causes that stand after the start and are not it, with the record of the start or without. */
function suspectedOf(
  plant: QuizPlant,
  seeded: SeededPlant,
  chance: RandomState,
): readonly Suspected[] {
  const { atlas } = plant;
  const prior = priorBelief(atlas);
  const found = [true, false].flatMap((chart) => {
    const seen = chart ? toldOnArrival(plant, seeded) : toldInWords(plant, seeded);
    const belief = afterSeeing(prior, atlas, seen);
    return [...causeSharesOf(plant, belief)].flatMap((share, cause) =>
      share >= LEAST_SHARE && cause !== seeded.cause && atlas.causes[cause]?.fault !== null
        ? [{ chart, belief, cause, share, at: nextUniform(chance) }]
        : [],
    );
  });
  return found.sort((a, b) => a.at - b.at);
}

function itemOf(
  plant: QuizPlant,
  seeded: SeededPlant,
  { chart, cause, share }: Suspected,
  { key, others }: ChosenReadings,
  chance: RandomState,
): Item {
  const fault = plant.atlas.causes[cause]?.fault ?? null;
  const named: Term = { is: 'cause', fault };
  const options = others.map((one) => optionOf(plant, seeded, named, one, false));
  const place = Math.floor(nextUniform(chance) * (options.length + 1));
  options.splice(place, 0, optionOf(plant, seeded, named, key, true));
  const component = faultsFor(plant.plan.setup.plant).find(({ id }) => id === fault)?.component;
  return {
    id: itemId({ kind: 'ruled out', plant: plant.id, seed: seeded.seed }),
    kind: 'ruled out',
    plant: plant.id,
    topic: `ruled out/${component ?? fault}`,
    skills: skillsOfCause(plant, fault),
    difficulty: difficultyOf(share, key, others),
    stem: {
      tells: [
        startTells(plant, seeded, chart),
        { code: 'quiz.ruled.stands', with: { cause: named } },
      ],
      asks: { code: 'quiz.ruled.asks', with: { cause: named } },
      readings: [],
      shows: { chart, trends: [] },
    },
    run: seeded.run,
    caution: cautionOfCheck([key, ...others].map(({ check }) => check)),
    answer: 'choice',
    options,
    key: place,
  };
}

function optionOf(
  plant: QuizPlant,
  seeded: SeededPlant,
  cause: Term,
  { key, moment, would }: ReadingOn,
  isKey: boolean,
): Option {
  const told = toldOf(plant, seeded, [key])[0] ?? null;
  const says: Statement = {
    code: 'quiz.ruled.option',
    with: { reading: told === null ? '' : { is: 'reading', told } },
  };
  const said: Term =
    told === null ? '' : { is: 'said', told: { ...told, value: would, word: would } };
  const why: Statement = isKey
    ? { code: 'quiz.ruled.out', with: { cause, said } }
    : { code: 'quiz.ruled.same', with: { cause } };
  return { says, why: [why], share: null, decidedBy: told, atS: seeded.momentsS[moment] ?? null };
}

/** Own training values: a strange reading that rules nothing out misleads, one that is as ever tells little. */
function difficultyOf(share: number, key: ReadingOn, others: readonly ReadingOn[]): number {
  const strange = others.filter((one) => one.strange).length;
  const all = -1.2 + share + 0.5 * strange + (key.strange ? 0 : 0.6);
  return Math.round(100 * Math.max(-2.5, Math.min(2, all))) / 100 || 0;
}
