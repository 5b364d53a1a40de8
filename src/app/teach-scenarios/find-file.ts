import { askAbout } from '../teach-class/ask-server.ts';
import { deviceShelf } from '../work/shelf.ts';
import type { AuthorKind } from './author-kinds.ts';
import { type OwnFile, readOwn } from './own-files.ts';
import { readServer } from './server-library.ts';
import { shippedFiles } from './shipped-files.ts';

export type FileSource =
  /** Of this device, to be changed. */
  | { readonly is: 'own'; readonly file: OwnFile }
  /** To be looked at and copied. */
  | { readonly is: 'shipped'; readonly file: OwnFile }
  | { readonly is: 'nowhere' };

/** A file by its name: of this device, else of the shipped ones, else of the server's library. */
export async function findFile(kind: AuthorKind, id: string): Promise<FileSource> {
  const own = readOwn(deviceShelf, kind, id);
  if (own !== null) return { is: 'own', file: own };
  if (shippedFiles(kind).some((shipped) => shipped.id === id)) {
    const { shippedText } = await import('./shipped-texts.ts');
    const text = shippedText(kind, id);
    if (text !== null) return { is: 'shipped', file: fileOf(kind, id, text, 0) };
  }
  const about = await askAbout();
  if (!about.ok || !about.value.mayOpen) return { is: 'nowhere' };
  const served = await readServer(kind, id, null);
  if (!served.ok) return { is: 'nowhere' };
  // Nothing is kept of it before something is changed.
  return { is: 'own', file: fileOf(kind, id, served.value.text, served.value.version) };
}

/** A file that is not kept yet, as good as saved. */
export function fileOf(
  kind: AuthorKind,
  slot: string,
  text: string,
  serverVersion: number,
): OwnFile {
  const nowISO = new Date().toISOString();
  return {
    v: 1,
    kind,
    slot,
    text,
    typedISO: nowISO,
    savedText: text,
    savedISO: nowISO,
    serverVersion,
  };
}
