import type { GONE } from '../../classroom/index.ts';
import type { Live } from './live.ts';

/** Tells a connection why it ends, and ends it. */
export function sendAway(live: Live, socketId: string | null, why: (typeof GONE)[number]): void {
  if (socketId === null) return;
  const socket = live.io.of('/').sockets.get(socketId);
  if (socket === undefined) return;
  socket.emit('gone', { why });
  socket.disconnect(true);
}
