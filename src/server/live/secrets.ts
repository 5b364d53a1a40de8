import { createHash, randomBytes, randomInt, timingSafeEqual } from 'node:crypto';
import { CODE_LENGTH, CODE_LETTERS, PIN_LENGTH } from '../../classroom/index.ts';

const SECRET_BYTES = 24;
const ID_BYTES = 12;
const SALT_BYTES = 9;

/** Known to one page alone; the server keeps its hash. */
export function newSecret(): string {
  return randomBytes(SECRET_BYTES).toString('base64url');
}

export function newClassId(): string {
  return randomBytes(ID_BYTES).toString('base64url');
}

/** What is written on the board for learners to type. */
export function newCode(): string {
  return drawn(CODE_LENGTH, CODE_LETTERS);
}

export function newPin(): string {
  return drawn(PIN_LENGTH, '0123456789');
}

/** A secret is long and drawn by chance: it needs no salt. */
export function hashOfSecret(secret: string): string {
  return createHash('sha256').update(secret).digest('base64url');
}

/** Of four digits, so that two seats with the same ones do not show it. */
export function hashOfPin(pin: string): string {
  const salt = randomBytes(SALT_BYTES).toString('base64url');
  return `${salt}.${hashOfSecret(`${salt}.${pin}`)}`;
}

export function isSecretOf(hash: string, secret: string): boolean {
  return same(hash, hashOfSecret(secret));
}

export function isPinOf(hash: string, pin: string): boolean {
  const [salt = '', rest = ''] = hash.split('.', 2);
  return same(rest, hashOfSecret(`${salt}.${pin}`));
}

/** Takes as long whether the first letter differs or the last. */
function same(one: string, other: string): boolean {
  const [a, b] = [Buffer.from(one), Buffer.from(other)];
  return a.length === b.length && timingSafeEqual(a, b);
}

function drawn(length: number, letters: string): string {
  return Array.from({ length }, () => letters[randomInt(letters.length)]).join('');
}
