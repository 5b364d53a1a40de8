import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'vite';
import { DIST, ROOT } from './paths.ts';

/** What the built page is made from; a change in any of it makes the page stale. */
const SOURCES = [
  'src',
  'machines',
  'scenarios',
  'assets',
  'package-lock.json',
  'tsconfig.json',
  'vite.config.ts',
];
const STAMP = join(DIST, '.sources');
const COMPRESSED = /\.(?:js|css|html|svg|json|webmanifest|md)$/;
/** Below this a packed file saves nothing on the wire. */
const WORTH_PACKING_BYTES = 1024;

export async function buildPage(): Promise<void> {
  const sources = hashSources();
  await build({ configFile: join(ROOT, 'vite.config.ts'), logLevel: 'warn' });
  for (const path of filesUnder(DIST)) {
    if (!COMPRESSED.test(path) || statSync(path).size < WORTH_PACKING_BYTES) continue;
    writeFileSync(`${path}.gz`, gzipSync(readFileSync(path), { level: 9 }));
  }
  writeFileSync(STAMP, sources);
}

/** Builds the page unless the built one comes from these very sources. */
export async function buildPageIfStale(): Promise<'built' | 'fresh'> {
  if (existsSync(STAMP) && readFileSync(STAMP, 'utf8') === hashSources()) return 'fresh';
  await buildPage();
  return 'built';
}

function hashSources(): string {
  const hash = createHash('sha256');
  for (const source of SOURCES) {
    for (const path of filesUnder(join(ROOT, source))) {
      hash.update(`${relative(ROOT, path)}\0`);
      hash.update(readFileSync(path));
      hash.update('\0');
    }
  }
  return hash.digest('hex');
}

function filesUnder(path: string): string[] {
  if (!existsSync(path)) return [];
  if (statSync(path).isFile()) return [path];
  return readdirSync(path, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}
