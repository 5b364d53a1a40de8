import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createRun } from '../../../src/engine/index.ts';
import {
  isRight,
  lintItem,
  lintWords,
  type OrderItem,
  setupOfRun,
} from '../../../src/quiz/index.ts';
import { orderMaker } from '../../../src/quiz/kinds/order/order-maker.ts';
import { timetableOf } from '../../../src/quiz/kinds/order/things.ts';
import { LINT_VOCABULARY, namesOfPlant, wordItem } from '../../../src/wording/index.ts';
import { PLANTS, plantWithoutAtlas } from './quiz-plants.ts';

const SEEDS = 14;

const ITEMS: readonly OrderItem[] = PLANTS.flatMap((id) =>
  Array.from({ length: SEEDS }, (_, seed) => {
    const made = orderMaker.make(plantWithoutAtlas(id), seed);
    return made.ok && made.item.answer === 'order' ? [made.item] : [];
  }).flat(),
);

/** What is to be put in order, as it comes. */
function thingsOf({ steps, key }: OrderItem): readonly string[] {
  return key.map((place) => {
    const { what } = steps[place]?.says.with ?? {};
    return typeof what === 'object' && what.is === 'word' ? what.word : '';
  });
}

describe('an order', () => {
  test('comes from nearly every seed, and mostly another one', () => {
    expect(ITEMS.length).toBeGreaterThan(0.9 * SEEDS * PLANTS.length);
    const distinct = new Set(ITEMS.map((item) => `${item.plant} ${thingsOf(item).join()}`));
    expect(distinct.size).toBeGreaterThan(0.8 * ITEMS.length);
    const topics = new Set(ITEMS.map(({ topic }) => topic));
    expect(topics).toEqual(
      new Set(['order/whole start', 'order/stretch', 'order/stop', 'order/lockout']),
    );
  });

  test('is of four or five things, none twice, each with reasons, shown in another order', () => {
    for (const item of ITEMS) {
      const things = thingsOf(item);
      expect([4, 5]).toContain(things.length);
      expect(new Set(things).size).toBe(things.length);
      expect(item.steps.every(({ why }) => why.length > 0)).toBe(true);
      expect(item.key.some((place, i) => place !== i)).toBe(true);
      expect(isRight(item, { is: 'order', order: item.key })).toBe(true);
      expect(isRight(item, { is: 'order', order: [...item.key].reverse() })).toBe(false);
    }
  });

  test('is that of its run, each thing a second or more after the one before', () => {
    for (const item of ITEMS.filter((_, i) => i % 3 === 0)) {
      if (item.run === null) throw new Error(`${item.id} has no run`);
      const run = createRun(setupOfRun(plantWithoutAtlas(item.plant).plan, item.run));
      run.advanceTo(item.run.untilS);
      const times = timetableOf(run.events());
      const at = thingsOf(item).map((thing) => times.get(thing) ?? Number.NaN);
      at.slice(1).forEach((t, i) => {
        expect(t - (at[i] as number), item.id).toBeGreaterThanOrEqual(1);
      });
    }
  });

  test('holds in another plant of the kind, whatever its tolerances', () => {
    const sound = ITEMS.filter(({ run }) => run !== null && run.faults.length === 0);
    fc.assert(
      fc.property(
        fc.constantFrom(...sound),
        fc.integer({ min: 3_000_000, max: 4_000_000 }),
        (item, tolerances) => {
          if (item.run === null) return;
          const { plan } = plantWithoutAtlas(item.plant);
          const run = createRun(setupOfRun(plan, { ...item.run, tolerances }), {
            keep: 'hash only',
          });
          run.advanceTo(item.run.untilS);
          const times = timetableOf(run.events());
          const at = thingsOf(item).map((thing) => times.get(thing) ?? Number.NaN);
          expect(at).toEqual([...at].sort((a, b) => a - b));
        },
      ),
      { seed: 61, numRuns: 8 },
    );
  });

  test('passes the lint, by structure and by its words', () => {
    for (const item of ITEMS) {
      const { plan } = plantWithoutAtlas(item.plant);
      const names = namesOfPlant(plan.setup.plant, createRun(plan.setup).channels);
      expect(lintItem(item), item.id).toEqual([]);
      expect(lintWords(wordItem(item, names, 'SI', []), LINT_VOCABULARY), item.id).toEqual([]);
    }
  });

  test('is the same again from the same seed', () => {
    for (const id of PLANTS) {
      const item = ITEMS.find(({ plant }) => plant === id);
      const again = orderMaker.make(plantWithoutAtlas(id), Number(item?.id.split('/')[2]));
      expect(JSON.stringify(again.ok && again.item)).toBe(JSON.stringify(item));
    }
  });
});
