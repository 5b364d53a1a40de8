import type { Shelf } from '../../../src/app/work/shelf.ts';

export interface ToyShelf extends Shelf {
  /** Characters that fit; as a device has it, keys count too. */
  room: number;
  writes: number;
}

/** A shelf in memory, with as much room as it is given. */
export function createToyShelf(room = Number.POSITIVE_INFINITY): ToyShelf {
  const texts = new Map<string, string>();
  const used = (): number =>
    [...texts].reduce((sum, [key, text]) => sum + key.length + text.length, 0);
  const shelf: ToyShelf = {
    room,
    writes: 0,
    keys: () => [...texts.keys()],
    get: (key) => texts.get(key) ?? null,
    set(key, text) {
      const before = texts.get(key);
      texts.set(key, text);
      if (used() > shelf.room) {
        if (before === undefined) texts.delete(key);
        else texts.set(key, before);
        throw new DOMException('full', 'QuotaExceededError');
      }
      shelf.writes += 1;
    },
    remove: (key) => texts.delete(key),
  };
  return shelf;
}
