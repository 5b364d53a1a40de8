import type { StoreFailure, StoreTrouble } from './types.ts';

/** What a store rejects with. `cause` is what the database or the file system said. */
export function storeFailure(trouble: StoreTrouble, cause: unknown): StoreFailure {
  return Object.assign(new Error(trouble, { cause }), { trouble });
}

export function isStoreFailure(error: unknown): error is StoreFailure {
  return error instanceof Error && 'trouble' in error;
}

/** Codes of the database and of the operating system for a full disk or a used-up quota. */
const NO_ROOM = new Set(['53100', 'ENOSPC', 'EDQUOT', 'EFBIG']);

const NOT_REACHED = new Set([
  'ECONNREFUSED',
  'ECONNRESET',
  'EPIPE',
  'ETIMEDOUT',
  'EHOSTUNREACH',
  'ENETUNREACH',
  'ENOTFOUND',
  'EAI_AGAIN',
  'ENOENT',
  /** Shut down, crashed, starting up; too many connections; timed out. */
  '57P01',
  '57P02',
  '57P03',
  '53300',
  '57014',
]);
/** The driver has no codes of its own for a connection that went away or was not made in time. */
const CONNECTION_GONE =
  /connection terminated|timeout exceeded when trying to connect|query read timeout|client has encountered a connection error|not queryable/i;

/** The trouble that an error of a database stands for. */
export function troubleOf(error: unknown): StoreTrouble {
  const code = codeOf(error);
  const message = error instanceof Error ? error.message : '';
  if (NO_ROOM.has(code) || /no space left on device/i.test(message)) return 'no room on the disk';
  const isGone = NOT_REACHED.has(code) || code.startsWith('08') || CONNECTION_GONE.test(message);
  return isGone ? 'database not reached' : 'database refused';
}

/** As the database names it, five characters; else the operating system's; else empty. */
export function codeOf(error: unknown): string {
  const code = (error as { readonly code?: unknown } | null)?.code;
  return typeof code === 'string' ? code : '';
}

export function asStoreFailure(error: unknown): StoreFailure {
  return isStoreFailure(error) ? error : storeFailure(troubleOf(error), error);
}
