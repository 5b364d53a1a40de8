/** Servers that classes can stand on, of which tests start their own ones. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { canInstall, findProgram, installPackages, isProgram } from './programs.ts';

export interface Service {
  readonly name: string;
  readonly program: string;
  readonly debianPackage: string;
}

export const POSTGRESQL: Service = {
  name: 'PostgreSQL',
  program: 'postgres',
  debianPackage: 'postgresql',
};
export const REDIS: Service = {
  name: 'Redis',
  program: 'redis-server',
  debianPackage: 'redis-server',
};
const SERVICES = [POSTGRESQL, REDIS] as const;

/** Debian keeps each version's programs in a folder of its own, out of PATH. */
const DEBIAN_POSTGRESQL = '/usr/lib/postgresql';

/** The whole path of a service's program, or of one that comes with it. */
export function findService(service: Service, program = service.program): string | undefined {
  return findProgram([program]) ?? (service === POSTGRESQL ? inDebianFolder(program) : undefined);
}

/** True where a missing service must fail the tests instead of being passed over (`.ci/run` asks for it). */
export function areServicesRequired(): boolean {
  return process.env.EVERY_SERVICE === 'required';
}

export function adviceForService({ name, program, debianPackage }: Service): string {
  return `${name} (${program}) is not here; Debian's package ${debianPackage} has it.`;
}

/**
 * Installs what is missing, where it is required or this is root's own machine, for a package
 * of Debian's starts its service as well; says what stays missing.
 */
export function findOrInstallServices(say: (line: string) => void): void {
  const isMissing = (service: Service): boolean => findService(service) === undefined;
  const missing = SERVICES.filter(isMissing);
  const mayInstall = areServicesRequired() || process.getuid?.() === 0;
  if (missing.length > 0 && mayInstall && canInstall()) {
    const packages = missing.map(({ debianPackage }) => debianPackage);
    say(`Installing services for tests with apt-get: ${packages.join(', ')}.`);
    installPackages(packages);
  }
  const consequence = areServicesRequired() ? 'Its tests will fail.' : 'Its tests are skipped.';
  for (const service of missing.filter(isMissing)) {
    say(`${adviceForService(service)} ${consequence}`);
  }
}

function inDebianFolder(program: string): string | undefined {
  try {
    const newestFirst = readdirSync(DEBIAN_POSTGRESQL).sort((a, b) => Number(b) - Number(a));
    return newestFirst
      .map((version) => join(DEBIAN_POSTGRESQL, version, 'bin', program))
      .find(isProgram);
  } catch {
    return undefined;
  }
}
