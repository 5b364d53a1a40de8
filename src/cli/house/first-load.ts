import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

interface ManifestEntry {
  readonly file: string;
  readonly isEntry?: boolean;
  readonly imports?: readonly string[];
}

export interface FirstLoad {
  /** Built script files that the page fetches before anything is asked of it. */
  readonly scripts: readonly { readonly file: string; readonly gzipBytes: number }[];
  readonly gzipBytes: number;
}

/** Adds up the entry and all it imports at once; what is imported on demand comes later. */
export function measureFirstLoad(dist: string): FirstLoad {
  const manifest: Record<string, ManifestEntry> = JSON.parse(
    readFileSync(join(dist, '.vite/manifest.json'), 'utf8'),
  );
  const files = new Set<string>();
  const visit = (key: string) => {
    const entry = manifest[key];
    if (entry === undefined || files.has(entry.file)) return;
    files.add(entry.file);
    entry.imports?.forEach(visit);
  };
  for (const [key, entry] of Object.entries(manifest)) if (entry.isEntry) visit(key);

  const scripts = [...files]
    .filter((file) => file.endsWith('.js'))
    .map((file) => ({ file, gzipBytes: gzipSync(readFileSync(join(dist, file))).length }));
  return { scripts, gzipBytes: scripts.reduce((sum, script) => sum + script.gzipBytes, 0) };
}
