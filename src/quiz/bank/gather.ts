/** Looks for items of one kind at one plant, seed by seed, and counts what was wrong with the others. */
import type { Item, ItemCard, ItemKind } from '../item/item.ts';
import type { ItemMaker, QuizPlant, Rejection } from '../item/maker.ts';
import type { LintFinding } from '../lint/finding.ts';
import { cardOf } from '../taking/answers.ts';
import { sameItemName } from './same-item.ts';

/** What became of the seeds of one kind at one plant. */
export interface BankLine {
  readonly kind: ItemKind;
  readonly plant: string;
  readonly tried: number;
  readonly kept: number;
  /** How many for each reason. */
  readonly rejected: Readonly<Partial<Record<Rejection, number>>>;
}

export interface Gathered {
  readonly cards: readonly ItemCard[];
  readonly line: BankLine;
}

export interface Wanted {
  readonly items: number;
  /** Seeds from 0 on; no more are tried, however many items are missing then. */
  readonly seeds: number;
  /** Of one topic no more than this many. */
  readonly ofTopic: number;
}

/** A place may hold the key so many times more than the one that holds it least. */
const UNEVEN = 2;
const PLACES = 3;

/** @param lint what is wrong with an item as it reads, in the language that it is shown in */
export function gather(
  maker: ItemMaker,
  plant: QuizPlant,
  { items, seeds, ofTopic }: Wanted,
  lint: (item: Item) => readonly LintFinding[],
): Gathered {
  const cards: ItemCard[] = [];
  const rejected: Partial<Record<Rejection, number>> = {};
  const names = new Set<string>();
  const topics = new Map<string, number>();
  const places = Array.from({ length: PLACES }, () => 0);

  /** Null: it is kept. */
  function judge(item: Item): Rejection | null {
    if (lint(item).length > 0) return 'lint';
    const name = sameItemName(item);
    if (names.has(name) || (topics.get(item.topic) ?? 0) >= ofTopic) return 'seen before';
    const card = cardOf(item);
    const held = card.place === null ? undefined : places[card.place];
    if (held !== undefined && item.kind !== 'where') {
      if (held >= Math.min(...places) + UNEVEN) return 'place taken';
      places[card.place as number] = held + 1;
    }
    names.add(name);
    topics.set(item.topic, (topics.get(item.topic) ?? 0) + 1);
    cards.push(card);
    return null;
  }

  let tried = 0;
  while (tried < seeds && cards.length < items) {
    const made = maker.make(plant, tried++);
    const why = made.ok ? judge(made.item) : made.why;
    if (why !== null) rejected[why] = (rejected[why] ?? 0) + 1;
  }
  return {
    cards,
    line: { kind: maker.kind, plant: plant.id, tried, kept: cards.length, rejected },
  };
}
