/** The page's end of an exercise: hands, eyes and tools, the look back, and what would bring it back. */
import { beforeEach, describe, expect, it } from 'vitest';
import type { SavedRun } from '../../../src/app/session/session-types.ts';
import type { ToolUse } from '../../../src/bench/index.ts';
import { openToySession } from './toy-session.ts';

const ARRIVES_S = 15;
const USE: ToolUse = { tool: 'manometer', place: 'inlet', range: 'low' };

let toy: ReturnType<typeof openToySession>;
const state = () => toy.session.store.read();
const plant = () => toy.session.atThePlant.read();

beforeEach(() => {
  toy = openToySession({ kind: 'job', id: 'toy' }, [], ARRIVES_S);
});

describe('a session at work', () => {
  it('plays at once, or stands still when that is asked', () => {
    toy.live(1);
    expect(state().status?.mode).toBe('playing');
    toy = openToySession({ kind: 'job', id: 'toy', play: false }, [], ARRIVES_S);
    toy.live(1);
    expect(state().status).toMatchObject({ mode: 'paused', timeS: ARRIVES_S });
  });

  it('looks back in the record only: the plant stays where it is', () => {
    toy.live(4);
    toy.session.scrub(16);
    toy.session.settle();
    toy.live(0.5);
    expect(state()).toMatchObject({ shownS: 16, lookingBack: true });
    expect(state().status?.timeS).toBeGreaterThan(18.5);
  });

  it('goes back to live before a hand does anything, and on when it was running', () => {
    toy.live(4);
    const headS = toy.session.headS();
    toy.session.scrub(16);
    toy.session.settle();
    toy.session.perform({ type: 'supply', on: false });
    toy.live(1);
    expect(state()).toMatchObject({ lookingBack: false });
    expect(state().status?.mode).toBe('playing');
    const [act] = state().events.filter(({ type }) => type === 'action');
    expect(act).toMatchObject({ action: { type: 'supply', on: false } });
    expect(act?.t).toBeGreaterThanOrEqual(headS);
    expect(plant().bench?.supplyOn).toBe(false);
  });

  it('plays on from where the plant is, not from where someone looked', () => {
    toy.live(2);
    toy.session.pause();
    toy.live(0.2);
    const headS = toy.session.headS();
    toy.session.scrub(15.5);
    toy.session.play();
    toy.live(1);
    expect(state().lookingBack).toBe(false);
    expect(toy.session.headS()).toBeGreaterThan(headS + 0.9);
  });
});

describe('tools of a session', () => {
  it('are connected and counted as a check, once at each place', () => {
    toy.session.connect(USE);
    toy.session.connect({ ...USE });
    toy.live(0.5);
    expect(plant().meters.map(({ use }) => use)).toEqual([USE]);
    const checks = state().events.flatMap((event) =>
      event.type === 'action' ? [event.action] : [],
    );
    expect(checks).toMatchObject([
      { type: 'check', what: 'manometer: low', place: 'inlet', other: '' },
    ]);
    toy.session.disconnect(USE);
    toy.live(0.5);
    expect(plant().meters).toEqual([]);
  });
});

describe('questions of a session', () => {
  it('are answered each by its own answer, whatever order they come in', async () => {
    toy.door.shut = true;
    const answers = Promise.all([
      toy.session.smell(),
      toy.session.look('fuses'),
      toy.session.look('belt'),
      toy.session.listen(),
      toy.session.proof([]),
    ]);
    toy.letIn();
    expect(await answers).toMatchObject([
      0.25,
      { what: 'fuses' },
      null,
      [{ what: 'fan' }],
      { proved: false },
    ]);
  });

  it('are given up when the session closes', async () => {
    toy.door.shut = true;
    const smell = toy.session.smell();
    toy.session.close();
    await expect(smell).rejects.toThrow('session closed');
  });
});

describe('what would bring a session back', () => {
  let saved: SavedRun[];
  const last = (): SavedRun => saved.at(-1) as SavedRun;

  beforeEach(() => {
    saved = [];
    toy.session.onLog((run) => saved.push(run));
  });

  it('is told at once, with the act that the worker has not heard of yet', () => {
    toy.live(1);
    toy.door.shut = true;
    toy.session.perform({ type: 'supply', on: false });
    expect(last().pending).toEqual([{ type: 'supply', on: false }]);
    expect(last().hash).toBeNull();
    toy.letIn();
    expect(last().pending).toEqual([]);
    expect(last().log).toMatchObject([{ type: 'supply', on: false }]);
  });

  it('brings it back at any moment of a visit, with what was pending', () => {
    toy.live(1);
    toy.session.perform({ type: 'reset', pressed: true });
    toy.live(1);
    toy.session.perform({ type: 'reset', pressed: false });
    toy.live(1);
    toy.session.pause();
    const { log, headS, hash } = last();
    const back = openToySession(
      {
        kind: 'job',
        id: 'toy',
        log: [...log],
        untilS: headS,
        ...(hash === null ? {} : { hash }),
        pending: [{ type: 'supply', on: false }],
        play: false,
      },
      [],
      ARRIVES_S,
    );
    back.live(0.5);
    const { status, failure } = back.session.store.read();
    expect(failure).toBeNull();
    expect(status?.timeS).toBeCloseTo(headS + 0.1, 6);
    expect(back.session.atThePlant.read().bench?.supplyOn).toBe(false);
  });
});
