/** What the sequence does next, by running on with the engine itself. */
import { describe, expect, it } from 'vitest';
import { INPUTS } from '../../../machines/burner/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import {
  type ChoiceItem,
  type ItemRun,
  lintItem,
  type Option,
  type QuizPlant,
  quizPlantOf,
  type Statement,
  setupOfRun,
} from '../../../src/quiz/index.ts';
import { whatFollowsMaker } from '../../../src/quiz/kinds/what-follows.ts';
import { QUIZ_PLANTS, quizPlant } from '../quiz-plants.ts';

const SEEDS = 6;
const LONG_MS = 180_000;
/** What has not happened by then does not follow, s. */
const GIVE_UP_S = 120;

function itemsOf(plant: QuizPlant): readonly ChoiceItem[] {
  const items: ChoiceItem[] = [];
  for (let seed = 1; seed <= SEEDS; seed++) {
    const made = whatFollowsMaker.make(plant, seed);
    if (made.ok && made.item.answer === 'choice') items.push(made.item);
  }
  return items;
}

/** The word of an outcome: its step, or the cause of its lockout. */
function saidBy({ says }: ChoiceItem['options'][number]): string {
  const list = says.with?.outcome;
  const outcome = typeof list === 'object' && list.is === 'list' ? list.of[0] : undefined;
  if (typeof outcome !== 'object' || outcome.is !== 'statement') throw new Error('no outcome');
  const { step, cause } = outcome.statement.with as NonNullable<Statement['with']>;
  if (typeof cause === 'object' && cause.is === 'word') return cause.word;
  if (typeof step === 'object' && step.is === 'step') return step.step;
  throw new Error('no outcome');
}

function runOn(plant: QuizPlant, { untilS, ...run }: ItemRun) {
  const going = createRun(setupOfRun(plant.plan, run));
  going.advanceTo(untilS);
  const { step } = going.status();
  const word = going.frame(going.frameCount() - 1)[
    going.channels.findIndex(({ id }) => id === 'logic.inputs')
  ] as number;
  while (going.status().step === step && going.timeS() < untilS + GIVE_UP_S) {
    going.advanceTo(going.timeS() + 0.1);
  }
  const then = going.status();
  return { step, word, atS: then.sinceS, next: then.lockout ?? then.step };
}

function isKeyRight(plant: QuizPlant, item: ChoiceItem, run = item.run): boolean {
  const key = item.options[item.key];
  return run !== null && key !== undefined && runOn(plant, run).next === saidBy(key);
}

const outcomes: string[] = [];

describe.each(QUIZ_PLANTS)('items on what follows, %s', (id) => {
  const plant = quizPlant(id);
  const items = itemsOf(plant);

  it('come of one seed in four at least', () => {
    expect(items.length).toBeGreaterThanOrEqual(SEEDS / 4);
    outcomes.push(...items.map((item) => saidBy(item.options[item.key] as Option)));
  });

  it(
    'end where the stem says, with inputs as it tells, and what follows is what they say',
    () => {
      for (const item of items) {
        const { step, word, atS } = runOn(plant, item.run as ItemRun);
        expect(item.topic).toBe(`what follows/${step}`);
        for (const { aspect, value } of item.stem.readings) {
          const bit = Number(aspect.slice('input '.length));
          expect((word >> bit) & 1, `${item.id} ${INPUTS[bit]}`).toBe(value === 'made' ? 1 : 0);
        }
        expect(isKeyRight(plant, item), item.id).toBe(true);
        expect(item.options[item.key]?.atS).toBeCloseTo(atS, 6);
        expect(
          item.options.map(saidBy).filter((one, i, all) => all.indexOf(one) === i),
        ).toHaveLength(3);
      }
    },
    LONG_MS,
  );

  it(
    'would be caught with another key',
    () => {
      for (const item of items.slice(0, 3)) {
        expect(isKeyRight(plant, { ...item, key: (item.key + 1) % 3 }), item.id).toBe(false);
      }
    },
    LONG_MS,
  );

  it(
    'are the same from the same seed, and pass the lint',
    () => {
      const anew = quizPlantOf(plant.sound, plant.atlas);
      const [first] = items;
      const again = whatFollowsMaker.make(anew, Number(first?.id.split('/')[2]));
      expect(JSON.stringify(again)).toBe(JSON.stringify({ ok: true, item: first }));
      for (const item of items) expect(lintItem(item), item.id).toEqual([]);
    },
    LONG_MS,
  );
});

describe('items on what follows, three plants together', () => {
  it('have many things that follow', () => {
    expect(new Set(outcomes).size).toBeGreaterThan(4);
  });
});
