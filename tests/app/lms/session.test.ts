import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { takeUpAttempt } from '../../../src/app/lms/attempt.ts';
import type { LearningSystem, Report, SystemMode } from '../../../src/app/lms/learning-system.ts';
import { packageNow } from '../../../src/app/lms/package-now.ts';
import { packageSession } from '../../../src/app/lms/session.ts';
import { packagedOf } from '../../../src/records/lms/index.ts';

const QUIZ = packagedOf({
  form: 'cmi5',
  title: 'One',
  mastery: 0.7,
  xapi: '1.0.3',
  exercise: { kind: 'quiz', mode: 'standard', items: ['cause/dairy/1'] },
});
const KEY = 'flamewright.quiz-open.1';

/** A system that takes one judgement a session, as cmi5 does. */
function begin(mode: SystemMode = 'normal', mastery: number | null = null) {
  const texts = new Map<string, string>();
  const shelf = {
    keys: () => [...texts.keys()],
    get: (key: string) => texts.get(key) ?? null,
    set: (key: string, text: string) => void texts.set(key, text),
    remove: (key: string) => void texts.delete(key),
  };
  let stamps = 0;
  const taken = takeUpAttempt(shelf, 'a', null, () => `s${++stamps}`);
  if (taken.from === 'elsewhere') throw new Error('elsewhere');
  const kept: string[] = [];
  const reports: Report[] = [];
  let left = 0;
  const system: LearningSystem = {
    mode,
    mastery,
    attempt: 'a',
    saved: null,
    room: null,
    returnAddress: null,
    sound: null,
    keep: (packed) => void kept.push(packed),
    report(report, before) {
      reports.push(report);
      const passed = before.passed || (reports.length === 1 && report.passed === true);
      return Promise.resolve({ completed: true, passed });
    },
    leave: () => void left++,
  };
  const session = packageSession(QUIZ, system, taken.attempt);
  return { session, kept, reports, left: () => left };
}

describe('a package under way', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    packageNow.write({ told: null, later: false, whole: true, onDevice: true, trouble: null });
  });
  afterEach(() => vi.useRealTimers());

  it('keeps what is done within seconds, many writings as one, and the last of it on leaving', () => {
    const { session, kept, left } = begin();
    for (const n of [1, 2, 3]) session.written(KEY, `answer ${n}`, true);
    expect(kept).toEqual([]);
    vi.advanceTimersByTime(3000);
    expect(kept).toHaveLength(1);
    expect(kept[0]).toContain('answer 3');
    session.written(KEY, 'answer 4', true);
    session.leave();
    expect(kept[1]).toContain('answer 4');
    expect(left()).toBe(1);
    vi.advanceTimersByTime(60_000);
    expect(kept).toHaveLength(2);
  });

  it('reports the best outcome, and says so where the system will hear of it later', async () => {
    const { session, reports } = begin();
    for (const outcome of [0.4, 0.3, 0.4]) session.tell(outcome);
    await vi.advanceTimersByTimeAsync(10);
    expect(reports).toEqual([{ scaled: 0.4, passed: false }]);
    expect(packageNow.read()).toMatchObject({ told: { scaled: 0.4, passed: false }, later: false });
    session.tell(0.9);
    await vi.advanceTimersByTimeAsync(10);
    expect(packageNow.read()).toMatchObject({ told: { scaled: 0.9, passed: true }, later: true });
  });

  it('goes by the mark of the system where that has one, to the last bit', async () => {
    const { session, reports } = begin('normal', 0.3);
    session.tell(0.1 + 0.2 - 1e-12);
    await vi.advanceTimersByTimeAsync(10);
    expect(reports[0]?.passed).toBe(true);
  });

  it('tells and keeps nothing where it is opened to look at', async () => {
    const { session, kept, reports } = begin('review');
    session.written(KEY, 'answer', true);
    session.tell(1);
    await vi.advanceTimersByTimeAsync(10_000);
    session.leave();
    expect([kept, reports]).toEqual([[], []]);
  });
});
