import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'vite';
import { REPORTS, ROOT } from '../house/paths.ts';

/** A part of the program in one file, as the page's worker runs it. */
export async function bundled<T>(entry: string, name: string): Promise<T> {
  return (await import(pathToFileURL(await bundledFile(entry, name)).href)) as T;
}

/** The file itself, for a worker of its own. */
export async function bundledFile(entry: string, name: string): Promise<string> {
  const outDir = join(REPORTS, 'bench', name);
  await build({
    configFile: false,
    root: ROOT,
    logLevel: 'error',
    ssr: { noExternal: true },
    build: {
      ssr: join(ROOT, entry),
      outDir,
      emptyOutDir: true,
      rollupOptions: { output: { entryFileNames: `${name}.cjs`, format: 'cjs' } },
    },
  });
  return join(outDir, `${name}.cjs`);
}
