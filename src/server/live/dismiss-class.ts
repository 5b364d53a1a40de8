import type { Live } from './live.ts';
import { everyoneOf } from './rooms.ts';
import { sendAway } from './send-away.ts';

/** Sends everyone home from a class that is deleted, and forgets it. */
export function dismissClass(live: Live, id: string): void {
  const one = live.classes.get(id);
  live.works.drop(id);
  if (one === undefined) return;
  one.gone = true;
  live.classes.delete(id);
  const inside = live.io.of('/').adapter.rooms.get(everyoneOf(id)) ?? new Set<string>();
  for (const socketId of [...inside]) sendAway(live, socketId, 'class deleted');
}
