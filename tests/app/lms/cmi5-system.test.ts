import { describe, expect, it } from 'vitest';
import { openCmi5 } from '../../../src/app/lms/cmi5/cmi5-system.ts';
import { readLaunchData } from '../../../src/app/lms/cmi5/launch-data.ts';
import { readLaunch } from '../../../src/app/lms/cmi5/read-launch.ts';
import type { LearningSystem, SystemTrouble } from '../../../src/app/lms/learning-system.ts';

const QUERY = {
  endpoint: 'https://lms.example/lrs',
  fetch: 'https://lms.example/pass?one=1',
  actor: JSON.stringify({ account: { homePage: 'https://college.example/', name: '7' } }),
  registration: '0e9a6f2c-3f3c-4b1f-9d1b-6a4a1f2b3c4d',
  activityId: 'https://college.example/unit',
};
const queryOf = (change: object) => `?${new URLSearchParams({ ...QUERY, ...change })}`;
const NOTHING = { completed: false, passed: false };

/** A record store whose answers a test decides on: `answer` gives a status, or throws as a network does. */
function fakeStore(answer: (call: string) => number = () => 200, data: object = {}) {
  const sent: string[][] = [];
  const states = new Map<string, string>();
  const calls: string[] = [];
  const launchData = { contextTemplate: {}, launchMode: 'Normal', ...data };
  const get = async (address: string | URL | Request, init: RequestInit = {}) => {
    const url = new URL(String(address));
    const call = `${init.method ?? 'GET'} ${url.pathname}`;
    calls.push(call);
    const status = answer(call);
    if (status !== 200) return new Response('', { status });
    if (call === 'POST /pass') return new Response('{"auth-token":"abc"}');
    if (call === 'POST /lrs/statements') {
      const all = JSON.parse(String(init.body)) as { id: string; verb: { id: string } }[];
      sent.push(all.map(({ verb }) => verb.id.slice(verb.id.lastIndexOf('/') + 1)));
      return new Response('[]');
    }
    const id = url.searchParams.get('stateId');
    if (call === 'PUT /lrs/activities/state') states.set(id ?? '', String(init.body));
    if (id === 'LMS.LaunchData') return new Response(JSON.stringify(launchData));
    return new Response(id === null ? JSON.stringify([...states.keys()]) : states.get(id));
  };
  return { get: get as typeof fetch, sent, states, calls };
}

async function open(store: ReturnType<typeof fakeStore>) {
  const launch = readLaunch(queryOf({}));
  if (launch === null) throw new Error('no launch');
  const troubles: (SystemTrouble | null)[] = [];
  const waiting: (() => void)[] = [];
  let ids = 0;
  const around = {
    fetch: store.get,
    nowMs: () => 0,
    nowISO: () => '2026-05-04T09:00:00.000Z',
    newId: () => `00000000-0000-4000-8000-${String(++ids).padStart(12, '0')}`,
    later: (act: () => void) => void waiting.push(act),
  };
  const connected = await openCmi5(launch, '1.0.3', around, (told) => troubles.push(told));
  return { ...connected, troubles, waiting };
}
function begun(system: LearningSystem | null): LearningSystem {
  if (system === null) throw new Error('not begun');
  return system;
}
/** Lets all promises that can be kept be kept. */
const settle = () => new Promise((done) => setTimeout(done, 5));

