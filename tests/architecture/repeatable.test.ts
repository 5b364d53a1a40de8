import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../src/cli/house/paths.ts';
import { findUnrepeatable } from './find-unrepeatable.ts';

const BELOW_VIEW = [
  'src/quantity',
  'src/numeric',
  'src/plant',
  'src/field',
  'src/faults',
  'src/engine',
  'src/scenario',
  'src/bench',
  'src/diagnosis',
  'src/quiz',
  'src/records',
  'src/judging',
  'machines',
];

function sourceFiles(): string[] {
  return BELOW_VIEW.map((folder) => join(ROOT, folder))
    .filter((folder) => existsSync(folder))
    .flatMap((folder) => readdirSync(folder, { recursive: true, withFileTypes: true }))
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));
}

describe('the same log gives the same run', () => {
  it('because nothing below the view uses inexact mathematics, chance or the wall clock', () => {
    const files = sourceFiles();
    expect(files.length).toBeGreaterThan(15);
    const found = files.flatMap((file) =>
      findUnrepeatable(readFileSync(file, 'utf8')).map(
        (place) => `${relative(ROOT, file)}:${place.line} ${place.found}`,
      ),
    );
    expect(found).toEqual([]);
  });

  it.each([
    ['const a = Math.exp(1);', 'Math.exp'],
    ['const a = Math.pow(2, 3);', 'Math.pow'],
    ['const a = Math.hypot(3, 4);', 'Math.hypot'],
    ['const a = Math.random();', 'Math.random'],
    ['const { sin } = Math;', 'Math other than by a named member'],
    ["const a = Math['cos'](1);", 'Math other than by a named member'],
    ['const m = Math;', 'Math other than by a named member'],
    ['const a = 2 ** 3;', '**'],
    ['let a = 2; a **= 3;', '**'],
    ['const t = Date.now();', 'Date'],
    ['const t = new Date();', 'Date'],
    ['const t = performance.now();', 'performance'],
    ['const o = { performance };', 'performance'],
    ['const t = globalThis.Date;', 'globalThis'],
  ])('catches %s', (source, found) => {
    expect(findUnrepeatable(source).map((place) => place.found)).toContain(found);
  });

  it.each([
    'const a = Math.sqrt(2) * Math.PI + Math.min(1, 2);',
    '// Math.exp(x) and x ** 2 in words\nconst a = "Math.exp(1) 2 ** 3";',
    'interface Fan { readonly performance: number }',
    'const a = { performance: 1 }.performance;',
    'function f(when: Date): void {}',
  ])('lets through %s', (source) => {
    expect(findUnrepeatable(source)).toEqual([]);
  });

  it('says the line', () => {
    expect(findUnrepeatable('\n\nconst a = Math.log(2);')).toEqual([
      { line: 3, found: 'Math.log' },
    ]);
  });
});
