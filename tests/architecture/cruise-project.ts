import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser';
import { REPORTS, ROOT } from '../../src/cli/house/paths.ts';

const require = createRequire(import.meta.url);

export interface Violation {
  readonly rule: string;
  readonly from: string;
  readonly to: string;
}
export interface Cruised {
  readonly modules: readonly string[];
  readonly violations: readonly Violation[];
}

/** Cruises a tree of the project's shape with the project's own rules. */
export async function cruiseTree(baseDir: string, folders: string[]): Promise<Cruised> {
  const { forbidden, options } = require(join(ROOT, '.dependency-cruiser.cjs'));
  const asked: ICruiseOptions = {
    ...options,
    baseDir,
    validate: true,
    ruleSet: { forbidden },
  };
  const { output } = await cruise(folders, asked);
  const result = output as ICruiseResult;
  return {
    modules: result.modules.map((module) => module.source),
    violations: result.summary.violations.map(({ rule, from, to }) => ({
      rule: rule.name,
      from,
      to,
    })),
  };
}

/**
 * Writes files into a tree of their own, cruises it and clears it away.
 * The tree lies inside the project, where its packages are found.
 */
export async function cruiseFiles(files: Readonly<Record<string, string>>): Promise<Cruised> {
  mkdirSync(REPORTS, { recursive: true });
  const tree = mkdtempSync(join(REPORTS, 'planted-'));
  try {
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(dirname(join(tree, path)), { recursive: true });
      writeFileSync(join(tree, path), text);
    }
    const folders = [...new Set(Object.keys(files).map((path) => path.split('/', 1)[0] as string))];
    return await cruiseTree(tree, folders);
  } finally {
    rmSync(tree, { recursive: true, force: true });
  }
}