describe('a session of cmi5', () => {
  it('says each thing once, in order, however often the outcome is looked at', async () => {
    const store = fakeStore();
    const system = begun((await open(store)).system);
    const report = { scaled: 0.8, passed: true };
    const told = await system.report(report, NOTHING);
    await system.report(report, told);
    await system.report(report, NOTHING);
    system.leave();
    system.leave();
    await settle();
    expect(told).toEqual({ completed: true, passed: true });
    expect(store.sent.flat()).toEqual(['initialized', 'completed', 'passed', 'terminated']);
    expect(store.calls.filter((call) => call === 'POST /pass')).toHaveLength(1);
  });

  it('judges once a session, later better than before, and never after it was passed', async () => {
    const store = fakeStore();
    const first = begun((await open(store)).system);
    const failed = await first.report({ scaled: 0.2, passed: false }, NOTHING);
    expect(failed).toEqual({ completed: true, passed: false });
    await first.report({ scaled: 0.9, passed: true }, failed);
    const second = begun((await open(store)).system);
    const passed = await second.report({ scaled: 0.9, passed: true }, failed);
    expect(passed).toEqual({ completed: true, passed: true });
    const third = begun((await open(store)).system);
    expect(await third.report({ scaled: 1, passed: true }, passed)).toEqual(passed);
    await settle();
    expect(store.sent.flat()).toEqual([
      'initialized',
      'completed',
      'failed',
      'initialized',
      'passed',
      'initialized',
    ]);
  });

  it('sends again what did not come through, and nothing overtakes it', async () => {
    let isUp = true;
    const store = fakeStore((call) => {
      if (call !== 'POST /lrs/statements' || isUp) return 200;
      throw new TypeError('Failed to fetch');
    });
    const { system, troubles, waiting } = await open(store);
    await settle();
    isUp = false;
    const reporting = begun(system).report({ scaled: 1, passed: true }, NOTHING);
    await settle();
    expect(troubles.at(-1)).toEqual({ trouble: 'not reached', detail: 'Failed to fetch' });
    expect(store.sent.flat()).toEqual(['initialized']);
    isUp = true;
    waiting.shift()?.();
    expect(await reporting).toEqual({ completed: true, passed: true });
    expect(store.sent.flat()).toEqual(['initialized', 'completed', 'passed']);
    expect(troubles.at(-1)).toBeNull();
  });

  it('sends what still waits together with its last word', async () => {
    let isUp = true;
    const store = fakeStore((call) => (call === 'POST /lrs/statements' && !isUp ? 503 : 200));
    const system = begun((await open(store)).system);
    await settle();
    isUp = false;
    void system.report({ scaled: 0.1, passed: false }, NOTHING);
    await settle();
    isUp = true;
    system.keep('{"state":1}');
    system.leave();
    await settle();
    expect(store.sent).toEqual([['initialized'], ['completed', 'failed', 'terminated']]);
    expect(store.states.get('flamewright')).toBe('{"state":1}');
  });

  it('takes a statement that the store has already as said, and one it refuses as not', async () => {
    const conflict = fakeStore((call) => (call === 'POST /lrs/statements' ? 409 : 200));
    const known = begun((await open(conflict)).system);
    expect(await known.report({ scaled: 1, passed: true }, NOTHING)).toEqual({
      completed: true,
      passed: true,
    });
    const refusing = fakeStore((call) => (call === 'POST /lrs/statements' ? 400 : 200));
    const { system, troubles } = await open(refusing);
    expect(await begun(system).report({ scaled: 1, passed: true }, NOTHING)).toEqual(NOTHING);
    expect(troubles.at(-1)?.trouble).toBe('refused');
  });

  it('says only that it began and ended where it is opened to look at', async () => {
    const store = fakeStore(() => 200, { launchMode: 'Review' });
    const system = begun((await open(store)).system);
    system.keep('{}');
    await system.report({ scaled: 1, passed: true }, NOTHING);
    system.leave();
    await settle();
    expect(store.sent.flat()).toEqual(['initialized', 'terminated']);
    expect(store.states.has('flamewright')).toBe(false);
  });

  it('does not begin without a pass or without launch data, and says which', async () => {
    const used = await open(fakeStore((call) => (call === 'POST /pass' ? 403 : 200)));
    expect(used.trouble).toEqual({ trouble: 'session over', detail: '403' });
    const odd = await open(fakeStore(() => 200, { launchMode: 'Sideways' }));
    expect(odd.trouble).toEqual({ trouble: 'not begun', detail: 'LMS.LaunchData' });
  });

  it('keeps what was last to be kept, however fast it comes', async () => {
    const store = fakeStore();
    const system = begun((await open(store)).system);
    for (const n of [1, 2, 3, 4]) system.keep(`{"n":${n}}`);
    await settle();
    expect(store.states.get('flamewright')).toBe('{"n":4}');
  });
});

describe('the address that opens a unit', () => {
  it('is read whole or not at all', () => {
    expect(readLaunch(queryOf({}))).toMatchObject({
      endpoint: 'https://lms.example/lrs/',
      fetchAddress: QUERY.fetch,
      actor: { account: { name: '7' } },
    });
    for (const [name, bad] of [
      ['endpoint', 'javascript:alert(1)'],
      ['fetch', '/pass'],
      ['actor', '{"account":'],
      ['actor', '"7"'],
      ['registration', 'first'],
      ['activityId', ''],
    ] as const) {
      expect(readLaunch(queryOf({ [name]: bad })), name).toBeNull();
    }
    expect(readLaunch('')).toBeNull();
  });

  it('leads back only to where a browser goes, never to a text that it would run', () => {
    const data = (returnURL: string) =>
      readLaunchData(JSON.stringify({ launchMode: 'Normal', returnURL }));
    expect(data('https://lms.example/back')?.returnURL).toBe('https://lms.example/back');
    expect(data('javascript:alert(1)')).toBeNull();
    expect(readLaunchData('<html>')).toBeNull();
  });
});
