import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FastifyRequest } from 'fastify';
import { createAllowances } from '../live/allowance.ts';
import { placeOf } from '../live/limits.ts';
import { hashOfSecret, isSecretOf, newSecret } from '../live/secrets.ts';

export const KEY_HEADER = 'x-instructor-key';
const FILE = 'instructor-key';
const SHORTEST = 8;
const WRONG_KEYS = { burst: 20, perS: 0.2 };

export interface InstructorKey {
  /** What others than this machine must give; null where it was given by the settings. */
  readonly made: string | null;
  /** Whether who asks may open classes and see to all of them. */
  allows(request: FastifyRequest): boolean;
}

/**
 * The key of who may open classes. Without one of the settings' own, this machine needs none and
 * everyone else the one that is kept in the data folder.
 *
 * @throws where the key of the settings is too short to be one
 */
export function createInstructorKey(dataFolder: string, given: string | undefined): InstructorKey {
  if (given !== undefined && given.length < SHORTEST) {
    throw new Error(`INSTRUCTOR_KEY is too short: ${SHORTEST} characters at least.`);
  }
  const made = given === undefined ? keptKey(dataFolder) : null;
  const hash = hashOfSecret(given ?? made ?? newSecret());
  const wrong = createAllowances();
  return {
    made,
    allows(request) {
      if (given === undefined && isThisMachine(request)) return true;
      const told = request.headers[KEY_HEADER];
      if (typeof told !== 'string' || told === '') return false;
      const name = placeOf(request.socket.remoteAddress ?? '');
      if (!wrong.has(name, WRONG_KEYS)) return false;
      if (isSecretOf(hash, told)) return true;
      wrong.take(name, WRONG_KEYS);
      return false;
    },
  };
}

function keptKey(dataFolder: string): string {
  const file = join(dataFolder, FILE);
  const known = readIfThere(file);
  if (known !== null && known.length >= SHORTEST) return known;
  const made = newSecret();
  try {
    mkdirSync(dataFolder, { recursive: true });
    writeFileSync(file, `${made}\n`, { mode: 0o600 });
  } catch {
    // The page is served all the same; the next start makes another one.
  }
  return made;
}

function readIfThere(file: string): string | null {
  try {
    return readFileSync(file, 'utf8').trim();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

const FORWARDED = ['forwarded', 'via', 'x-forwarded-for', 'x-forwarded-host', 'x-real-ip'];

/**
 * Whether it comes from a page on this very machine: not through something in front of the
 * server, and asked for by an address rather than a name, since a name can be made to lead here
 * by anyone's page.
 */
function isThisMachine({ headers, socket }: FastifyRequest): boolean {
  if (FORWARDED.some((name) => headers[name] !== undefined)) return false;
  const { remoteAddress = '', localAddress } = socket;
  const isInward = /^(?:::1|(?:::ffff:)?127\.)/.test(remoteAddress);
  if (!isInward && remoteAddress !== localAddress) return false;
  return /^(?:localhost|[\d.]+|\[[\da-f:.]+\])(?::\d+)?$/i.test(headers.host ?? '');
}
