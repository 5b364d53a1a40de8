/** Makes the database that a new data folder begins with; run after another version of its package. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { EMPTY_DATABASE, makeEmptyDatabase } from '../../server/store/index.ts';
import { sayFailure } from './say-failure.ts';

async function make(): Promise<void> {
  const path = fileURLToPath(EMPTY_DATABASE);
  const zip = await makeEmptyDatabase();
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, zip);
  process.stdout.write(`${path}: ${zip.length} bytes\n`);
}

await make().catch(sayFailure);
