import { CLASS_PROTOCOL, type ClassError, type Hello, helloSchema } from '../../classroom/index.ts';
import type { KeptSeat } from '../store/types.ts';
import { findClass, readSeat } from './class-registry.ts';
import { placeOf } from './limits.ts';
import type { Live } from './live.ts';
import type { LiveClass } from './live-class.ts';
import { whereOf } from './refuse-message.ts';
import { isSecretOf } from './secrets.ts';

/** Who a connection is. */
export type Who =
  | { readonly role: 'door'; readonly place: string }
  | {
      readonly role: 'instructor' | 'projector';
      readonly place: string;
      readonly one: LiveClass;
      readonly since: number;
    }
  | {
      readonly role: 'seat';
      readonly place: string;
      readonly one: LiveClass;
      readonly since: number;
      readonly kept: KeptSeat;
    };

export type Identified =
  | { readonly ok: true; readonly who: Who }
  | { readonly ok: false; readonly error: ClassError; readonly detail?: string };

/**
 * Who comes, by what was given with the connection.
 *
 * @param address where from
 * @throws StoreFailure
 */
export async function identify(live: Live, given: unknown, address: string): Promise<Identified> {
  const place = placeOf(address);
  if (live.stopping()) return { ok: false, error: 'server stops' };
  if (!live.attempts.take(`connection ${place}`, live.limits.connections)) {
    return { ok: false, error: 'too fast' };
  }
  const hello = helloSchema.safeParse(given);
  if (!hello.success) {
    if (isOtherVersion(given)) return { ok: false, error: 'other version' };
    return { ok: false, error: 'message not understood', detail: whereOf(hello.error) };
  }
  if (hello.data.role === 'door') return { ok: true, who: { role: 'door', place } };
  const found = await check(live, hello.data, place);
  const isGuess = !found.ok && found.error === 'wrong secret';
  // A right one is always let in: nobody guesses them, and one address may be a whole school's.
  if (isGuess && !live.attempts.take(`wrong secret ${place}`, live.limits.wrongSecrets)) {
    return { ok: false, error: 'too many attempts' };
  }
  return found;
}

async function check(
  live: Live,
  hello: Exclude<Hello, { role: 'door' }>,
  place: string,
): Promise<Identified> {
  const one = await findClass(live, hello.class);
  if (one === null || one.gone) return { ok: false, error: 'no such class' };
  const { since } = hello;
  switch (hello.role) {
    case 'instructor':
      return isSecretOf(one.kept.secretHash, hello.secret)
        ? { ok: true, who: { role: 'instructor', place, one, since } }
        : { ok: false, error: 'wrong secret' };
    case 'projector':
      return isSecretOf(one.kept.projectorHash, hello.key)
        ? { ok: true, who: { role: 'projector', place, one, since } }
        : { ok: false, error: 'wrong secret' };
    case 'seat': {
      // From the store: the seat may have been taken again through another process.
      const seat = await readSeat(live, one, hello.seat);
      if (seat === null) return { ok: false, error: 'no such seat' };
      return isSecretOf(seat.kept.tokenHash, hello.token)
        ? { ok: true, who: { role: 'seat', place, one, since, kept: seat.kept } }
        : { ok: false, error: 'wrong secret' };
    }
  }
}

function isOtherVersion(given: unknown): boolean {
  const v: unknown = typeof given === 'object' && given !== null && 'v' in given ? given.v : null;
  return typeof v === 'number' && v !== CLASS_PROTOCOL;
}
