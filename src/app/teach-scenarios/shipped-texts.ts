/** The shipped files as they are written; fetched when one of them is opened. */
import texts from 'virtual:library-text';
import type { AuthorKind } from './author-kinds.ts';
import { pathOfFile } from './author-kinds.ts';

/** Null where there is no such file. */
export function shippedText(kind: AuthorKind, id: string): string | null {
  const path = pathOfFile(kind, id);
  return Object.hasOwn(texts, path) ? (texts[path] ?? null) : null;
}
