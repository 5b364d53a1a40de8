import type { SmallShelf } from '../../classroom/index.ts';

/** A place on the device for what is told but not answered yet; one that keeps nothing is no failure. */
export function shelfOfPage(prefix: string): SmallShelf {
  return {
    get: (key) => trying(() => localStorage.getItem(prefix + key)) ?? null,
    set: (key, value) => void trying(() => localStorage.setItem(prefix + key, value)),
    remove: (key) => void trying(() => localStorage.removeItem(prefix + key)),
  };
}

function trying<T>(act: () => T): T | null {
  try {
    return act();
  } catch {
    return null;
  }
}
