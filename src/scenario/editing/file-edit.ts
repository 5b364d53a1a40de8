import type { Path } from '../place.ts';

/** What a file can hold: text, numbers, true and false, lists and groups of them. */
export type Plain = string | number | boolean | null | readonly Plain[] | PlainGroup;
export interface PlainGroup {
  readonly [key: string]: Plain;
}

/** One change of what a file says. */
export type FileEdit =
  /** Of a key or an entry; groups on the way to it are made where they are missing. */
  | { readonly do: 'set'; readonly path: Path; readonly value: Plain }
  /** A key or an entry; a group that would be left empty goes with it. */
  | { readonly do: 'remove'; readonly path: Path }
  /** `path` leads to the list, which is made where it is missing. */
  | { readonly do: 'insert'; readonly path: Path; readonly index: number; readonly value: Plain }
  /** Two neighbours of a list change places: the one at `index` and the one after it. */
  | { readonly do: 'swap'; readonly path: Path; readonly index: number };

/** In which order the keys of the group at a path are usually written; empty where that is unknown. */
export type KeyOrder = (path: Path) => readonly string[];
