/** What is best read next, worked out again from what the stem says and a start of the test's own. */
import { describe, expect, it } from 'vitest';
import {
  afterSeeing,
  type Belief,
  binsOf,
  gainBits,
  priorBelief,
  questionCost,
  questionsOf,
  REDUNDANT_BITS,
  type Sample,
  sampleStart,
  sharesOf,
  uncertaintyOf,
} from '../../../src/diagnosis/index.ts';
import {
  type ChoiceItem,
  type Item,
  lintItem,
  type QuizPlant,
  quizPlantOf,
  setupOfRun,
} from '../../../src/quiz/index.ts';
import { nextCheckMaker } from '../../../src/quiz/kinds/next-check.ts';
import { QUIZ_PLANTS, quizPlant } from '../quiz-plants.ts';
import { seenByStem } from './seen-by-stem.ts';

const SEEDS = 16;
/** Of those that are made, so many are worked out again. */
const AGAIN = 5;
const LONG_MS = 120_000;

function itemsOf(plant: QuizPlant): readonly ChoiceItem[] {
  const items: ChoiceItem[] = [];
  for (let seed = 1; seed <= SEEDS; seed++) {
    const made = nextCheckMaker.make(plant, seed);
    if (made.ok && made.item.answer === 'choice') items.push(made.item);
  }
  return items;
}

function worthOf(
  plant: QuizPlant,
  sample: Sample,
  belief: Belief,
  item: ChoiceItem,
  place: number,
) {
  const { atlas } = plant;
  const says = item.options[place]?.says.with?.check;
  if (typeof says !== 'object' || says.is !== 'check') throw new Error('no check');
  const { check, moment } = says;
  const keys = atlas.keys.filter((one) => one.check === check && one.moment === moment);
  expect(keys.every((one) => sample.has(`${check}@${moment}#${one.aspect}`))).toBe(true);
  const [question] = questionsOf({ ...atlas, keys });
  if (question === undefined) throw new Error(`no question ${check}`);
  const bits = gainBits(uncertaintyOf(atlas, sharesOf(belief)), question);
  return { bits, value: bits / questionCost(atlas, { check, moment }) };
}

/** What is wrong with the key; nothing where it stands. */
function wrongWith(plant: QuizPlant, item: ChoiceItem): readonly string[] {
  const { sample } = sampleStart(
    setupOfRun(plant.plan, item.run as NonNullable<Item['run']>),
    plant.plan,
  );
  const seen = seenByStem(plant, item, binsOf(plant.atlas, sample));
  const belief = afterSeeing(priorBelief(plant.atlas), plant.atlas, seen);
  const worth = item.options.map((_, place) => worthOf(plant, sample, belief, item, place));
  const key = worth[item.key];
  if (key === undefined || key.bits < 0.5) return ['the key is worth little'];
  return worth.flatMap(({ bits, value }, place) => {
    if (place === item.key) return [];
    return bits <= REDUNDANT_BITS && value * 3 <= key.value
      ? []
      : [`option ${place} tells something`];
  });
}

describe.each(QUIZ_PLANTS)('items on what to read next, %s', (id) => {
  const plant = quizPlant(id);
  const items = itemsOf(plant);

  it(
    'come of one seed in four at least, about different lockouts',
    () => {
      expect(items.length).toBeGreaterThanOrEqual(SEEDS / 4);
      expect(new Set(items.map(({ topic }) => topic)).size).toBeGreaterThan(3);
    },
    LONG_MS,
  );

  it(
    'have a key worth half a bit, and others that tell nothing, by a start of their own',
    () => {
      for (const item of items.slice(0, AGAIN)) expect(wrongWith(plant, item), item.id).toEqual([]);
    },
    LONG_MS,
  );

  it(
    'would be caught with another key',
    () => {
      for (const item of items.slice(0, 2)) {
        expect(wrongWith(plant, { ...item, key: (item.key + 1) % 3 }), item.id).not.toEqual([]);
      }
    },
    LONG_MS,
  );

  it(
    'are the same from the same seed, pass the lint and give a reason for every option',
    () => {
      const anew = quizPlantOf(plant.sound, plant.atlas);
      for (const item of items.slice(0, 2)) {
        const again = nextCheckMaker.make(anew, Number(item.id.split('/')[2]));
        expect(JSON.stringify(again)).toBe(JSON.stringify({ ok: true, item }));
      }
      for (const item of items) {
        expect(lintItem(item), item.id).toEqual([]);
        expect(item.options.every(({ why }) => why.length > 0)).toBe(true);
      }
    },
    LONG_MS,
  );
});
