import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';
import { measureFirstLoad } from '../../src/cli/house/first-load.ts';

it('the first load is the entry and all it imports at once, each file once, without what is imported on demand', () => {
  const dist = mkdtempSync(join(tmpdir(), 'first-load-'));
  try {
    const texts = {
      'a.js': 'entry()',
      'b.js': 'shared()',
      'c.js': 'both()',
      'late.js': 'drawing()'.repeat(99),
    };
    for (const [name, text] of Object.entries(texts)) writeFileSync(join(dist, name), text);
    mkdirSync(join(dist, '.vite'));
    writeFileSync(
      join(dist, '.vite/manifest.json'),
      JSON.stringify({
        'index.html': {
          file: 'a.js',
          isEntry: true,
          imports: ['_b', '_c'],
          dynamicImports: ['late.ts'],
        },
        _b: { file: 'b.js', imports: ['_c'] },
        _c: { file: 'c.js' },
        'late.ts': { file: 'late.js', isDynamicEntry: true, imports: ['_c'] },
      }),
    );
    const load = measureFirstLoad(dist);
    expect(load.scripts.map((script) => script.file).sort()).toEqual(['a.js', 'b.js', 'c.js']);
    const packed = (['a.js', 'b.js', 'c.js'] as const).map((name) => gzipSync(texts[name]).length);
    expect(load.gzipBytes).toBe(packed.reduce((sum, bytes) => sum + bytes, 0));
  } finally {
    rmSync(dist, { recursive: true, force: true });
  }
});
