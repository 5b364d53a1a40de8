import { say } from '../../i18n/index.ts';
import type { PlainGroup } from '../../scenario/editing/index.ts';
import type { Shelf } from '../work/shelf.ts';
import { eraseOwn, type OwnFile, readOwn } from './own-files.ts';
import { shippedIds } from './shipped-files.ts';

const NAME = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;
const LONGEST = 64;

/** The file as saved, under the name that it gives itself where nothing else has that; in order or not. */
export function saveOwn(
  shelf: Shelf,
  file: OwnFile,
  { id }: PlainGroup,
): { readonly file: OwnFile; readonly says: string } {
  const nowISO = new Date().toISOString();
  const saved = { ...file, savedText: file.text, savedISO: nowISO, typedISO: nowISO };
  const isName = typeof id === 'string' && id.length <= LONGEST && NAME.test(id);
  if (!isName || id === file.slot) return { file: saved, says: say('author.saved') };
  if (readOwn(shelf, file.kind, id) !== null || shippedIds(file.kind).has(id)) {
    return { file: saved, says: say('author.saved.name-taken', { id, slot: file.slot }) };
  }
  eraseOwn(shelf, file.kind, file.slot);
  // In the library of the server it is another file from now on.
  return { file: { ...saved, slot: id, serverVersion: 0 }, says: say('author.saved') };
}
