import { spawnSync } from 'node:child_process';
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { ROOT } from '../../src/cli/house/paths.ts';

const BOOTSTRAP = 'src/cli/house/bootstrap.mjs';
/** Stands in for npm: notes how it was called and lays down the folder that npm would. */
const STAND_IN = `
import { appendFileSync, mkdirSync } from 'node:fs';
console.log('words of npm');
appendFileSync('called', process.argv.slice(2).join(' ') + ' NODE_ENV=' + process.env.NODE_ENV + '\\n');
mkdirSync('node_modules', { recursive: true });
process.exit(Number(process.env.NPM_EXIT ?? 0));
`;

let project = '';

beforeEach(() => {
  project = mkdtempSync(join(tmpdir(), 'bootstrap-'));
  mkdirSync(join(project, 'src/cli/house'), { recursive: true });
  copyFileSync(join(ROOT, BOOTSTRAP), join(project, BOOTSTRAP));
  writeFileSync(join(project, 'npm-cli.mjs'), STAND_IN);
  writeLock('1.0.0');
});
afterEach(() => rmSync(project, { recursive: true, force: true }));

function writeLock(version: string): void {
  const packages = {
    '': {},
    'node_modules/thing': { version },
    'node_modules/other-machine': { version, optional: true },
  };
  writeFileSync(join(project, 'package-lock.json'), JSON.stringify({ packages }));
}
function bootstrap(env: Record<string, string> = {}) {
  return spawnSync(process.execPath, [BOOTSTRAP], {
    cwd: project,
    encoding: 'utf8',
    env: {
      PATH: process.env.PATH,
      NODE_ENV: 'production',
      npm_execpath: join(project, 'npm-cli.mjs'),
      ...env,
    },
  });
}
function calls(): string[] {
  const path = join(project, 'called');
  return existsSync(path) ? readFileSync(path, 'utf8').trim().split('\n') : [];
}

describe('the bootstrap', () => {
  it('installs all packages where there are none, development packages too', () => {
    expect(bootstrap().status).toBe(0);
    expect(calls()).toEqual(['ci --include=dev --loglevel=warn NODE_ENV=development']);
  });

  it('writes nothing on stdout, not even the words of npm', () => {
    const { stdout, stderr } = bootstrap();
    expect(stdout).toBe('');
    expect(stderr).toContain('words of npm');
  });

  it('does nothing and says nothing the second time', () => {
    bootstrap();
    const second = bootstrap();
    expect([second.status, second.stdout, second.stderr]).toEqual([0, '', '']);
    expect(calls()).toHaveLength(1);
  });

  it('installs again when the lock file changes', () => {
    bootstrap();
    writeLock('1.0.1');
    bootstrap();
    expect(calls()).toHaveLength(2);
  });

  it('installs again when the packages are deleted', () => {
    bootstrap();
    rmSync(join(project, 'node_modules'), { recursive: true });
    bootstrap();
    expect(calls()).toHaveLength(2);
  });

  it.each([
    ['leaves be what npm installed by hand from this lock file', '1.0.0', 0],
    ['replaces what npm installed by hand from another', '0.9.0', 1],
  ])('%s', (_title, version, expected) => {
    mkdirSync(join(project, 'node_modules'));
    const record = { packages: { 'node_modules/thing': { version } } };
    writeFileSync(join(project, 'node_modules/.package-lock.json'), JSON.stringify(record));
    expect(bootstrap().status).toBe(0);
    expect(calls()).toHaveLength(expected);
  });

  it('fails when npm fails, and tries again the next time', () => {
    expect(bootstrap({ NPM_EXIT: '1' }).status).toBe(1);
    expect(bootstrap().status).toBe(0);
    expect(calls()).toHaveLength(2);
  });
});
