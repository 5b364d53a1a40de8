import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import { type Atlas, decodeAtlas, encodeAtlas } from '../../diagnosis/index.ts';

/** Where the system is named in a packed file, and the word for none in particular. */
const SYSTEM_BYTE = 9;
const NO_SYSTEM = 255;
const LEVEL = 9;

/** The atlases that the repository ships and the page finds under `atlas/`. */
export function atlasFolder(root: string): string {
  return join(root, 'assets', 'page', 'atlas');
}

export function atlasFile(folder: string, plant: string): string {
  return join(folder, `${plant}.atlas`);
}

/** @returns null where there is no file, or none of this form */
export function readAtlas(file: string): Atlas | null {
  if (!existsSync(file)) return null;
  try {
    return decodeAtlas(gunzipSync(readFileSync(file)).toString());
  } catch {
    return null;
  }
}

/**
 * Packed, the same bytes whenever and wherever it is done.
 *
 * @returns size of the file, bytes
 */
export function writeAtlas(file: string, atlas: Atlas): number {
  const packed = gzipSync(encodeAtlas(atlas), { level: LEVEL });
  packed[SYSTEM_BYTE] = NO_SYSTEM;
  writeFileSync(file, packed);
  return packed.length;
}
