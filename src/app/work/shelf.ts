/** Where the device keeps texts by name. Its own page's shelf is localStorage; a test brings another. */
export interface Shelf {
  keys(): string[];
  get(key: string): string | null;
  /** @throws whatever the device says when it has no room or keeps nothing */
  set(key: string, text: string): void;
  remove(key: string): void;
}

/** A browser may refuse storage altogether: nothing is there then, and putting something there throws. */
export const deviceShelf: Shelf = {
  keys: () => quietly(() => Object.keys(localStorage), []),
  get: (key) => quietly(() => localStorage.getItem(key), null),
  set: (key, text) => localStorage.setItem(key, text),
  remove: (key) => quietly(() => localStorage.removeItem(key), undefined),
};

/** What the device says of a full store, in the words of the standard and of an older one. */
const FULL_NAMES = ['QuotaExceededError', 'NS_ERROR_DOM_QUOTA_REACHED'];

export function isFull(error: unknown): boolean {
  return FULL_NAMES.includes((error as { readonly name?: string } | null)?.name ?? '');
}

function quietly<T>(ask: () => T, otherwise: T): T {
  try {
    return ask();
  } catch {
    return otherwise;
  }
}
