import type { ClassEntry } from '../../../machines/class/index.ts';

/** The entries of a class as one page has them. */
export interface EntryList {
  readonly all: () => readonly ClassEntry[];
  readonly last: () => number;
  /** False where one before it is missing. */
  take(entry: ClassEntry): boolean;
}

/** @throws Error where a number comes with something else than before: then the pages differ */
export function createEntryList(): EntryList {
  const entries: ClassEntry[] = [];
  return {
    all: () => entries,
    last: () => entries.length,
    take(entry) {
      const known = entries[entry.n - 1];
      if (known !== undefined) {
        if (JSON.stringify(known) === JSON.stringify(entry)) return true;
        throw new Error(`entry ${entry.n} has changed`);
      }
      if (entry.n !== entries.length + 1) return false;
      entries.push(entry);
      return true;
    },
  };
}
