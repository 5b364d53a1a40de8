import type { Shelf } from './shelf-face.ts';

/** @param isKept the device has taken it; otherwise it lasts as long as the page */
export type CompartmentTold = (key: string, text: string, isKept: boolean) => void;

/**
 * A part of a shelf, by names that all begin alike. What the shelf does not take stays in memory:
 * whoever is told may have another place for it.
 */
export function compartmentOf(shelf: Shelf, prefix: string, told: CompartmentTold): Shelf {
  const untaken = new Map<string, string>();
  return {
    keys() {
      const taken = shelf.keys().filter((key) => key.startsWith(prefix));
      return [...new Set([...taken.map((key) => key.slice(prefix.length)), ...untaken.keys()])];
    },
    get: (key) => untaken.get(key) ?? shelf.get(prefix + key),
    set(key, text) {
      const isKept = tryToKeep(shelf, prefix + key, text);
      if (isKept) untaken.delete(key);
      else untaken.set(key, text);
      told(key, text, isKept);
    },
    remove(key) {
      untaken.delete(key);
      shelf.remove(prefix + key);
    },
  };
}

function tryToKeep(shelf: Shelf, key: string, text: string): boolean {
  try {
    shelf.set(key, text);
    return true;
  } catch {
    return false;
  }
}
