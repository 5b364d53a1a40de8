/** Which reading rules a cause out, worked out again from a start of the test's own. */
import { describe, expect, it } from 'vitest';
import {
  afterSeeing,
  binsOf,
  causeShares,
  priorBelief,
  sampleStart,
  sharesOf,
} from '../../../src/diagnosis/index.ts';
import {
  type ChoiceItem,
  type Item,
  lintItem,
  type QuizPlant,
  quizPlantOf,
  setupOfRun,
} from '../../../src/quiz/index.ts';
import { ruledOutMaker } from '../../../src/quiz/kinds/ruled-out.ts';
import { QUIZ_PLANTS, quizPlant } from '../quiz-plants.ts';
import { seenByStem } from './seen-by-stem.ts';

const SEEDS = 20;
/** Of those that are made, so many are worked out again. */
const AGAIN = 6;
const LONG_MS = 120_000;

function itemsOf(plant: QuizPlant): readonly ChoiceItem[] {
  const items: ChoiceItem[] = [];
  for (let seed = 1; seed <= SEEDS; seed++) {
    const made = ruledOutMaker.make(plant, seed);
    if (made.ok && made.item.answer === 'choice') items.push(made.item);
  }
  return items;
}

/** What is wrong with the key; nothing where it stands. */
function wrongWith(plant: QuizPlant, item: ChoiceItem): readonly string[] {
  const { atlas } = plant;
  const run = item.run as NonNullable<Item['run']>;
  const { sample } = sampleStart(setupOfRun(plant.plan, run), plant.plan);
  const named = item.stem.asks.with?.cause;
  if (typeof named !== 'object' || named.is !== 'cause') throw new Error('no cause');
  const cause = atlas.causes.findIndex(({ fault }) => fault === named.fault);
  const belief = afterSeeing(
    priorBelief(atlas),
    atlas,
    seenByStem(plant, item, binsOf(atlas, sample)),
  );
  const shareAt = (at: typeof belief) => causeShares(atlas, sharesOf(at))[cause] as number;
  const before = shareAt(belief);
  const wrong: string[] = [];
  if (run.faults.some(({ fault }) => fault === named.fault)) wrong.push('it is the cause');
  if (before < 0.1) wrong.push('it does not stand');
  item.options.forEach(({ says }, place) => {
    const read = says.with?.reading;
    if (typeof read !== 'object' || read.is !== 'reading') throw new Error('no reading');
    const { check, moment, aspect, value, word } = read.told;
    expect(sample.get(`${check}@${moment}#${aspect}`)).toBe(value);
    const key = atlas.keys.findIndex(
      (one) => one.check === check && one.moment === moment && one.aspect === aspect,
    );
    const bin = atlas.keys[key]?.bins.indexOf(word) ?? -1;
    const after = shareAt(afterSeeing(belief, atlas, [{ key, bin }]));
    const isOut = after <= 0.05 && after * 10 <= before;
    if (place === item.key ? !isOut : after < 0.8 * before) wrong.push(`option ${place}`);
  });
  return wrong;
}

describe.each(QUIZ_PLANTS)('items on what a reading rules out, %s', (id) => {
  const plant = quizPlant(id);
  const items = itemsOf(plant);

  it(
    'come of one seed in four at least, about different parts',
    () => {
      expect(items.length).toBeGreaterThanOrEqual(SEEDS / 4);
      expect(new Set(items.map(({ topic }) => topic)).size).toBeGreaterThan(4);
    },
    LONG_MS,
  );

  it(
    'have a key that leaves a twentieth of the cause, and others that leave it, by a start of their own',
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
    'are the same from the same seed, pass the lint and have readings of one kind',
    () => {
      const anew = quizPlantOf(plant.sound, plant.atlas);
      for (const item of items.slice(0, 2)) {
        const again = ruledOutMaker.make(anew, Number(item.id.split('/')[2]));
        expect(JSON.stringify(again)).toBe(JSON.stringify({ ok: true, item }));
      }
      for (const item of items) {
        expect(lintItem(item), item.id).toEqual([]);
        const tools = item.options.map(({ decidedBy }) =>
          (decidedBy?.check ?? '').split('|')[0]?.replace(/^(?:volts|continuity)$/, 'multimeter'),
        );
        expect(new Set(tools).size, item.id).toBe(1);
      }
    },
    LONG_MS,
  );
});
