import type { Socket } from 'socket.io';
import { CLASS_PROTOCOL, type Welcome, type WorkRecord } from '../../classroom/index.ts';
import type { Who } from './identify.ts';
import type { Live } from './live.ts';

/** First thing after a connection: all that its page needs to go on. */
export function welcome(
  live: Live,
  socket: Socket,
  who: Exclude<Who, { role: 'door' }>,
  work: WorkRecord | null,
): void {
  const { one, role } = who;
  const seat = role === 'seat' ? who.kept.seat : null;
  const poll = one.state.poll;
  const polled =
    seat === null || poll === null ? null : (one.polls.get(poll.id)?.get(seat) ?? null);
  const { n } = one.state;
  const message: Welcome = {
    v: CLASS_PROTOCOL,
    role,
    class: one.kept.id,
    code: one.kept.code,
    addresses: [...live.addresses()].slice(0, 20),
    serverMs: live.nowMs(),
    // A page that knows of more than there is has known another class.
    entries: one.entries.slice(Math.min(who.since, n)),
    n,
    seat,
    nickname: role === 'seat' ? who.kept.nickname : null,
    work,
    head: one.head,
    polled,
  };
  socket.emit('welcome', message);
}
