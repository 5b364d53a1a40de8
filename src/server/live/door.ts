import {
  MOST_SEATS,
  NICKNAME_CHARACTERS,
  type Seated,
  type ToServer,
} from '../../classroom/index.ts';
import { findClassByCode, readSeat } from './class-registry.ts';
import type { Live } from './live.ts';
import { putSeat } from './live-class.ts';
import { hashOfPin, hashOfSecret, isPinOf, newPin, newSecret } from './secrets.ts';
import { sendAway } from './send-away.ts';
import type { Handlers } from './serve-messages.ts';

/** Coming in, and coming back to a seat on another device. */
export function doorHandlers(live: Live, place: string): Handlers {
  return {
    join: (message) => join(live, place, message),
    'take seat': (message) => takeSeat(live, place, message),
  };
}

async function join(live: Live, place: string, given: ToServer['join']): Promise<Seated> {
  if (!live.attempts.take(`join ${place}`, live.limits.joins)) return failed('too fast');
  const nickname = tidy(given.nickname);
  if (nickname === '') return failed('nickname empty');
  const one = await classByCode(live, place, given.code);
  if (typeof one === 'string') return failed(one);
  if (one.seats.size >= MOST_SEATS) return failed('class full');
  const [token, pin] = [newSecret(), newPin()];
  const kept = {
    nickname,
    tokenHash: hashOfSecret(token),
    pinHash: hashOfPin(pin),
    joinedMs: live.nowMs(),
  };
  const { store } = live;
  const seat = await store.addSeat(one.kept.id, kept);
  putSeat(one, { seat, handedInMs: null, ...kept });
  live.bus.tell({ type: 'seat', class: one.kept.id, seat });
  return { ok: true, class: one.kept.id, seat, token, pin, nickname };
}

async function takeSeat(live: Live, place: string, given: ToServer['take seat']): Promise<Seated> {
  const one = await classByCode(live, place, given.code);
  if (typeof one === 'string') return failed(one);
  const { id } = one.kept;
  const tries = `pin ${id} ${given.seat}`;
  const seat = await readSeat(live, one, given.seat);
  if (seat === null) {
    live.attempts.take(`code ${place}`, live.limits.wrongCodes);
    return failed('no such seat');
  }
  // After the last wait, so that many who ask at once do not all pass before one is counted.
  if (!live.attempts.has(tries, live.limits.wrongPins)) return failed('too many attempts');
  if (!isPinOf(seat.kept.pinHash, given.pin)) {
    live.attempts.take(tries, live.limits.wrongPins);
    live.attempts.take(`code ${place}`, live.limits.wrongCodes);
    return failed('wrong pin');
  }
  const token = newSecret();
  const tokenHash = hashOfSecret(token);
  await live.store.setToken(id, given.seat, tokenHash);
  const { nickname } = seat.kept;
  putSeat(one, { ...seat.kept, tokenHash });
  sendAway(live, seat.socketId, 'seat taken elsewhere');
  live.bus.tell({ type: 'seated', class: id, seat: given.seat });
  return { ok: true, class: id, seat: given.seat, token, pin: given.pin, nickname };
}

/** Guessing codes is made slow for everyone who comes from there, right or wrong. */
async function classByCode(live: Live, place: string, code: string) {
  const name = `code ${place}`;
  if (!live.attempts.has(name, live.limits.wrongCodes)) return 'too many attempts' as const;
  const one = await findClassByCode(live, code.toUpperCase());
  if (one === null) {
    live.attempts.take(name, live.limits.wrongCodes);
    return 'no such class' as const;
  }
  return one.state.phase === 'closed' ? ('class closed' as const) : one;
}

/** Without what is not seen or turns the direction of what stands beside it. */
function tidy(nickname: string): string {
  return nickname
    .normalize('NFC')
    .replace(/[\p{C}\p{Zl}\p{Zp}]/gu, '')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, NICKNAME_CHARACTERS);
}

function failed(error: (Seated & { ok: false })['error']): Seated {
  return { ok: false, error };
}
