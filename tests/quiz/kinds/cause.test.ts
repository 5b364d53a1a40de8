import { describe, expect, it } from 'vitest';
import { type ChoiceItem, type Made, makeItem, type Option } from '../../../src/quiz/index.ts';
import { partsOf } from '../../../src/quiz/kinds/cause/parts.ts';
import { mistakesOf } from '../evidence/prove-again.ts';
import { QUIZ_PLANTS, quizPlant } from '../quiz-plants.ts';

const SEEDS = 60;

const made = new Map<string, readonly Made[]>();

function madeOf(plant: string): readonly Made[] {
  const known =
    made.get(plant) ??
    Array.from({ length: SEEDS }, (_, seed) =>
      makeItem(quizPlant, `cause/${plant}/${seed}`),
    ).filter((one) => one !== null);
  made.set(plant, known);
  return known;
}

function itemsOf(plant: string): readonly ChoiceItem[] {
  return madeOf(plant).flatMap((one) => (one.ok && one.item.answer === 'choice' ? [one.item] : []));
}

function faultOf({ says }: Option): string | null {
  const named = says.with?.cause;
  return typeof named === 'object' && named.is === 'cause' ? named.fault : null;
}

describe.each(QUIZ_PLANTS)('questions about the cause at the %s', (id) => {
  it('come of at least three seeds in ten, about many causes', () => {
    const items = itemsOf(id);
    expect(items.length).toBeGreaterThanOrEqual(0.3 * SEEDS);
    expect(new Set(items.map(({ topic }) => topic)).size).toBeGreaterThanOrEqual(12);
  }, 240_000);

  it('hold when their runs are run and their odds worked out anew', () => {
    const wrong = itemsOf(id).map((item) => ({
      id: item.id,
      mistakes: mistakesOf(quizPlant(id), item),
    }));
    expect(wrong.filter(({ mistakes }) => mistakes.length > 0)).toEqual([]);
  }, 240_000);

  it('offer three causes that are mended at different parts, each with its reason', () => {
    for (const { options, key } of itemsOf(id)) {
      expect(options).toHaveLength(3);
      const parts = options.flatMap((one) => partsOf(quizPlant(id), faultOf(one) ?? ''));
      expect(new Set(parts).size).toBe(parts.length);
      expect(options.every(({ why }) => why.length > 0)).toBe(true);
      expect(options[key]?.share).toBeGreaterThanOrEqual(0.9);
    }
  });

  it('name a moment within the record where they can be replayed', () => {
    for (const { options, run } of itemsOf(id)) {
      for (const { atS } of options) {
        if (atS === null) continue;
        expect(atS).toBeGreaterThanOrEqual(0);
        expect(atS).toBeLessThanOrEqual(run?.untilS ?? 0);
      }
    }
  });
});

describe('a question about the cause', () => {
  it('is the same again from the same seed, without what was kept', () => {
    const { id } = itemsOf('school')[0] as ChoiceItem;
    const anew = { ...quizPlant('school') };
    const again = makeItem(() => anew, id);
    expect(JSON.stringify(again)).toBe(JSON.stringify({ ok: true, item: itemsOf('school')[0] }));
  });

  it('is caught where its key is another cause', () => {
    const item = itemsOf('school')[0] as ChoiceItem;
    const swapped = { ...item, key: (item.key + 1) % item.options.length };
    const mistakes = mistakesOf(quizPlant('school'), swapped).join();
    expect(mistakes).toContain('key has');
    expect(mistakes).toContain('distractor has');
    expect(mistakes).toContain('key is not what is wrong');
  });

  it('is caught where a reading is left out that it rests on', () => {
    const item = itemsOf('school').find(({ stem }) => stem.readings.length > 1) as ChoiceItem;
    const poorer = { ...item, stem: { ...item.stem, readings: item.stem.readings.slice(0, 1) } };
    expect(mistakesOf(quizPlant('school'), poorer)).not.toEqual([]);
  });
});
