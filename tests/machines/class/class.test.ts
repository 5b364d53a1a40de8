import { describe, expect, it } from 'vitest';
import { type ClassEvent, paceOfSeat } from '../../../machines/index.ts';
import { ALL, BEGIN, CLOSE, FAULT, open, poll, showPoll, told } from './story.ts';

const freeze = (to: 'all' | number): ClassEvent => ({ type: 'freeze', to: toOf(to) });
const run = (to: 'all' | number, speed = 1): ClassEvent => ({ type: 'run', to: toOf(to), speed });
const toOf = (to: 'all' | number) => (to === 'all' ? to : { seat: to });
const when = (id: string): ClassEvent => ({
  type: 'when',
  id,
  to: ALL,
  step: 'pilot trial',
  acts: [FAULT],
});

describe('a class', () => {
  it.each<[string, readonly ClassEvent[], readonly string[], string]>([
    ['[CL-1] is opened once', [open(), open()], ['opened already'], 'gathering'],
    ['[CL-1] takes nothing before', [BEGIN, poll('a')], ['not opened', 'not opened'], 'not opened'],
    [
      '[CL-2] is together only at a start',
      [open('together', 'job')],
      ['only together with a start'],
      'not opened',
    ],
    ['[CL-2] is together at a start', [open('together')], [], 'gathering'],
    ['[CL-3] runs nothing before the begin', [open(), run('all')], ['not begun'], 'gathering'],
    ['[CL-3] begins once', [open(), BEGIN, BEGIN], ['begun already'], 'under way'],
    [
      '[CL-4] leaves the one plant to the page that drives it',
      [open('together'), BEGIN, freeze('all'), run('all')],
      ['not in this way of teaching', 'not in this way of teaching'],
      'under way',
    ],
    ['[CL-4] has no other speeds', [open(), BEGIN, run('all', 3)], ['no such speed'], 'under way'],
    [
      '[CL-4] has nothing to rewind in a quiz',
      [open('own copies', 'quiz'), BEGIN, { type: 'rewind', to: ALL, toS: 0 }],
      ['nothing to rewind'],
      'under way',
    ],
    [
      '[CL-5] does at least one thing',
      [open(), BEGIN, { type: 'do', to: ALL, acts: [] }, { type: 'do', to: ALL, acts: [FAULT] }],
      ['nothing to do'],
      'under way',
    ],
    [
      '[CL-6] has a name for each thing that waits for a step',
      [open(), when('a'), when('a'), { type: 'forget when', id: 'b' }],
      ['trigger twice', 'no such trigger'],
      'gathering',
    ],
    [
      '[CL-9] has one poll open at a time',
      [open(), poll('a'), poll('b')],
      ['a poll is open'],
      'gathering',
    ],
    [
      '[CL-9] asks with two options at least',
      [open(), poll('a', ['yes'])],
      ['too few options'],
      'gathering',
    ],
    [
      '[CL-10] shows a poll once and ends it by name',
      [
        open(),
        poll('a'),
        showPoll('b'),
        showPoll('a'),
        showPoll('a'),
        { type: 'end poll', id: 'b' },
      ],
      ['no such poll', 'shown already', 'no such poll'],
      'gathering',
    ],
    ['[CL-12] takes nothing after the close', [open(), CLOSE, BEGIN], ['closed'], 'closed'],
  ])('%s', (_title, events, refused, phase) => {
    const { state, refused: found } = told(events);
    expect(found).toEqual(refused);
    expect(state.phase).toBe(phase);
  });

  it('[CL-3] stands still until it begins, and then runs', () => {
    expect(told([open()]).state.pace.frozen).toBe(true);
    expect(told([open(), BEGIN]).state.pace).toEqual({ frozen: false, speed: 1 });
  });

  it.each<[string, readonly ClassEvent[], readonly [boolean, number], readonly [boolean, number]]>([
    ['one seat alone', [freeze(1)], [true, 1], [false, 1]],
    ['one seat at its own speed', [run(1, 8), freeze(1)], [true, 8], [false, 1]],
    ['all, over what one was told', [freeze(1), run('all', 4)], [false, 4], [false, 4]],
    ['one seat again after all', [freeze('all'), run(1, 2)], [false, 2], [true, 1]],
    ['after a step it rests', [{ type: 'next step', to: ALL }], [true, 1], [true, 1]],
    [
      'after a rewind it rests',
      [{ type: 'rewind by', to: { seat: 1 }, byS: 9 }],
      [true, 1],
      [false, 1],
    ],
  ])('[CL-4] paces %s', (_title, events, first, second) => {
    const { state, refused } = told([open(), BEGIN, ...events]);
    expect(refused).toEqual([]);
    expect([paceOfSeat(state, 1), paceOfSeat(state, 2)]).toEqual(
      [first, second].map(([frozen, speed]) => ({ frozen, speed })),
    );
  });

  it('[CL-6] keeps what waits for a step until it is taken back', () => {
    const { state } = told([open(), when('a'), when('b'), { type: 'forget when', id: 'a' }]);
    expect(state.triggers.map(({ id }) => id)).toEqual(['b']);
  });

  it('[CL-7] locks the tools of the last list alone', () => {
    const lock = (tools: readonly string[]): ClassEvent => ({ type: 'lock tools', tools });
    expect(told([open(), lock(['a', 'b', 'a'])]).state.lockedTools).toEqual(['a', 'b']);
    expect(told([open(), lock(['a', 'b']), lock(['c'])]).state.lockedTools).toEqual(['c']);
    expect(told([open(), lock(['a']), lock([])]).state.lockedTools).toEqual([]);
  });

  it('[CL-8] keeps every hint with its number', () => {
    const hint = (text: string): ClassEvent => ({ type: 'hint', to: { seat: 2 }, text });
    const { state } = told([open(), hint('look'), BEGIN, hint('again')]);
    expect(state.hints.map(({ n, text }) => [n, text])).toEqual([
      [2, 'look'],
      [4, 'again'],
    ]);
  });

  it('[CL-10] tells nothing of a poll before it is shown', () => {
    expect(told([open(), poll('a')]).state.poll?.shown).toBeNull();
    expect(told([open(), poll('a'), showPoll('a', [3, 4])]).state.poll?.shown?.counts).toEqual([
      3, 4,
    ]);
    expect(told([open(), poll('a'), { type: 'end poll', id: 'a' }]).state.poll).toBeNull();
  });

  it('[CL-11] projects what was said last, and hides names until told', () => {
    const { state } = told([
      open(),
      { type: 'project', shows: 'board', names: true },
      { type: 'spotlight', seat: 3 },
      { type: 'project', shows: 'spotlight', names: false },
    ]);
    expect(told([open()]).state.names).toBe(false);
    expect([state.shows, state.names, state.spotlight]).toEqual(['spotlight', false, 3]);
  });
});
