import type { Socket } from 'socket.io';
import type { WorkRecord } from '../../classroom/index.ts';
import { tellWholeBoard } from './board.ts';
import { catchUp } from './class-registry.ts';
import { doorHandlers } from './door.ts';
import { identify, type Who } from './identify.ts';
import { instructorHandlers } from './instructor.ts';
import type { Live } from './live.ts';
import type { LiveSeat } from './live-class.ts';
import { seatLeaves, seatSitsDown } from './presence.ts';
import { projectorHandlers } from './projector.ts';
import { everyoneOf, instructorsOf, projectorsOf } from './rooms.ts';
import { seatHandlers } from './seat.ts';
import { noteFailure, serveMessages } from './serve-messages.ts';
import { welcome } from './welcome.ts';

/** Takes connections: asks who comes, welcomes, and serves what the role may say. */
export function takeConnections(live: Live): void {
  live.io.use((socket, next) => {
    identify(live, socket.handshake.auth, socket.handshake.address)
      .then(async (found) => {
        if (!found.ok) return next(refusal(found.error, found.detail));
        socket.data.who = found.who;
        if (found.who.role !== 'door') socket.data.work = await makeReady(live, found.who);
        next();
      })
      .catch((error: unknown) => {
        noteFailure(live, error, 'hello');
        next(refusal('cannot be saved now'));
      });
  });
  live.io.on('connection', (socket) => {
    const { who, work } = socket.data as { who: Who; work?: WorkRecord | null };
    // Its page keeps it; here it would only fill the memory.
    socket.data = { who };
    if (who.role === 'door')
      return serveMessages(live, socket, 'door', doorHandlers(live, who.place));
    comeIn(live, socket, who, work ?? null);
  });
}

/** What is read from the store before someone comes in. @throws StoreFailure */
async function makeReady(
  live: Live,
  who: Exclude<Who, { role: 'door' }>,
): Promise<WorkRecord | null> {
  const { one, role } = who;
  const { id } = one.kept;
  // It was at another process, which is further than this one.
  if (who.since > one.state.n) await catchUp(live, one);
  if (one.state.way === 'together') return live.works.current(id, 0);
  return role === 'seat' ? live.works.reload(id, who.kept.seat) : null;
}

/** Without a pause, so that no entry falls between the welcome and the room. */
function comeIn(
  live: Live,
  socket: Socket,
  who: Exclude<Who, { role: 'door' }>,
  work: WorkRecord | null,
): void {
  const { one, role } = who;
  const { id } = one.kept;
  let seat: LiveSeat | undefined;
  one.sockets += 1;
  socket.on('disconnect', () => {
    one.sockets -= 1;
    if (one.sockets === 0) one.emptySinceMs = live.nowMs();
    if (seat !== undefined) seatLeaves(live, one, seat, socket.id);
  });
  void socket.join(everyoneOf(id));
  switch (role) {
    case 'seat':
      seat = seatSitsDown(live, one, who.kept, socket.id);
      serveMessages(live, socket, role, seatHandlers(live, one, seat));
      break;
    case 'instructor':
      void socket.join(instructorsOf(id));
      serveMessages(live, socket, role, instructorHandlers(live, socket, one));
      break;
    case 'projector':
      void socket.join(projectorsOf(id));
      serveMessages(live, socket, role, projectorHandlers(live, socket, one));
      break;
  }
  welcome(live, socket, who, work);
  if (role !== 'seat') tellWholeBoard(live, socket, one);
}

function refusal(why: string, detail?: string): Error {
  return Object.assign(new Error(why), {
    data: { why, ...(detail === undefined ? {} : { detail }) },
  });
}
