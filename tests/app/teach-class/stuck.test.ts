import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { STUCK_AFTER_S, sinceReading, stuckOf } from '../../../src/app/teach-class/stuck.ts';
import type { SeatState } from '../../../src/classroom/index.ts';
import { stateOf } from './seats.ts';

/** The verdict after a seat told these states one after another. */
function verdictAfter(states: readonly SeatState[], heldUp = false) {
  let since: ReturnType<typeof sinceReading> | null = null;
  for (const state of states) since = sinceReading(since, state);
  const last = states.at(-1);
  if (since === null || last === undefined) throw new Error('no states');
  return stuckOf(last, { since, heldUp, begunAgoS: 0 });
}

describe('who is stuck', () => {
  it('whoever asks for help is, whatever else stands', () => {
    expect(verdictAfter([stateOf({ asksHelp: true })])).toBe('asks for help');
    expect(verdictAfter([stateOf({ asksHelp: true, lockouts: 5, resets: 9 })])).toBe(
      'asks for help',
    );
  });

  it('two lockouts without a reading between are, and a reading between them is not', () => {
    expect(verdictAfter([stateOf({ lockouts: 1 }), stateOf({ lockouts: 2 })])).toBe('lockouts');
    expect(
      verdictAfter([
        stateOf({ lockouts: 1 }),
        stateOf({ lockouts: 1, readings: 1 }),
        stateOf({ lockouts: 2, readings: 1 }),
      ]),
    ).toBeNull();
    expect(
      verdictAfter([
        stateOf({ lockouts: 1, readings: 1 }),
        stateOf({ lockouts: 2, readings: 1 }),
        stateOf({ lockouts: 3, readings: 1 }),
      ]),
    ).toBe('lockouts');
  });

  it('the third reset without a reading is, the second is not yet', () => {
    expect(verdictAfter([stateOf({ resets: 2 })])).toBeNull();
    expect(verdictAfter([stateOf({ resets: 2 }), stateOf({ resets: 3 })])).toBe('resets');
  });

  it('another try begins with nothing held against it', () => {
    expect(
      verdictAfter([
        stateOf({ lockouts: 1, readings: 4 }),
        stateOf({ lockouts: 0, readings: 0 }),
        stateOf({ lockouts: 1, readings: 0 }),
      ]),
    ).toBeNull();
  });

  it('a page that looks in later does not know of lockouts before, where something was read', () => {
    expect(verdictAfter([stateOf({ lockouts: 3, readings: 2 })])).toBeNull();
    expect(verdictAfter([stateOf({ lockouts: 3, readings: 0 })])).toBe('lockouts');
  });

  it('nothing done for long is, but not while the instructor holds the run up', () => {
    const idle = stateOf({ last: { type: 'reset', what: '', agoS: STUCK_AFTER_S } });
    expect(verdictAfter([idle])).toBe('no act');
    expect(verdictAfter([idle], true)).toBeNull();
    const since = sinceReading(null, stateOf({}));
    const around = { since, heldUp: false };
    expect(stuckOf(stateOf({}), { ...around, begunAgoS: STUCK_AFTER_S })).toBe('no act');
    expect(stuckOf(stateOf({}), { ...around, begunAgoS: STUCK_AFTER_S - 1 })).toBeNull();
  });

  it('nobody who waits or is done is stuck, whatever the counts', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('waiting' as const, 'done' as const),
        fc.nat(20),
        fc.nat(20),
        fc.boolean(),
        (phase, lockouts, resets, asksHelp) => {
          const verdict = verdictAfter([
            stateOf({}),
            stateOf({ phase, lockouts, resets, asksHelp }),
          ]);
          expect(verdict).toBeNull();
        },
      ),
      { seed: 7 },
    );
  });
});
