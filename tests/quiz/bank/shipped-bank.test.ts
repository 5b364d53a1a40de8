import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { bankFile, readBank } from '../../../src/cli/quiz/bank-file.ts';
import { lintOf } from '../../../src/cli/quiz/lint-of.ts';
import { SKILL_ORDER } from '../../../src/diagnosis/mastery/index.ts';
import {
  cardOf,
  ITEM_KINDS,
  type Item,
  type ItemCard,
  isRight,
  keyPlacesBalanced,
  makeItem,
  sameItemName,
} from '../../../src/quiz/index.ts';
import { library } from '../../support/library.ts';
import { guesser } from '../../support/quiz-takers.ts';
import { readRightly } from '../evidence-reader.ts';
import { quizPlant } from '../quiz-plants.ts';

const LONG_MS = 600_000;
const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const { items = [], report = [] } = readBank(bankFile(ROOT)) ?? {};
const plants = library.plants.map(({ id }) => id);
/** One in so many is made again, of every kind at every plant. */
const STRIDE = 6;

const MEND = 'npm run flamewright -- items makes the bank anew; commit the file';

describe('the shipped bank', () => {
  it('has five hundred items and more, each once', () => {
    expect(items.length).toBeGreaterThanOrEqual(500);
    expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
  });

  it('has every kind at every plant, and every skill', () => {
    const has = (kind: string, plant: string) =>
      items.some((card) => card.kind === kind && card.plant === plant);
    const missing = ITEM_KINDS.flatMap((kind) =>
      plants.filter((plant) => !has(kind, plant)).map((plant) => `${kind} ${plant}`),
    );
    expect(missing).toEqual([]);
    const skills = new Set(items.flatMap((card) => card.skills));
    expect(SKILL_ORDER.filter((skill) => !skills.has(skill))).toEqual([]);
  });

  it('has its keys at every place alike', () => {
    expect(keyPlacesBalanced(items)).toEqual([]);
  });

  it('asks of one topic a few times, not always', () => {
    const counts = new Map<string, number>();
    for (const { kind, plant, topic } of items) {
      const name = `${kind} ${plant} ${topic}`;
      counts.set(name, (counts.get(name) ?? 0) + 1);
    }
    expect(Math.max(...counts.values())).toBeLessThanOrEqual(10);
    expect(new Set(items.map(({ topic }) => topic)).size).toBeGreaterThan(120);
  });

  it('has easy items and hard ones', () => {
    const difficulties = items.map(({ difficulty }) => difficulty).sort((a, b) => a - b);
    const at = (share: number) => difficulties[Math.floor(share * (difficulties.length - 1))] ?? 0;
    expect(at(0.9) - at(0.1)).toBeGreaterThan(1);
  });

  it('accounts for every seed that was tried', () => {
    for (const { kind, plant, tried, kept, rejected } of report) {
      const turned = Object.values(rejected).reduce((sum, count) => sum + count, 0);
      expect(kept + turned, `${kind} ${plant}`).toBe(tried);
      const here = items.filter((card) => card.kind === kind && card.plant === plant);
      expect(here.length, `${kind} ${plant}`).toBe(kept);
    }
    expect(report.length).toBe(ITEM_KINDS.length * plants.length);
  });
});

describe('an item of the bank, made anew', () => {
  const made = new Map<ItemCard, Item>();

  it.each(plants)(
    'is at %s what its card says, proved and without a finding',
    (plant) => {
      const lint = lintOf(quizPlant(plant));
      for (const kind of ITEM_KINDS) {
        const cards = items.filter((card) => card.kind === kind && card.plant === plant);
        for (const card of cards.filter((_, i) => i % STRIDE === 0)) {
          const item = makeItem(quizPlant, card.id);
          if (item?.ok !== true)
            throw new Error(`${card.id}: ${item?.why ?? 'no such item'}. ${MEND}`);
          expect(cardOf(item.item), MEND).toEqual(card);
          expect(lint(item.item), card.id).toEqual([]);
          made.set(card, item.item);
        }
      }
    },
    LONG_MS,
  );

  it('has a key that is proved and others that are ruled out, each by a reading', () => {
    const choices = [...made.values()].flatMap((item) => ('options' in item ? [item] : []));
    const causes = choices.filter(({ kind }) => kind === 'cause' || kind === 'where');
    expect(causes.length).toBeGreaterThan(15);
    for (const { id, options, key } of causes) {
      options.forEach(({ share, decidedBy }, place) => {
        expect(decidedBy, id).not.toBeNull();
        if (place === key) expect(share, id).toBeGreaterThanOrEqual(0.9);
        else expect(share, id).toBeLessThanOrEqual(0.05);
      });
    }
  });

  it(
    'is answered rightly by whoever reads the evidence and knows no key',
    () => {
      const read: string[] = [];
      const wrong: string[] = [];
      for (const item of made.values()) {
        if (!('options' in item)) continue;
        const marked = readRightly(quizPlant(item.plant), item);
        if (marked === null) continue;
        read.push(item.id);
        if (marked !== item.key) wrong.push(item.id);
      }
      expect(read.length).toBeGreaterThan(45);
      expect(wrong).toEqual([]);
    },
    LONG_MS,
  );

  it('is answered by chance about as often as chance has it', () => {
    const choices = [...made.values()].filter((item) => item.answer === 'choice');
    let right = 0;
    const seeds = Array.from({ length: 30 }, (_, seed) => seed);
    for (const seed of seeds) {
      const taker = guesser(seed);
      right += choices.filter((item, turn) =>
        isRight(item, taker.answer(item, turn).response),
      ).length;
    }
    const share = right / (choices.length * seeds.length);
    // Some 2400 guesses at one of three: three standard deviations.
    expect(Math.abs(share - 1 / 3)).toBeLessThan(0.03);
  });

  it('asks what no other asks', () => {
    const names = [...made.values()].map(sameItemName);
    expect(new Set(names).size).toBe(names.length);
  });

  it('can be read by the reasons of every option, and shows them on its record', () => {
    for (const item of made.values()) {
      if (!('options' in item)) continue;
      for (const { why, atS, run } of item.options) {
        expect(why.length, item.id).toBeGreaterThan(0);
        const record = run ?? item.run;
        if (atS !== null && run === undefined && record !== null && item.kind !== 'what follows') {
          expect(atS, item.id).toBeLessThanOrEqual(record.untilS + 1e-6);
        }
      }
    }
  });
});
