import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { unzipSync } from 'fflate';

/** Shipped as make-empty-database.ts made it. */
export const EMPTY_DATABASE = new URL(
  '../../../../assets/store/empty-database.zip',
  import.meta.url,
);

/**
 * The folder of a database, made if it is not there: laid out beside it and moved when it is whole,
 * so that what breaks off half way leaves nothing. To make one from nothing takes ten times as long.
 */
export function layOutDatabase(folder: string): void {
  if (existsSync(folder)) return;
  const draft = `${folder}.new`;
  rmSync(draft, { recursive: true, force: true });
  try {
    mkdirSync(draft, { recursive: true, mode: 0o700 });
    for (const [name, bytes] of Object.entries(unzipSync(readFileSync(EMPTY_DATABASE)))) {
      const path = join(draft, name);
      if (name.endsWith('/')) {
        mkdirSync(path, { recursive: true, mode: 0o700 });
        continue;
      }
      mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
      writeFileSync(path, bytes, { mode: 0o600 });
    }
    renameSync(draft, folder);
  } catch (error) {
    rmSync(draft, { recursive: true, force: true });
    throw error;
  }
}
