import type { Socket } from 'socket.io';
import { HEAD_EVERY_MS, type Head } from '../../classroom/index.ts';
import type { Live } from './live.ts';
import type { LiveClass } from './live-class.ts';
import { everyoneOf } from './rooms.ts';

/**
 * Where the one plant has come to: to those who read fast enough, since the next one follows.
 *
 * @param from the page that leads, where it is connected to this process
 */
export function tellHead(live: Live, one: LiveClass, head: Head, from?: Socket): void {
  one.head = head;
  one.headAtMs = live.nowMs();
  (from ?? live.io).local.volatile.to(everyoneOf(one.kept.id)).emit('head', head);
}

/** The last one of a row is told so that nobody misses it: the plant rests there. */
export function settleHead(live: Live, one: LiveClass): void {
  const isSettled = one.head === null || one.head === one.headSettled;
  if (isSettled || live.nowMs() - one.headAtMs < HEAD_EVERY_MS) return;
  one.headSettled = one.head;
  live.io.local.to(everyoneOf(one.kept.id)).emit('head', one.head);
}
