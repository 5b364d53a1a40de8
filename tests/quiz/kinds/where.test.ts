import { describe, expect, it } from 'vitest';
import { plantOfLibrary } from '../../../src/app/working/schematic-plant.ts';
import { message } from '../../../src/i18n/index.ts';
import { isRight, type Made, makeItem, type SpotItem } from '../../../src/quiz/index.ts';
import { faultsAtSpots, spotOf } from '../../../src/quiz/kinds/where/spot-of.ts';
import { itemsOf as drawnItemsOf } from '../../../src/view/schematic/items.ts';
import { layoutOf } from '../../../src/view/schematic/layout.ts';
import { measuresFor } from '../../../src/view/schematic/measures.ts';
import { mistakesOf } from '../evidence/prove-again.ts';
import { QUIZ_PLANTS, quizPlant } from '../quiz-plants.ts';

const SEEDS = 24;

const made = new Map<string, readonly Made[]>();

function spotItems(plant: string): readonly SpotItem[] {
  const known =
    made.get(plant) ??
    Array.from({ length: SEEDS }, (_, seed) =>
      makeItem(quizPlant, `where/${plant}/${seed}`),
    ).filter((one) => one !== null);
  made.set(plant, known);
  return known.flatMap((one) => (one.ok && one.item.answer === 'spot' ? [one.item] : []));
}

/** Ids of what can be pointed at; the words beside it do not matter here. */
function drawn(plant: string): readonly string[] {
  const schematic = plantOfLibrary(plant);
  const size = () => ({ width: 40, height: 12 });
  const layout = layoutOf(schematic, measuresFor({ width: 1010, height: 470 }), size);
  return drawnItemsOf(schematic, layout, message).map(({ id }) => id);
}

describe.each(QUIZ_PLANTS)('questions about the place at the %s', (id) => {
  it('know each place by an item of that drawing', () => {
    const plant = quizPlant(id);
    const spots = new Set(faultsAtSpots(plant).map((fault) => spotOf(plant, fault)));
    expect(spots.size).toBeGreaterThanOrEqual(12);
    for (const spot of spots) expect(drawn(id)).toContain(spot);
  });

  it('come of at least an eighth of all seeds, each with four to six places', () => {
    const items = spotItems(id);
    expect(items.length).toBeGreaterThanOrEqual(SEEDS / 8);
    for (const { options } of items) {
      expect(options.length).toBeGreaterThanOrEqual(4);
      expect(options.length).toBeLessThanOrEqual(6);
      expect(new Set(options.map(({ spot }) => spot)).size).toBe(options.length);
    }
  }, 240_000);

  it('have the place of what is wrong as their key, proved anew, and no other near it', () => {
    const plant = quizPlant(id);
    for (const item of spotItems(id)) {
      const { options, key, run } = item;
      expect(options[key]?.spot).toBe(spotOf(plant, run?.faults[0]?.fault ?? ''));
      const others = options.filter((_, i) => i !== key);
      for (const { share } of others) expect(share).toBeLessThanOrEqual(0.05);
      expect(isRight(item, { is: 'choice', option: key })).toBe(true);
    }
    const [first] = spotItems(id);
    expect(first === undefined ? [] : mistakesOf(plant, first)).toEqual([]);
  }, 240_000);
});
