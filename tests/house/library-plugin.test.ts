import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { libraryPlugin } from '../../src/cli/house/library-plugin.ts';

let root = '';
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'library-'));
  mkdirSync(join(root, 'src/cli'), { recursive: true });
  writeFileSync(join(root, 'main.js'), "import library from 'virtual:library';\nshow(library);\n");
});
afterEach(() => rmSync(root, { recursive: true, force: true }));

async function buildWith(loader: string): Promise<string> {
  writeFileSync(join(root, 'src/cli/library.ts'), loader);
  const output = await build({
    root,
    configFile: false,
    logLevel: 'silent',
    plugins: [libraryPlugin(root)],
    build: { write: false, rolldownOptions: { input: join(root, 'main.js') } },
  });
  if (!('output' in output)) throw new Error('expected one output');
  return output.output.map((chunk) => ('code' in chunk ? chunk.code : '')).join('\n');
}

describe('the library in the page', () => {
  it('is what the loader read from the project, as plain data', async () => {
    const code = await buildWith(
      'export const loadLibrary = (root: string) => ({ root, plants: [\'"quoted" `ticked` \\u2028\'] });',
    );
    const shown: unknown[] = [];
    new Function('show', code)((library: unknown) => shown.push(library));
    expect(shown).toEqual([{ root, plants: ['"quoted" `ticked` \u2028'] }]);
  });

  it('stops the build with the words of the loader when a shipped file is not in order', async () => {
    const loader =
      "export function loadLibrary() { throw new Error('a.yaml:3:5: no such fault'); }";
    await expect(buildWith(loader)).rejects.toThrow('a.yaml:3:5: no such fault');
  });
});
