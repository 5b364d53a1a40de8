import type { Socket } from 'socket.io';
import { entriesSince } from './entries-since.ts';
import { tellHead } from './head.ts';
import { judgeAll } from './judge-seat.ts';
import type { Live } from './live.ts';
import type { LiveClass } from './live-class.ts';
import { everyoneOf } from './rooms.ts';
import { say } from './say.ts';
import type { Handlers } from './serve-messages.ts';
import { watch } from './watching.ts';

/** The pages tell what they did last after they have heard of the close. */
const JUDGED_AFTER_MS = 3000;

/** Seat 0 is the one plant. */
const ONE_PLANT = 0;

export function instructorHandlers(live: Live, socket: Socket, one: LiveClass): Handlers {
  const { id } = one.kept;
  return {
    since: ({ n }) => entriesSince(one, n),
    async say({ key, entry }) {
      const said = await say(live, one, key, entry);
      if (said.ok && entry.type === 'close') judgeSoon(live, one);
      return said;
    },
    watch: ({ seat }) => watch(live, socket, one, seat),
    async work(delta) {
      if (one.state.way !== 'together') return { ok: false, error: 'not for this role' };
      const { fresh, answer } = await live.works.tell(id, ONE_PLANT, delta);
      if (fresh) {
        socket.local.to(everyoneOf(id)).emit('worked', { seat: null, delta });
        live.bus.tell({ type: 'worked', class: id, seat: null, delta });
      }
      return answer;
    },
    head(head) {
      if (one.state.way !== 'together') return undefined;
      tellHead(live, one, head, socket);
      live.bus.tell({ type: 'head', class: id, head });
      return undefined;
    },
  };
}

function judgeSoon(live: Live, one: LiveClass): void {
  setTimeout(() => {
    // What is left then is judged when results are asked for.
    if (!live.stopping()) void judgeAll(live, one);
  }, JUDGED_AFTER_MS).unref();
}
