/**
 * Shells of the other JavaScript engines, in which a run must come out the same as in Node.
 * Both are plain: they run a script, have `print`, and little else.
 */
import { canInstall, findProgram, installPackages } from './programs.ts';

export interface Shell {
  readonly program: string;
  readonly engine: string;
  readonly debianPackage: string;
}

export const SHELLS: readonly Shell[] = [
  { program: 'gjs', engine: 'SpiderMonkey', debianPackage: 'gjs' },
  {
    program: 'jsc',
    engine: 'JavaScriptCore',
    debianPackage: 'libjavascriptcoregtk-4.0-bin',
  },
];

export function findShell(shell: Shell): string | undefined {
  return findProgram([shell.program]);
}

/** True where a missing shell must fail the tests instead of being passed over (`.ci/run` asks for it). */
export function areShellsRequired(): boolean {
  return process.env.EVERY_ENGINE === 'required';
}

export function adviceFor({ program, engine, debianPackage }: Shell): string {
  return `${program} (${engine}) is not on PATH; Debian's package ${debianPackage} has it.`;
}

/** Installs what is missing where that needs nobody's password, and says what stays missing. */
export function findOrInstallShells(say: (line: string) => void): void {
  const isMissing = (shell: Shell): boolean => findShell(shell) === undefined;
  const missing = SHELLS.filter(isMissing);
  if (missing.length > 0 && canInstall()) {
    const packages = missing.map(({ debianPackage }) => debianPackage);
    say(`Installing other JavaScript engines with apt-get: ${packages.join(', ')}.`);
    installPackages(packages);
  }
  const consequence = areShellsRequired() ? 'Its tests will fail.' : 'Its tests are skipped.';
  for (const shell of missing.filter(isMissing)) say(`${adviceFor(shell)} ${consequence}`);
}
