import { canInstall, findProgram, installPackages, isProgram } from './programs.ts';

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
  return findProgram(NAMES);
}

/** Finds the browser, installing Debian's where that needs nobody's password. */
export function findOrInstallChromium(say: (line: string) => void): string | undefined {
  const found = findChromium();
  if (found !== undefined) return found;
  if (!canInstall()) {
    say('No Chromium found. Install Chromium or Chrome so that it is on PATH,');
    say('or name its program in the environment variable CHROMIUM.');
    return undefined;
  }
  say('No Chromium found: installing it with apt-get.');
  installPackages(['chromium']);
  const installed = findChromium();
  if (installed === undefined) say('apt-get did not bring a Chromium; install one by hand.');
  return installed;
}
