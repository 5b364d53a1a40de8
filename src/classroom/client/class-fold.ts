/** The entries of a class put in order, whatever order they come in, and folded. */
import {
  type ClassEntry,
  type ClassState,
  createClass,
  foldClass,
} from '../../../machines/class/index.ts';
import { classEventSchema } from '../protocol/index.ts';

export interface ClassFold {
  readonly book: ClassState;
  /** All of them, from the first on without a gap. */
  readonly entries: readonly ClassEntry[];
  /** Come too early: what is before them is still missing. */
  readonly early: readonly ClassEntry[];
}

export function createFold(): ClassFold {
  return { book: createClass(), entries: [], early: [] };
}

/**
 * What comes twice changes nothing.
 *
 * @returns null where an entry is of a kind that is not known here
 */
export function takeEntries(fold: ClassFold, come: readonly ClassEntry[]): ClassFold | null {
  const waiting = new Map(fold.early.map((entry) => [entry.n, entry]));
  for (const entry of come) {
    if (entry.n > fold.entries.length) waiting.set(entry.n, entry);
  }
  const next: ClassEntry[] = [];
  for (;;) {
    const n = fold.entries.length + next.length + 1;
    const entry = waiting.get(n);
    if (entry === undefined) break;
    if (!isKnown(entry)) return null;
    waiting.delete(n);
    next.push(entry);
  }
  const early = [...waiting.values()].sort((a, b) => a.n - b.n);
  if (next.length === 0) return { ...fold, early };
  return {
    book: foldClass(next, fold.book),
    entries: [...fold.entries, ...next],
    early,
  };
}

function isKnown({ n: _, atMs: __, ...event }: ClassEntry): boolean {
  return classEventSchema.safeParse(event).success;
}
