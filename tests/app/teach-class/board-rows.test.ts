import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ClassEvent, foldClass } from '../../../machines/class/index.ts';
import {
  boardRows,
  countRows,
  type FILTERS,
  ORDERS,
  ordered,
} from '../../../src/app/teach-class/board-rows.ts';
import { watchBoard } from '../../../src/app/teach-class/board-watch.ts';
import { sinceReading } from '../../../src/app/teach-class/stuck.ts';
import type { BoardSeat, RosterSeat } from '../../../src/classroom/index.ts';
import { stateOf } from './seats.ts';

const OPENING: ClassEvent[] = [
  {
    type: 'open',
    what: { kind: 'start', id: 'healthy-start', title: 'A healthy start', plant: 'dairy' },
    way: 'own copies',
    seed: 1,
  },
  { type: 'begin' },
  { type: 'run', to: 'all', speed: 1 },
];
const NAMES = ['Nia', 'Bo', 'Zoe', 'Ada', 'Cy'];

const board: BoardSeat[] = [
  { seat: 4, here: true, state: stateOf({ progress: 0.5 }) },
  { seat: 1, here: true, state: stateOf({ lockout: 'flame lost', lockouts: 1, progress: 0.2 }) },
  { seat: 3, here: true, state: stateOf({ asksHelp: true }) },
  { seat: 2, here: false, state: stateOf({ progress: 0.9 }) },
  { seat: 5, here: true, state: stateOf({ phase: 'done', progress: 1 }) },
];

function rowsOf(events = OPENING, seats = board, roster: RosterSeat[] = rosterOf()) {
  const book = foldClass(events.map((event, at) => ({ ...event, n: at + 1, atMs: 0 })));
  const since = new Map(
    seats.flatMap(({ seat, state }) =>
      state === null ? [] : [[seat, sinceReading(null, state)] as const],
    ),
  );
  return boardRows({ book, board: seats, roster, since, begunMs: 0, nowMs: 1000 });
}

function rosterOf(): RosterSeat[] {
  return NAMES.map((nickname, at) => ({
    seat: at + 1,
    nickname,
    joinedMs: 0,
    handedInMs: null,
  }));
}

describe('the rows of the board', () => {
  it('say of each seat the one thing that matters most', () => {
    expect(rowsOf().map(({ seat, standing }) => [seat, standing])).toEqual([
      [1, 'locked out'],
      [2, 'away'],
      [3, 'stuck'],
      [4, 'working'],
      [5, 'done'],
    ]);
  });

  it('show nobody who handed in as stuck or away', () => {
    const handedIn = rosterOf().map((one) => ({ ...one, handedInMs: 5 }));
    const standings = rowsOf(OPENING, board, handedIn).map(({ standing }) => standing);
    expect(new Set(standings)).toEqual(new Set(['done']));
  });

  it('find nobody idle in a class on one plant, where there is nothing to do', () => {
    const seats = [
      {
        seat: 1,
        here: true,
        state: stateOf({ last: { type: 'reset', what: '', agoS: 9999 } }),
      },
    ];
    const [open, ...others] = OPENING;
    expect(rowsOf(OPENING, seats)[0]?.stuck).toBe('no act');
    const together = [{ ...open, way: 'together' }, ...others] as ClassEvent[];
    expect(rowsOf(together, seats)[0]?.stuck).toBeNull();
    const frozen: ClassEvent[] = [...OPENING, { type: 'freeze', to: { seat: 1 } }];
    expect(rowsOf(frozen, seats)[0]?.stuck).toBeNull();
  });

  it('are put in order by seat, name, need and progress', () => {
    const seatsBy = (order: (typeof ORDERS)[number]) =>
      ordered(rowsOf(), order, 'everyone').map(({ seat }) => seat);
    expect(seatsBy('seat')).toEqual([1, 2, 3, 4, 5]);
    expect(seatsBy('name')).toEqual([4, 2, 5, 1, 3]);
    expect(seatsBy('stuck first')).toEqual([3, 1, 4, 2, 5]);
    expect(seatsBy('progress')).toEqual([5, 2, 4, 1, 3]);
  });

  it('are filtered; who is stuck and locked out is under both', () => {
    const seats = [
      ...board,
      { seat: 6, here: true, state: stateOf({ lockout: 'flame lost', lockouts: 2 }) },
    ];
    const of = (filter: (typeof FILTERS)[number]) =>
      ordered(rowsOf(OPENING, seats), 'seat', filter).map(({ seat }) => seat);
    expect(of('stuck')).toEqual([3, 6]);
    expect(of('locked out')).toEqual([1, 6]);
    expect(of('done')).toEqual([5]);
    expect(of('away')).toEqual([2]);
    expect(countRows(rowsOf(OPENING, seats))).toEqual({ in: 5, stuck: 2, done: 1, away: 1 });
  });

  it('lose no seat and show none twice, however they are put in order', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 1, max: 2000 }), { maxLength: 60 }),
        fc.constantFrom(...ORDERS),
        (numbers, order) => {
          const seats = numbers.map((seat) => ({
            seat,
            here: seat % 3 > 0,
            state: seat % 5 === 0 ? null : stateOf({ progress: (seat % 7) / 7 }),
          }));
          const shown = ordered(rowsOf(OPENING, seats, []), order, 'everyone');
          expect(shown.map(({ seat }) => seat).sort((a, b) => a - b)).toEqual(
            [...numbers].sort((a, b) => a - b),
          );
        },
      ),
      { seed: 11 },
    );
  });
});

describe('the board as it changes', () => {
  it('tells everyone who listens, and works a change out once', () => {
    const first = told(board);
    let now = first;
    const heard = new Set<() => void>();
    const watch = watchBoard(
      {
        read: () => now,
        subscribe(listener) {
          heard.add(listener);
          return () => heard.delete(listener);
        },
      },
      () => 0,
    );
    const calls = { a: 0, b: 0 };
    const stops = [
      watch.subscribe(() => {
        calls.a += 1;
      }),
      watch.subscribe(() => {
        calls.b += 1;
      }),
    ];
    const rows = watch.read();
    expect(watch.read()).toBe(rows);
    now = told([...board, { seat: 9, here: true, state: null }]);
    for (const listener of [...heard]) listener();
    expect(calls).toEqual({ a: 1, b: 1 });
    expect(watch.read().map(({ seat }) => seat)).toEqual([1, 2, 3, 4, 5, 9]);
    // Something else of the class changed: no row did.
    now = { ...now, offsetMs: 5 };
    for (const listener of [...heard]) listener();
    expect(calls).toEqual({ a: 1, b: 1 });
    for (const stop of stops) stop();
    expect(heard.size).toBe(0);
  });
});

function told(seats: readonly BoardSeat[]) {
  const book = foldClass(OPENING.map((event, at) => ({ ...event, n: at + 1, atMs: 0 })));
  const byNumber = new Map(seats.map((one) => [one.seat, one]));
  return { book, entries: [], board: byNumber, offsetMs: 0 };
}
