import { Scorm12API } from 'scorm-again';
import { describe, expect, it } from 'vitest';
import type { SystemTrouble } from '../../../src/app/lms/learning-system.ts';
import { SCORM_ROOM } from '../../../src/app/lms/packed-state.ts';
import { findScormApi, type ScormApi } from '../../../src/app/lms/scorm12/find-api.ts';
import { openScorm12 } from '../../../src/app/lms/scorm12/scorm-system.ts';
import { sessionTime } from '../../../src/app/lms/scorm12/session-time.ts';

const NOTHING = { completed: false, passed: false };

const lastError = () => '101';
const errorString = () => 'General exception';

/** A system that remembers what was asked of it. */
function fakeApi(
  values: Readonly<Record<string, string>> = {},
  refuse: (name: string, element: string) => boolean = () => false,
) {
  const calls: string[] = [];
  const set = new Map<string, string>();
  const does = (name: string) => (element: string, value?: string) => {
    calls.push(
      [name, element, value].filter((part) => part !== undefined && part !== '').join(' '),
    );
    if (refuse(name, element)) return 'false';
    if (name === 'LMSSetValue') set.set(element, value ?? '');
    return 'true';
  };
  const valueAt = (element: string) => set.get(element) ?? values[element] ?? '';
  const api = {
    LMSInitialize: does('LMSInitialize'),
    LMSSetValue: does('LMSSetValue'),
    LMSCommit: does('LMSCommit'),
    LMSFinish: does('LMSFinish'),
    LMSGetValue: valueAt,
    LMSGetLastError: lastError,
    LMSGetErrorString: errorString,
  } as ScormApi;
  return { api, calls, set };
}

function open(api: ScormApi, nowMs: () => number = () => 0) {
  const troubles: (SystemTrouble | null)[] = [];
  const { system, trouble } = openScorm12(api, nowMs, (told) => troubles.push(told));
  return { system, trouble, troubles };
}
function opened(api: ScormApi, nowMs?: () => number) {
  const { system, troubles } = open(api, nowMs);
  if (system === null) throw new Error('not begun');
  return { system, troubles };
}

describe('a session of SCORM 1.2', () => {
  it('is taken, call for call, by a run-time of the standard', async () => {
    const api = new Scorm12API({ autocommit: false, logLevel: 5 });
    let nowMs = 0;
    const { system, troubles } = opened(api as unknown as ScormApi, () => nowMs);
    expect(system.saved).toBeNull();
    system.keep('x'.repeat(SCORM_ROOM));
    const told = await system.report({ scaled: 0.56789, passed: true }, NOTHING);
    nowMs = 3_723_450;
    system.leave();
    expect(told).toEqual({ completed: true, passed: true });
    expect(troubles.every((trouble) => trouble === null)).toBe(true);
    expect(api.cmi.suspend_data.length).toBe(SCORM_ROOM);
    expect(api.cmi.core.lesson_status).toBe('passed');
    expect(String(api.cmi.core.score.raw)).toBe('56.79');
    expect(api.isTerminated()).toBe(true);
  });

  it('never hands over more characters than the standard promises to keep', () => {
    const { api, calls } = fakeApi();
    const { system } = opened(api);
    expect(() => system.keep('x'.repeat(SCORM_ROOM + 1))).toThrow();
    expect(calls.some((call) => call.includes('suspend_data'))).toBe(false);
  });

  it('ends once, and says nothing after it', async () => {
    const { api, calls } = fakeApi();
    const { system } = opened(api);
    system.leave();
    const before = calls.length;
    system.leave();
    system.keep('more');
    expect(await system.report({ scaled: 1, passed: true }, NOTHING)).toEqual(NOTHING);
    expect(calls.length).toBe(before);
    expect(calls.filter((call) => call === 'LMSFinish')).toHaveLength(1);
  });

  it('changes nothing of the learner where it is opened to look at', async () => {
    for (const mode of ['browse', 'review']) {
      const { api, set } = fakeApi({ 'cmi.core.lesson_mode': mode });
      const { system } = opened(api);
      system.keep('more');
      await system.report({ scaled: 1, passed: true }, NOTHING);
      system.leave();
      expect([...set.keys()]).toEqual(['cmi.core.session_time']);
    }
  });

  it('tells what the system says where it does not begin, refuses, or cannot keep', async () => {
    const said = '101 General exception';
    const none = open(fakeApi({}, (name) => name === 'LMSInitialize').api);
    expect(none.trouble).toEqual({ trouble: 'not begun', detail: said });
    const full = opened(fakeApi({}, (_, element) => element === 'cmi.suspend_data').api);
    full.system.keep('state');
    expect(full.troubles.at(-1)).toEqual({ trouble: 'refused', detail: said });
    let down = true;
    const slow = opened(fakeApi({}, (name) => down && name === 'LMSCommit').api);
    const report = { scaled: 1, passed: null };
    expect(await slow.system.report(report, NOTHING)).toEqual(NOTHING);
    expect(slow.troubles.at(-1)).toEqual({ trouble: 'not reached', detail: said });
    down = false;
    expect(await slow.system.report(report, NOTHING)).toEqual({ completed: true, passed: false });
    expect(slow.troubles.at(-1)).toBeNull();
  });

  it('reports a score also to a system that knows nothing of its bounds', async () => {
    const { api, set } = fakeApi({}, (_, element) => /score\.(min|max)$/.test(element));
    const { system } = opened(api);
    expect((await system.report({ scaled: 0.5, passed: false }, NOTHING)).completed).toBe(true);
    expect(set.get('cmi.core.score.raw')).toBe('50');
    expect(set.get('cmi.core.lesson_status')).toBe('failed');
  });

  it('takes the mark from which it is passed from the system, where it is one', () => {
    const mastery = (text: string) =>
      opened(fakeApi({ 'cmi.student_data.mastery_score': text }).api).system.mastery;
    expect([mastery('80'), mastery('0'), mastery(''), mastery('many'), mastery('180')]).toEqual([
      0.8,
      0,
      null,
      null,
      null,
    ]);
  });

  it('writes time as the standard does', () => {
    expect([0, 61.239, 3600 * 10_000, -1].map(sessionTime)).toEqual([
      '0000:00:00.00',
      '0000:01:01.24',
      '9999:59:59.99',
      '0000:00:00.00',
    ]);
  });
});

describe('the interface of SCORM 1.2', () => {
  const { api } = fakeApi();
  type Frame = { parent?: Frame; opener?: Frame | null; API?: unknown };
  const find = (frame: Frame) => findScormApi(frame as unknown as Window);
  const top = (frame: Frame): Frame => {
    frame.parent = frame;
    return frame;
  };

  it('is found in a frame around the page, and around the page that opened it', () => {
    expect(find({ parent: { parent: top({ API: api }) } })).toBe(api);
    const opener = { parent: top({ API: api }) };
    expect(find(top({ opener }))).toBe(api);
    expect(find({ parent: top({ opener }) })).toBe(api);
    expect(find(top({ opener: null }))).toBeNull();
    expect(find(top({ API: 'none' }))).toBeNull();
  });

  it('is looked for past frames of other servers, and not for ever', () => {
    const shut: Frame = {
      get API() {
        throw new Error('SecurityError');
      },
    };
    shut.parent = top({ API: api });
    expect(find({ parent: shut })).toBe(api);
    let endless = 0;
    const frame = (): Frame => ({
      get parent() {
        endless += 1;
        return frame();
      },
    });
    expect(find(frame())).toBeNull();
    expect(endless).toBeLessThan(200);
  });
});
