/** What a seat remembers beside its work: which try it is, how it went, what was read. */
import { z } from 'zod';
import type { ClassEntry } from '../../../machines/class/index.ts';
import { classEntrySchema, MOST_ENTRIES } from '../../classroom/index.ts';
import type { Shelf } from '../work/shelf.ts';

const BOOK_KEY = 'flamewright.class-book';
const ENTRIES_KEY = 'flamewright.class-entries';

const count = z.number().int().min(0);
const bookSchema = z.strictObject({
  /** Which try, 1 the first; 0 before anything was begun. */
  attempt: count,
  /** When it was begun. */
  startedISO: z.iso.datetime().nullable(),
  /** Handed in, and the server has said so. */
  handedIn: z.boolean(),
  /** How it went, 0 to 1; null until it is over. */
  outcome: z.number().min(0).max(1).nullable(),
  asksHelp: z.boolean(),
  /** Hints that were put away. */
  hintsRead: z.array(count).max(MOST_ENTRIES),
});
export type SeatBook = z.infer<typeof bookSchema>;

export const NEW_BOOK: SeatBook = {
  attempt: 0,
  startedISO: null,
  handedIn: false,
  outcome: null,
  asksHelp: false,
  hintsRead: [],
};

export function readBook(shelf: Shelf): SeatBook {
  const read = bookSchema.safeParse(parsed(shelf.get(BOOK_KEY)));
  return read.success ? read.data : NEW_BOOK;
}

/** What the device will not keep lasts as long as the page. */
export function keepBook(shelf: Shelf, book: SeatBook): void {
  quietly(() => shelf.set(BOOK_KEY, JSON.stringify(book)));
}

/** The book of a work that was begun then: another one where it is another try. */
export function bookOfTry(book: SeatBook, startedISO: string): SeatBook {
  if (book.startedISO === startedISO) return book;
  return { ...book, attempt: book.attempt + 1, startedISO, handedIn: false, outcome: null };
}

/** The class as it was known last: without a server one goes on from there. */
export function readKnown(shelf: Shelf): readonly ClassEntry[] {
  const read = z
    .array(classEntrySchema)
    .max(MOST_ENTRIES)
    .safeParse(parsed(shelf.get(ENTRIES_KEY)));
  return read.success ? read.data : [];
}

export function keepKnown(shelf: Shelf, entries: readonly ClassEntry[]): void {
  quietly(() => shelf.set(ENTRIES_KEY, JSON.stringify(entries)));
}

function parsed(text: string | null): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return null;
  }
}

function quietly(keep: () => void): void {
  try {
    keep();
  } catch {
    return;
  }
}
