/** Files that were written on this device: each as it was last typed, and as it was last saved. */
import { z } from 'zod';
import { isFull, type Shelf } from '../work/shelf.ts';
import { AUTHOR_KINDS, type AuthorKind } from './author-kinds.ts';

const PREFIX = 'flamewright.scenario.';

const recordSchema = z.object({
  v: z.literal(1),
  kind: z.enum(AUTHOR_KINDS),
  slot: z.string().min(1).max(80),
  /** As typed, in order or not. */
  text: z.string(),
  typedISO: z.string(),
  /** Null until it is saved for the first time. */
  savedText: z.string().nullable(),
  savedISO: z.string().nullable(),
  /** The version in the library of the server that this was made of, or saved as. */
  serverVersion: z.number().int().min(0),
});
export type OwnFile = z.infer<typeof recordSchema>;

export type KeepTrouble = 'no room' | 'storage refused';

export function listOwn(shelf: Shelf): OwnFile[] {
  return shelf
    .keys()
    .filter((key) => key.startsWith(PREFIX))
    .flatMap((key) => read(shelf, key) ?? [])
    .sort((a, b) => b.typedISO.localeCompare(a.typedISO));
}

export function readOwn(shelf: Shelf, kind: AuthorKind, slot: string): OwnFile | null {
  return read(shelf, keyOf(kind, slot));
}

/** @returns why it could not be kept; null when it is */
export function writeOwn(shelf: Shelf, file: OwnFile): KeepTrouble | null {
  try {
    shelf.set(keyOf(file.kind, file.slot), JSON.stringify(file));
    return null;
  } catch (error) {
    return isFull(error) ? 'no room' : 'storage refused';
  }
}

export function eraseOwn(shelf: Shelf, kind: AuthorKind, slot: string): void {
  shelf.remove(keyOf(kind, slot));
}

/** A name like the one wanted that no own file has, and none of those. */
export function freeSlot(
  shelf: Shelf,
  kind: AuthorKind,
  wanted: string,
  taken: ReadonlySet<string> = new Set(),
): string {
  const name = wanted.slice(0, 56) || kind;
  const isFree = (slot: string) => shelf.get(keyOf(kind, slot)) === null && !taken.has(slot);
  if (isFree(name)) return name;
  for (let number = 2; ; number += 1) if (isFree(`${name}-${number}`)) return `${name}-${number}`;
}

/** A title as a name of a file: lower-case words joined by hyphens. */
export function nameOf(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .toLowerCase();
  return plain
    .replace(/[^a-z0-9-]/g, '')
    .replace(/^[^a-z]+|-+$/g, '')
    .replace(/-{2,}/g, '-')
    .slice(0, 56);
}

function read(shelf: Shelf, key: string): OwnFile | null {
  const text = shelf.get(key);
  if (text === null) return null;
  try {
    const parsed = recordSchema.safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

function keyOf(kind: AuthorKind, slot: string): string {
  return `${PREFIX}${kind}.${slot}`;
}
