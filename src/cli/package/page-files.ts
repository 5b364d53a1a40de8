import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { BUILT_FILES, readBuiltFiles } from '../../records/lms/index.ts';

/** Every file of the built page by its path. */
export function pageFiles(folder: string): ReadonlyMap<string, Uint8Array> {
  const list = readBuiltFiles(readFileSync(join(folder, BUILT_FILES), 'utf8'));
  return new Map(list.map((path) => [path, new Uint8Array(readFileSync(join(folder, path)))]));
}
