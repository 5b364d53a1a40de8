import type { ItemCard } from '../item/item.ts';
import type { LintFinding } from './finding.ts';

/** Share of an even count by which a place may have more or less; with few items, so many. */
const OFF_BY = 0.15;
const OFF_BY_ITEMS = 2;
/** A key that stands first in all of them is uneven although no other place is ever seen. */
const FEWEST_OPTIONS = 3;

/**
 * Whether the key stands at each place about as often; a finding for each kind that has it otherwise.
 * Things of a drawing stand at no place.
 */
export function keyPlacesBalanced(cards: readonly ItemCard[]): readonly LintFinding[] {
  const kinds = [...new Set(cards.map(({ kind }) => kind))];
  return kinds.flatMap((kind): LintFinding[] => {
    if (kind === 'where') return [];
    const places = cards.flatMap((card) =>
      card.kind === kind && card.place !== null ? [card.place] : [],
    );
    const options = Math.max(...places, FEWEST_OPTIONS - 1) + 1;
    if (places.length === 0) return [];
    const even = places.length / options;
    const isEven = Array.from({ length: options }, (_, place) => place).every((place) => {
      const count = places.filter((one) => one === place).length;
      return Math.abs(count - even) <= Math.max(OFF_BY_ITEMS, OFF_BY * even);
    });
    return isEven ? [] : [{ rule: 'key places uneven', where: kind }];
  });
}
