import {
  type ClassEntry,
  type ClassState,
  createClass,
  takeClassEntry,
} from '../../../machines/class/index.ts';
import type { Head, SeatState } from '../../classroom/index.ts';
import type { KeptClass, KeptSeat, PollAnswer } from '../store/types.ts';
import { createLine, type Line } from './line.ts';

export interface LiveSeat {
  kept: KeptSeat;
  state: SeatState | null;
  /** The connection of its page to this process; null while it has none. */
  socketId: string | null;
  /** Of the process that has its page, where that is another one. */
  elsewhere: string | null;
  here: boolean;
  /** Whether its page was at this process last, which then tells the others of it. */
  own: boolean;
}

/** A class as one process holds it: the fold of its entries, and what need not outlive the process. */
export interface LiveClass {
  readonly kept: KeptClass;
  readonly entries: ClassEntry[];
  state: ClassState;
  readonly seats: Map<number, LiveSeat>;
  /** Entries by the key that the instructor's page gave them. */
  readonly numbersByKey: Map<string, number>;
  /** Options by seat, by poll. */
  readonly polls: Map<string, Map<number, number>>;
  /** Of the one plant. */
  head: Head | null;
  /** The head that was told to everyone so that it is not lost; the newest may be on its way. */
  headSettled: Head | null;
  headAtMs: number;
  /** What is said is decided one after another. */
  readonly line: Line;
  /** Seats whose tile has changed since the board was last told. */
  readonly changed: Set<number>;
  rosterChanged: boolean;
  countsChanged: boolean;
  /** Watched seats, by the time until which another process wants to be told of them. */
  readonly watchedElsewhereMs: Map<number, number>;
  boardWantedElsewhereMs: number;
  sockets: number;
  /** When the last connection left. */
  emptySinceMs: number;
  gone: boolean;
  /** While the works that nobody handed in are judged. */
  judging: boolean;
}

export function createLiveClass(
  kept: KeptClass,
  seats: readonly KeptSeat[],
  nowMs: number,
): LiveClass {
  return {
    kept,
    entries: [],
    state: createClass(),
    seats: new Map(seats.map((seat) => [seat.seat, liveSeat(seat)])),
    numbersByKey: new Map(),
    polls: new Map(),
    head: null,
    headSettled: null,
    headAtMs: 0,
    line: createLine(),
    changed: new Set(),
    rosterChanged: false,
    countsChanged: false,
    watchedElsewhereMs: new Map(),
    boardWantedElsewhereMs: 0,
    sockets: 0,
    emptySinceMs: nowMs,
    gone: false,
    judging: false,
  };
}

export function liveSeat(kept: KeptSeat): LiveSeat {
  return { kept, state: null, socketId: null, elsewhere: null, here: false, own: false };
}

/** Puts a seat that the store knows into the class, or brings a known one up to date. */
export function putSeat(one: LiveClass, kept: KeptSeat): LiveSeat {
  const known = one.seats.get(kept.seat);
  if (known !== undefined) {
    const isSame =
      known.kept.nickname === kept.nickname && known.kept.handedInMs === kept.handedInMs;
    if (!isSame) one.rosterChanged = true;
    known.kept = kept;
    return known;
  }
  one.rosterChanged = true;
  const fresh = liveSeat(kept);
  one.seats.set(kept.seat, fresh);
  one.changed.add(kept.seat);
  return fresh;
}

/** Takes the entries that follow on what is there; what is older or leaves a gap is not taken. */
export function takeEntries(one: LiveClass, entries: readonly ClassEntry[]): ClassEntry[] {
  const fresh: ClassEntry[] = [];
  for (const entry of entries) {
    if (entry.n !== one.state.n + 1) continue;
    const taken = takeClassEntry(one.state, entry);
    // One that the chart does not take has its number all the same, so that none is missing.
    one.state = taken.ok ? taken.state : { ...one.state, n: entry.n };
    one.entries.push(entry);
    fresh.push(entry);
  }
  return fresh;
}

export function noteAnswer(one: LiveClass, { poll, seat, option }: PollAnswer): void {
  const answers = one.polls.get(poll) ?? new Map<number, number>();
  one.polls.set(poll, answers);
  if (answers.has(seat)) return;
  answers.set(seat, option);
  one.countsChanged = true;
}

export function countAnswers(answers: Iterable<number>, options: number): number[] {
  const counts = new Array<number>(options).fill(0);
  for (const option of answers) {
    if (option < options) counts[option] = (counts[option] ?? 0) + 1;
  }
  return counts;
}
