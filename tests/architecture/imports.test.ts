import { readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../src/cli/house/paths.ts';
import { cruiseFiles, cruiseTree } from './cruise-project.ts';

const require = createRequire(import.meta.url);
const INDEX = 'export const here = 1;\n';

function importing(path: string): string {
  return `import { here } from '${path}';\nexport const there = here;\n`;
}

describe('who imports whom', () => {
  it('is checked over every source file there is', async () => {
    const files = ['src', 'machines'].flatMap((folder) =>
      readdirSync(join(ROOT, folder), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
        .map((entry) => join(entry.parentPath, entry.name)),
    );
    const { modules } = await cruiseTree(ROOT, ['src', 'machines']);
    expect(modules.length).toBeGreaterThan(40);
    for (const file of files) expect(modules).toContain(file.slice(ROOT.length));
  });

  it('has a row for every folder, so that a new folder cannot escape the table', () => {
    const { forbidden } = require(join(ROOT, '.dependency-cruiser.cjs'));
    const rules = forbidden.map((rule: { name: string }) => rule.name);
    const folders = readdirSync(join(ROOT, 'src'), { withFileTypes: true })
      .filter((entry) => entry.isDirectory())
      .map((entry) => entry.name);
    for (const folder of folders) expect(rules).toContain(`${folder}-imports-downward`);
  });

  it('lets through a tree that keeps to it', async () => {
    const { modules, violations } = await cruiseFiles({
      'src/numeric/index.ts': INDEX,
      'src/plant/index.ts': importing('../numeric/index.ts'),
      'machines/burner/index.ts': "export { setup } from 'xstate';\n",
      'src/engine/index.ts': `${importing('../plant/index.ts')}export { setup } from '../../machines/burner/index.ts';\n`,
      'src/view/index.ts':
        "import type { there } from '../engine/index.ts';\nexport type T = typeof there;\n",
      'src/server/index.ts': "export { join } from 'node:path';\n",
    });
    expect(violations).toEqual([]);
    expect(modules.length).toBeGreaterThanOrEqual(6);
  });

  const target = { 'src/engine/index.ts': INDEX };
  it.each<[string, Record<string, string>, string]>([
    [
      'physics reading the field',
      { 'src/field/index.ts': INDEX, 'src/plant/fan.ts': importing('../field/index.ts') },
      'plant-imports-downward',
    ],
    [
      'the field reading physics',
      { 'src/plant/index.ts': INDEX, 'src/field/servo.ts': importing('../plant/index.ts') },
      'field-imports-downward',
    ],
    [
      'the controller seeing faults',
      {
        'src/faults/index.ts': INDEX,
        'machines/burner/index.ts': importing('../../src/faults/index.ts'),
      },
      'machines-imports-downward',
    ],
    [
      'tools seeing faults',
      { 'src/faults/index.ts': INDEX, 'src/bench/meter.ts': importing('../faults/index.ts') },
      'bench-imports-downward',
    ],
    [
      'diagnosis seeing the scenario',
      {
        'src/scenario/index.ts': INDEX,
        'src/diagnosis/atlas.ts': importing('../scenario/index.ts'),
      },
      'diagnosis-imports-downward',
    ],
    [
      'diagnosis seeing the scenario even as a type',
      {
        'src/scenario/index.ts': 'export interface Here { readonly a: 1 }\n',
        'src/diagnosis/atlas.ts':
          "import type { Here } from '../scenario/index.ts';\nexport type There = Here;\n",
      },
      'diagnosis-imports-downward',
    ],
    [
      'the page computing physics',
      { 'src/plant/index.ts': INDEX, 'src/app/main.tsx': importing('../plant/index.ts') },
      'app-imports-downward',
    ],
    [
      'the view running the engine',
      { ...target, 'src/view/schematic/run.ts': importing('../../engine/index.ts') },
      'view-types-only',
    ],
    [
      'React in the view',
      { 'src/view/part.tsx': "export { useState } from 'react';\n" },
      'view-packages',
    ],
    [
      'a development package in the plant',
      { 'src/plant/fan.ts': "export { test } from 'vitest';\n" },
      'plant-packages',
    ],
    [
      'Pixi in the page',
      { 'src/app/main.tsx': "export { Graphics } from 'pixi.js';\n" },
      'app-packages',
    ],
    [
      'Node below the server',
      { 'src/scenario/read.ts': "export { readFileSync } from 'node:fs';\n" },
      'scenario-without-node',
    ],
    [
      'a side entrance into another folder',
      { 'src/plant/orifice.ts': INDEX, 'src/engine/run.ts': importing('../plant/orifice.ts') },
      'folder-by-its-index',
    ],
    [
      'a side entrance into a machine',
      {
        'machines/burner/guards.ts': INDEX,
        'src/engine/run.ts': importing('../../machines/burner/guards.ts'),
      },
      'folder-by-its-index',
    ],
    [
      'a circle',
      {
        'src/plant/a.ts': importing('./b.ts'),
        'src/plant/b.ts': "import { there } from './a.ts';\nexport const here = there;\n",
      },
      'no-circle',
    ],
    [
      'a file that is not there',
      { 'src/plant/fan.ts': importing('./gone.ts') },
      'everything-resolves',
    ],
  ])('catches %s', async (_title, files, rule) => {
    const { violations } = await cruiseFiles(files);
    expect(violations.map((violation) => violation.rule)).toContain(rule);
  });
});
