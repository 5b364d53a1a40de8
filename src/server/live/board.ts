import type { Socket } from 'socket.io';
import type { BoardSeat, RosterSeat } from '../../classroom/index.ts';
import { isLagging } from './backpressure.ts';
import type { Live } from './live.ts';
import { countAnswers, type LiveClass, type LiveSeat } from './live-class.ts';
import { instructorsOf, projectorsOf } from './rooms.ts';

/** On a connection that did not read in time: it is told everything once it does. */
const MARK = 'board missed';

/** What an instructor or a projector is told on coming in. */
export function tellWholeBoard(live: Live, socket: Socket, one: LiveClass): void {
  socket.emit('board', { seats: [...one.seats.values()].map(tileOf) });
  if (mayKnowNames(socket, one)) socket.emit('roster', { seats: rosterOf(one) });
  if (isInstructor(socket)) tellCounts(one, [socket]);
  live.bus.tell({ type: 'board wanted', class: one.kept.id, whole: true });
}

/** Tells what has changed since the last time, here and to other processes that want it. */
export function tellBoard(live: Live, one: LiveClass): void {
  const { changed, rosterChanged, countsChanged } = one;
  if (changed.size === 0 && !rosterChanged && !countsChanged) {
    const waits = socketsOf(live, one).filter((socket) => socket.data[MARK] === true);
    for (const socket of waits) catchUpBoard(one, socket);
    return;
  }
  const seats = [...changed].flatMap((number) => one.seats.get(number) ?? []);
  one.changed.clear();
  one.rosterChanged = false;
  one.countsChanged = false;
  if (one.boardWantedElsewhereMs > live.nowMs()) tellOtherProcesses(live, one, seats);
  const sockets = socketsOf(live, one);
  if (sockets.length === 0) return;
  const tiles = seats.map(tileOf);
  for (const socket of sockets) {
    if (socket.data[MARK] === true || isLagging(socket)) {
      socket.data[MARK] = true;
      catchUpBoard(one, socket);
      continue;
    }
    if (tiles.length > 0) socket.emit('board', { seats: tiles });
    // To a projector whose names are off none, so that those it had go.
    if (rosterChanged) {
      socket.emit('roster', { seats: mayKnowNames(socket, one) ? rosterOf(one) : [] });
    }
  }
  if (countsChanged) tellCounts(one, sockets.filter(isInstructor));
}

/** Only those whose page was here last: the others are told of by their own process. */
export function tellOtherProcesses(
  live: Live,
  one: LiveClass,
  seats: Iterable<LiveSeat> = one.seats.values(),
): void {
  const own = [...seats].filter((seat) => seat.own);
  if (own.length > 0) live.bus.tell({ type: 'board', class: one.kept.id, seats: own.map(tileOf) });
}

export function takeTiles(one: LiveClass, tiles: readonly BoardSeat[], from: string): void {
  for (const { seat: number, here, state } of tiles) {
    const seat = one.seats.get(number);
    // Its page is here: what another process says of it is of the past.
    if (seat === undefined || seat.socketId !== null) continue;
    seat.own = false;
    seat.here = here;
    seat.state = state ?? seat.state;
    seat.elsewhere = here ? from : null;
    one.changed.add(number);
  }
}

export function hasOnlookers(live: Live, one: LiveClass): boolean {
  const { rooms } = live.io.of('/').adapter;
  return rooms.has(instructorsOf(one.kept.id)) || rooms.has(projectorsOf(one.kept.id));
}

function catchUpBoard(one: LiveClass, socket: Socket): void {
  if (isLagging(socket)) return;
  socket.data[MARK] = false;
  socket.emit('board', { seats: [...one.seats.values()].map(tileOf) });
  if (mayKnowNames(socket, one)) socket.emit('roster', { seats: rosterOf(one) });
  if (isInstructor(socket)) tellCounts(one, [socket]);
}

/** What was answered so far; to everyone else only once it is shown. */
function tellCounts(one: LiveClass, instructors: readonly Socket[]): void {
  const { poll } = one.state;
  if (poll === null) return;
  const answers = one.polls.get(poll.id) ?? new Map<number, number>();
  const counts = countAnswers(answers.values(), poll.question.options.length);
  for (const socket of instructors) {
    socket.emit('poll counts', { poll: poll.id, counts, answered: answers.size });
  }
}

function socketsOf(live: Live, one: LiveClass): Socket[] {
  const { adapter, sockets } = live.io.of('/');
  const { id } = one.kept;
  return [instructorsOf(id), projectorsOf(id)]
    .flatMap((room) => [...(adapter.rooms.get(room) ?? [])])
    .flatMap((socketId) => sockets.get(socketId) ?? []);
}

function isInstructor(socket: Socket): boolean {
  return socket.data.who.role === 'instructor';
}

function mayKnowNames(socket: Socket, one: LiveClass): boolean {
  return isInstructor(socket) || one.state.names;
}

function tileOf({ kept, here, state }: LiveSeat): BoardSeat {
  return { seat: kept.seat, here, state };
}

function rosterOf(one: LiveClass): RosterSeat[] {
  return [...one.seats.values()].map(({ kept: { seat, nickname, joinedMs, handedInMs } }) => ({
    seat,
    nickname,
    joinedMs,
    handedInMs,
  }));
}
