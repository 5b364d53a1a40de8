/** A quiz while its items are chosen, one after the other, each the best beside those that are there. */
import type { ItemCard } from '../item/item.ts';
import type { Candidate } from './candidates.ts';

export interface Choice {
  readonly most: number;
  readonly chosen: Candidate[];
}

/** More of one topic would be drill; twice shows whether the first was luck. */
const MOST_OF_TOPIC = 2;
/** So much more often than the rarest may a place hold the right answer; else it could be guessed by it. */
const MOST_OFF_BALANCE = 2;

/** By how much each thing counts against an item; 0.1 is as much as 0.05 of a chance off. */
const COST = {
  stale: 1.2,
  topicAgain: 0.5,
  kindAgain: 0.12,
  skillAgain: 0.1,
  plantAgain: 0.05,
  placeAgain: 0.05,
  lot: 0.1,
} as const;

export function isFull({ most, chosen }: Choice): boolean {
  return chosen.length >= most;
}

/**
 * Adds the best of a pool, unless there is none that may still come.
 *
 * @param misfit what speaks against an item by itself, 0 nothing
 */
export function chooseBest(
  choice: Choice,
  pool: readonly Candidate[],
  misfit: (candidate: Candidate) => number,
): boolean {
  if (isFull(choice)) return false;
  const free = pool.filter(({ card }) => mayCome(choice, card));
  const balanced = free.filter(({ card }) => keepsBalance(choice, card));
  let best: Candidate | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const candidate of balanced.length > 0 ? balanced : free) {
    const cost = misfit(candidate) + costBeside(choice, candidate);
    if (cost < least) {
      best = candidate;
      least = cost;
    }
  }
  if (best === null) return false;
  choice.chosen.push(best);
  return true;
}

function mayCome({ chosen }: Choice, { id, topic }: ItemCard): boolean {
  return (
    !chosen.some(({ card }) => card.id === id) &&
    timesOf(chosen, (card) => card.topic === topic) < MOST_OF_TOPIC
  );
}

function keepsBalance({ chosen }: Choice, { place }: ItemCard): boolean {
  if (place === null) return true;
  return timesAt(chosen, place) + 1 - rarest(chosen) <= MOST_OFF_BALANCE;
}

function costBeside({ chosen }: Choice, { card, stale, lot }: Candidate): number {
  const { kind, skills, plant, topic, place } = card;
  const skillTimes = skills.map((skill) => timesOf(chosen, (one) => one.skills.includes(skill)));
  return (
    COST.stale * stale +
    COST.topicAgain * timesOf(chosen, (one) => one.topic === topic) +
    COST.kindAgain * timesOf(chosen, (one) => one.kind === kind) +
    // Of an item for several the most frequent counts.
    COST.skillAgain * Math.max(0, ...skillTimes) +
    COST.plantAgain * timesOf(chosen, (one) => one.plant === plant) +
    COST.placeAgain * (place === null ? 0 : timesAt(chosen, place) - rarest(chosen)) +
    COST.lot * lot
  );
}

/** Nearly all items have three options. */
function rarest(chosen: readonly Candidate[]): number {
  return Math.min(timesAt(chosen, 0), timesAt(chosen, 1), timesAt(chosen, 2));
}

function timesAt(chosen: readonly Candidate[], place: number): number {
  return timesOf(chosen, (card) => card.place === place);
}

function timesOf(chosen: readonly Candidate[], holds: (card: ItemCard) => boolean): number {
  let times = 0;
  for (const { card } of chosen) if (holds(card)) times += 1;
  return times;
}
