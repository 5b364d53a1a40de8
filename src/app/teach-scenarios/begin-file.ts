import { editFile } from '../../scenario/editing/index.ts';
import { hrefOf } from '../shell/route.ts';
import { deviceShelf } from '../work/shelf.ts';
import type { AuthorKind } from './author-kinds.ts';
import { fileOf } from './find-file.ts';
import { freeSlot, type KeepTrouble, writeOwn } from './own-files.ts';
import { shippedIds } from './shipped-files.ts';

/**
 * Puts a text on this device as a file of its own, under a name that no other has, and opens it.
 *
 * @param wanted the name it would like to have
 */
export function beginFile(kind: AuthorKind, wanted: string, text: string): KeepTrouble | null {
  const slot = freeSlot(deviceShelf, kind, wanted, shippedIds(kind));
  const named = editFile(text, { do: 'set', path: ['id'], value: slot })?.text ?? text;
  const trouble = writeOwn(deviceShelf, {
    ...fileOf(kind, slot, named, 0),
    savedText: null,
    savedISO: null,
  });
  if (trouble === null) location.hash = hrefOf({ page: 'scenario', kind, id: slot });
  return trouble;
}

/** The same for a file that keeps its text to the letter. */
export function takeFile(kind: AuthorKind, wanted: string, text: string): KeepTrouble | null {
  const slot = freeSlot(deviceShelf, kind, wanted);
  const trouble = writeOwn(deviceShelf, {
    ...fileOf(kind, slot, text, 0),
    savedText: null,
    savedISO: null,
  });
  if (trouble === null) location.hash = hrefOf({ page: 'scenario', kind, id: slot });
  return trouble;
}
