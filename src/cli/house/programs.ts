import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

/** The first of these names on PATH. */
export function findProgram(names: readonly string[]): string | undefined {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const endings = process.platform === 'win32' ? ['.exe'] : [''];
  for (const name of names) {
    for (const folder of folders) {
      for (const ending of endings) {
        const path = join(folder, name + ending);
        if (isProgram(path)) return path;
      }
    }
  }
  return undefined;
}

export function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** False where Debian's packages cannot be had, or only with somebody's password. */
export function canInstall(): boolean {
  return waysToBeRoot() !== undefined && runs('apt-get', ['--version']);
}

/** Installs Debian's packages; what apt-get says is shown. Whether it worked is for the caller to see. */
export function installPackages(packages: readonly string[]): void {
  const asRoot = waysToBeRoot();
  if (asRoot === undefined) return;
  for (const args of [['update'], ['install', '-y', ...packages]]) {
    const [command, ...rest] = [...asRoot, 'apt-get', ...args] as [string, ...string[]];
    spawnSync(command, rest, {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  }
}

/** The words to put before a command to run it as root, or undefined where a password is wanted. */
function waysToBeRoot(): string[] | undefined {
  if (process.platform !== 'linux') return undefined;
  if (process.getuid?.() === 0) return [];
  return runs('sudo', ['-n', 'true']) ? ['sudo', '-n'] : undefined;
}

function runs(command: string, args: string[]): boolean {
  return spawnSync(command, args, { stdio: 'ignore' }).status === 0;
}
