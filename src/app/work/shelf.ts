import { type CompartmentTold, compartmentOf } from './compartment.ts';
import type { Shelf } from './shelf-face.ts';

export type { Shelf } from './shelf-face.ts';

/** A browser may refuse storage altogether: nothing is there then, and putting something there throws. */
const wholeDevice: Shelf = {
  keys: () => quietly(() => Object.keys(localStorage), []),
  get: (key) => quietly(() => localStorage.getItem(key), null),
  set: (key, text) => localStorage.setItem(key, text),
  remove: (key) => quietly(() => localStorage.removeItem(key), undefined),
};
let own = wholeDevice;
let ownPrefix = '';

export const deviceShelf: Shelf = {
  keys: () => own.keys(),
  get: (key) => own.get(key),
  set: (key, text) => own.set(key, text),
  remove: (key) => own.remove(key),
};

/** From now on the page has a part of the device's shelf to itself; other pages of the same server have theirs. */
export function keepInCompartment(prefix: string, told: CompartmentTold): Shelf {
  own = compartmentOf(wholeDevice, prefix, told);
  ownPrefix = prefix;
  return own;
}

/** The key of a storage event as the page knows it: null where all is erased, empty where it is not the page's. */
export function keyOnShelf({ key }: Pick<StorageEvent, 'key'>): string | null {
  if (key === null) return null;
  return key.startsWith(ownPrefix) ? key.slice(ownPrefix.length) : '';
}

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
