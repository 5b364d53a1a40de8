import type { Socket } from 'socket.io';
import { entriesSince } from './entries-since.ts';
import type { Live } from './live.ts';
import type { LiveClass } from './live-class.ts';
import type { Handlers } from './serve-messages.ts';
import { watch } from './watching.ts';

/** It looks only, and closely only at the run that the instructor gives it. */
export function projectorHandlers(live: Live, socket: Socket, one: LiveClass): Handlers {
  return {
    since: ({ n }) => entriesSince(one, n),
    watch({ seat }) {
      const isAllowed = seat === null || seat === one.state.spotlight;
      return isAllowed ? watch(live, socket, one, seat) : { ok: false, error: 'not for this role' };
    },
  };
}
