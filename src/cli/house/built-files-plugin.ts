import { readdirSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import type { Plugin } from 'vite';
import { BUILT_FILES } from '../../records/lms/index.ts';

/** Lists what was built beside the page itself, so that it can be packed where it is served. */
export function builtFilesPlugin(): Plugin {
  return {
    name: 'built-files',
    apply: 'build',
    writeBundle: {
      // Everything else has written by then but the worker that keeps the page, which is not packed.
      order: 'post',
      handler({ dir = '' }) {
        const files = filesUnder(dir).filter((path) => path !== BUILT_FILES);
        writeFileSync(join(dir, BUILT_FILES), `${JSON.stringify({ v: 1, files })}\n`);
      },
    },
  };
}

/** Paths with slashes, in order; none that begins with a dot. */
function filesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .filter((path) => !path.split('/').some((part) => part.startsWith('.')))
    .sort();
}
