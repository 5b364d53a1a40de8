import { describe, expect, it } from 'vitest';
import type { BoardSeat, SeatState, Spoken } from '../../../src/classroom/index.ts';
import { type Client, join, lead, newKey, openClass, project, serve, sit } from './clients.ts';

const STATE: SeatState = {
  phase: 'working',
  step: 'pre-purge',
  stepS: 3,
  runS: 40,
  running: true,
  lockout: null,
  last: null,
  suspects: [],
  flags: 0,
  readings: 2,
  resets: 0,
  lockouts: 0,
  progress: 0.2,
  answered: 0,
  right: 0,
  asksHelp: false,
  applied: 1,
};

/** The board as a page has it: the newest tile of each seat. */
function boardOf({ got }: Client): ReadonlyMap<number, BoardSeat> {
  return new Map(got.board.flatMap(({ seats }) => seats).map((tile) => [tile.seat, tile]));
}

describe('the board', () => {
  it('shows who is here and how each stands, and when one has gone', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const learner = await sit(server, await join(server, opened));
    learner.tell('state', STATE);
    await instructor.until(() => boardOf(instructor).get(1)?.state !== undefined);
    await instructor.until(() => boardOf(instructor).get(1)?.state?.step === 'pre-purge');
    expect(boardOf(instructor).get(1)).toEqual({ seat: 1, here: true, state: STATE });
    learner.close();
    await instructor.until(() => boardOf(instructor).get(1)?.here === false);
    expect(boardOf(instructor).get(1)?.state).toEqual(STATE);
  });

  it('is told only where something has changed, and as a whole to whoever comes', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const [first, second] = [
      await sit(server, await join(server, opened, 'Ada')),
      await sit(server, await join(server, opened, 'Bo')),
    ];
    first.tell('state', STATE);
    second.tell('state', { ...STATE, runS: 7 });
    await instructor.until(
      () => [...boardOf(instructor).values()].filter(({ state }) => state !== null).length === 2,
    );
    const before = instructor.got.board.length;
    second.tell('state', { ...STATE, runS: 8 });
    await instructor.until(() => boardOf(instructor).get(2)?.state?.runS === 8);
    const news = instructor.got.board.slice(before).flatMap(({ seats }) => seats);
    expect(news.map(({ seat }) => seat)).toEqual([2]);
    const late = await lead(server, opened);
    await late.until(() => late.got.board.length > 0);
    expect(late.got.board[0]?.seats.map(({ seat, state }) => [seat, state?.runS])).toEqual([
      [1, 40],
      [2, 8],
    ]);
  });

  it('names nobody but to instructors, and on the projector while names are on', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const projector = await project(server, opened);
    const learner = await sit(server, await join(server, opened, 'Ada'));
    const names = ({ got }: Client) => got.roster.at(-1)?.seats.map(({ nickname }) => nickname);
    await instructor.until(() => names(instructor)?.[0] === 'Ada');
    await projector.until(() => boardOf(projector).get(1)?.here === true);
    expect(JSON.stringify(projector.got)).not.toContain('Ada');
    const show = (on: boolean) =>
      instructor.ask('say', {
        key: newKey(),
        entry: { type: 'project', shows: 'board', names: on },
      });
    await show(true);
    await projector.until(() => names(projector)?.[0] === 'Ada');
    await show(false);
    await projector.until(() => names(projector)?.length === 0);
    expect(learner.got.roster).toEqual([]);
    expect(learner.got.board).toEqual([]);
  });
});

describe('a poll', () => {
  const question = { text: 'What next?', stem: [], options: ['a', 'b', 'c'], item: null };

  it('is counted by the server, shown to its instructor at once and to all only when shown', async () => {
    const server = await serve();
    const opened = await openClass(server);
    const instructor = await lead(server, opened);
    const projector = await project(server, opened);
    const learners = [
      await sit(server, await join(server, opened, 'Ada')),
      await sit(server, await join(server, opened, 'Bo')),
    ];
    await instructor.ask('say', { key: newKey(), entry: { type: 'poll', id: 'next', question } });
    const answer = (index: number, option: number) =>
      learners[index]?.ask('poll answer', { poll: 'next', option });
    expect(await answer(0, 2)).toEqual({ ok: true });
    expect(await answer(1, 2)).toEqual({ ok: true });
    // The first answer stands.
    expect(await answer(1, 0)).toEqual({ ok: true });
    expect(await answer(0, 7)).toMatchObject({ error: 'no such poll' });
    await instructor.until(() => instructor.got['poll counts'].at(-1)?.answered === 2);
    expect(instructor.got['poll counts'].at(-1)?.counts).toEqual([0, 0, 2]);
    for (const { got } of [projector, ...learners]) expect(got['poll counts']).toEqual([]);
    const made = {
      type: 'show poll',
      id: 'next',
      right: 2,
      why: '',
      counts: [9, 9, 9],
    } satisfies Spoken;
    await instructor.ask('say', { key: newKey(), entry: made });
    for (const { got, until } of [projector, ...learners]) {
      await until(() => got.entry.some(({ type }) => type === 'show poll'));
      expect(got.entry.at(-1)).toMatchObject({ type: 'show poll', counts: [0, 0, 2] });
    }
    expect(await answer(0, 1)).toEqual({ ok: false, error: 'poll is over' });
    await instructor.ask('say', { key: newKey(), entry: { type: 'end poll', id: 'next' } });
    expect(await answer(0, 1)).toEqual({ ok: false, error: 'poll is over' });
  });
});
