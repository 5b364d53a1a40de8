import { describe, expect, it } from 'vitest';
import { type Attempt, takeUpAttempt } from '../../../src/app/lms/attempt.ts';
import { type PackedState, SCORM_ROOM, unpackState } from '../../../src/app/lms/packed-state.ts';
import type { Shelf } from '../../../src/app/work/shelf.ts';

const KEY = 'flamewright.work.job.dairy-no-wind';

function device(): Shelf {
  const texts = new Map<string, string>();
  return {
    keys: () => [...texts.keys()],
    get: (key) => texts.get(key) ?? null,
    set: (key, text) => void texts.set(key, text),
    remove: (key) => void texts.delete(key),
  };
}

let stamps = 0;
const newStamp = () => `s${++stamps}`;
const open = (shelf: Shelf, saved: PackedState | null) =>
  takeUpAttempt(shelf, 'a', saved, newStamp);

function attemptIn(shelf: Shelf, saved: PackedState | null): Attempt {
  const taken = open(shelf, saved);
  if (taken.from === 'elsewhere') throw new Error('elsewhere');
  return taken.attempt;
}
function work(shelf: Shelf, attempt: Attempt, text: string): void {
  shelf.set(KEY, text);
  attempt.workAt(KEY, null);
}
/** Through the learning system and back. */
function sent(attempt: Attempt): PackedState {
  const read = unpackState(attempt.packed(SCORM_ROOM).packed);
  if (!read.ok) throw new Error('damaged');
  return read.state;
}

describe('an attempt between devices and the learning system', () => {
  it('goes on from what the system has, on a device that has nothing of it', () => {
    const [one, other] = [device(), device()];
    const first = attemptIn(one, null);
    work(one, first, 'first');
    first.outcome(0.4);
    first.told({ completed: true, passed: false });
    const taken = open(other, sent(first));
    expect(taken.from).toBe('system');
    expect(other.get(KEY)).toBe('first');
    const { best, completed, passed, key } = attemptIn(other, sent(first)).read();
    expect({ best, completed, passed, key }).toEqual({
      best: 0.4,
      completed: true,
      passed: false,
      key: KEY,
    });
  });

  it('goes on from the device where that has done more than the system has heard of', () => {
    const one = device();
    const first = attemptIn(one, null);
    work(one, first, 'first');
    const heard = sent(first);
    work(one, first, 'second');
    first.packed(SCORM_ROOM);
    expect(open(one, heard).from).toBe('device');
    expect(one.get(KEY)).toBe('second');
  });

  it('takes what was done on another device in between, in place of its own older work', () => {
    const [one, other] = [device(), device()];
    const first = attemptIn(one, null);
    work(one, first, 'first');
    const there = attemptIn(other, sent(first));
    work(other, there, 'later, there');
    expect(open(one, sent(there)).from).toBe('system');
    expect(one.get(KEY)).toBe('later, there');
  });

  it('says where work that was too long is not, and goes on with it where it is', () => {
    const [one, other] = [device(), device()];
    const first = attemptIn(one, null);
    // No two parts of it alike: nothing packs it.
    const long = Array.from({ length: 4000 }, (_, i) =>
      ((i * i * 7919) % 99991).toString(36),
    ).join();
    work(one, first, long);
    first.outcome(0.4);
    const { whole, packed } = first.packed(SCORM_ROOM);
    expect(whole).toBe(false);
    const read = unpackState(packed);
    if (!read.ok) throw new Error('damaged');
    expect(open(one, read.state).from).toBe('device');
    const taken = open(other, read.state);
    if (taken.from !== 'elsewhere') throw new Error(taken.from);
    expect(taken.beginAnew().read()).toMatchObject({ best: 0.4, key: null });
    expect(other.get(KEY)).toBeNull();
  });

  it('sends a quiz that is over and off the shelf as it was', () => {
    const one = device();
    const first = attemptIn(one, null);
    const key = 'flamewright.quiz-open.1';
    one.set(key, 'answers');
    first.workAt(key, 'answers');
    one.remove(key);
    expect(sent(first)).toMatchObject({ key, text: 'answers' });
  });

  it('counts the best outcome', () => {
    const one = attemptIn(device(), null);
    expect([0.4, 0.3, 0.4, 0.6, 0].map((each) => one.outcome(each))).toEqual([
      true,
      false,
      false,
      true,
      false,
    ]);
    expect(one.read().best).toBe(0.6);
  });
});
