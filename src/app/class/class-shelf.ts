import type { Shelf } from '../work/shelf.ts';
import type { SeatPlace } from './seat-place.ts';

const PREFIX = 'flamewright.class-work.';

/**
 * The part of a shelf that belongs to one seat: what is done in a class stays apart from one's own.
 * What the device will not take stays for as long as the page; the class has it too.
 */
export function shelfOfSeat(shelf: Shelf, place: Pick<SeatPlace, 'class' | 'seat'>): Shelf {
  const prefix = `${PREFIX}${place.class}.${place.seat}.`;
  const unkept = new Map<string, string>();
  return {
    keys() {
      const kept = shelf.keys().filter((key) => key.startsWith(prefix));
      return [...new Set([...kept.map((key) => key.slice(prefix.length)), ...unkept.keys()])];
    },
    get: (key) => unkept.get(key) ?? shelf.get(prefix + key),
    set(key, text) {
      unkept.set(key, text);
      shelf.set(prefix + key, text);
      unkept.delete(key);
    },
    remove(key) {
      unkept.delete(key);
      shelf.remove(prefix + key);
    },
  };
}

export function clearShelf(shelf: Shelf): void {
  for (const key of shelf.keys()) shelf.remove(key);
}
