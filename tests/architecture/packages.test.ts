import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../src/cli/house/paths.ts';

const manifest = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8'));
const lockText = readFileSync(join(ROOT, 'package-lock.json'), 'utf8');
const lock: {
  packages: Record<string, { engines?: { node?: string }; hasInstallScript?: boolean }>;
} = JSON.parse(lockText);

describe('packages', () => {
  it('are pinned to exact versions', () => {
    for (const [name, version] of Object.entries({
      ...manifest.dependencies,
      ...manifest.devDependencies,
    })) {
      expect(version, name).toMatch(/^\d+\.\d+\.\d+$/);
    }
  });

  it('are locked without download addresses, so that the lock file works wherever packages come from', () => {
    expect(lockText).not.toMatch(/https?:\/\/[^"]*\.tgz/);
    expect(lockText).not.toContain('"resolved"');
  });

  it('run no install script that package.json does not decide on', () => {
    const withScripts = Object.entries(lock.packages)
      .filter(([, entry]) => entry.hasInstallScript)
      .map(([path]) => path.replace(/^.*node_modules\//, ''));
    for (const name of withScripts) expect(Object.keys(manifest.allowScripts)).toContain(name);
  });

  it('none asks for a Node newer than the oldest that the project supports', () => {
    expect(manifest.engines.node).toBe('>=20.19');
    const tooNew = Object.entries(lock.packages)
      .filter(([, entry]) => entry.engines?.node !== undefined)
      .filter(([, entry]) => !supportsNode20(entry.engines?.node as string))
      .map(([path, entry]) => `${path} wants ${entry.engines?.node}`);
    expect(tooNew).toEqual([]);
  });
});

/** Reads the plain ranges that packages write: alternatives such as >=18, ^20.19.0, 20 or 8.x. */
function supportsNode20(range: string): boolean {
  return range.split('||').some((alternative) => {
    const match = /^\s*(>=|>|\^|~|=)?\s*v?(\d+)(?:\.(\d+))?/.exec(alternative);
    if (match === null) return true;
    const [operator, major, minor] = [match[1], Number(match[2]), Number(match[3] ?? 0)];
    const notNewer = major < 20 || (major === 20 && minor <= 19);
    return notNewer && (operator === '>=' || operator === '>' || major === 20);
  });
}
