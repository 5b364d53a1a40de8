/** What is known of each item before one is chosen: how likely a right answer is, and how fresh it is. */
import { scramble, seedFromText } from '../../numeric/index.ts';
import type { ItemCard } from '../item/item.ts';
import { compareText } from './answers.ts';
import { rightChanceOf } from './guessing.ts';
import { DAY_MS, msOfISO } from './instant.ts';
import type { QuizWanted } from './quiz-wanted.ts';

export interface Candidate {
  readonly card: ItemCard;
  /** Of a right answer, guessing included, 0 to 1. */
  readonly chance: number;
  /** 0 never seen to 1 seen just now. */
  readonly stale: number;
  /** 0 to 1, another for each seed: decides between equals. */
  readonly lot: number;
}

/** After so long nobody knows an item by its looks. */
const FORGOTTEN_DAYS = 60;
/** What an item that was seen once keeps of that for good: a new one is always better. */
const SEEN_ONCE = 0.2;

/** Each item once, in an order that does not depend on that of the cards. */
export function candidatesOf({
  cards,
  answers,
  ratings,
  seed,
  nowISO,
}: QuizWanted): readonly Candidate[] {
  const nowMs = msOfISO(nowISO);
  const lastSeen = new Map<string, number>();
  for (const { item, atISO } of answers) {
    lastSeen.set(item, Math.max(lastSeen.get(item) ?? Number.NEGATIVE_INFINITY, msOfISO(atISO)));
  }
  const byId = new Map(cards.map((card) => [card.id, card]));
  return [...byId.values()]
    .sort((a, b) => compareText(a.id, b.id))
    .map((card) => ({
      card,
      chance: rightChanceOf(card, ratings),
      stale: staleness(lastSeen.get(card.id), nowMs),
      lot: scramble(seedFromText(card.id) ^ scramble(seed)) / 0x1_0000_0000,
    }));
}

function staleness(lastMs: number | undefined, nowMs: number): number {
  if (lastMs === undefined) return 0;
  const days = Math.max(0, nowMs - lastMs) / DAY_MS;
  return SEEN_ONCE + (1 - SEEN_ONCE) * Math.max(0, 1 - days / FORGOTTEN_DAYS);
}
