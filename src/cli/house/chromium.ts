import { spawnSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];

/** What keeps a test's browser to its own business. Sandboxing is the test machine's concern. */
export const CHROMIUM_ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--no-first-run',
  '--disable-component-update',
  '--disable-sync',
];

/** The browser named by CHROMIUM, or the first of the usual names on PATH. */
export function findChromium(): string | undefined {
  const named = process.env.CHROMIUM;
  if (named !== undefined && named !== '') return isProgram(named) ? named : undefined;
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const endings = process.platform === 'win32' ? ['.exe'] : [''];
  for (const name of NAMES) {
    for (const folder of folders) {
      for (const ending of endings) {
        const path = join(folder, name + ending);
        if (isProgram(path)) return path;
      }
    }
  }
  return undefined;
}

/** Finds the browser, installing Debian's where that needs nobody's password. */
export function findOrInstallChromium(say: (line: string) => void): string | undefined {
  const found = findChromium();
  if (found !== undefined) return found;
  const asRoot = waysToBeRoot();
  if (asRoot === undefined || !runs('apt-get', ['--version'])) {
    say('No Chromium found. Install Chromium or Chrome so that it is on PATH,');
    say('or name its program in the environment variable CHROMIUM.');
    return undefined;
  }
  say('No Chromium found: installing it with apt-get.');
  for (const args of [['update'], ['install', '-y', 'chromium']]) {
    const [command, ...rest] = [...asRoot, 'apt-get', ...args] as [string, ...string[]];
    spawnSync(command, rest, {
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
  }
  const installed = findChromium();
  if (installed === undefined) say('apt-get did not bring a Chromium; install one by hand.');
  return installed;
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

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
