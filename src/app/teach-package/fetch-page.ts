/** The files of this very page, from where it is served, to be packed. */
import { BUILT_FILES, readBuiltFiles } from '../../records/lms/index.ts';

const AT_ONCE = 6;

export type PageFetched =
  | { readonly ok: true; readonly files: ReadonlyMap<string, Uint8Array> }
  | { readonly ok: false; readonly why: 'no list' | 'broken' };

/** @param onFile how many there are so far, and of how many */
export async function fetchPage(onFile: (done: number, of: number) => void): Promise<PageFetched> {
  const list = await fetchList();
  if (list === null) return { ok: false, why: 'no list' };
  const files = new Map<string, Uint8Array>();
  const left = [...list];
  const takeNext = async (): Promise<void> => {
    for (let path = left.shift(); path !== undefined; path = left.shift()) {
      const response = await fetch(new URL(addressOf(path), document.baseURI));
      if (!response.ok) throw new Error(`${path}: ${response.status}`);
      files.set(path, new Uint8Array(await response.arrayBuffer()));
      onFile(files.size, list.length);
    }
  };
  try {
    await Promise.all(Array.from({ length: AT_ONCE }, takeNext));
    return { ok: true, files };
  } catch {
    return { ok: false, why: 'broken' };
  }
}

/** Null where the server has none, or answers with something else. */
async function fetchList(): Promise<readonly string[] | null> {
  try {
    const response = await fetch(new URL(BUILT_FILES, document.baseURI));
    return response.ok ? readBuiltFiles(await response.text()) : null;
  } catch {
    return null;
  }
}

function addressOf(path: string): string {
  return path.split('/').map(encodeURIComponent).join('/');
}
