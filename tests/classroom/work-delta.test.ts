import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  MOST_ACTS,
  type WorkDelta,
  type WorkRecord,
  withDelta,
} from '../../src/classroom/index.ts';

const SEED = 5;

function recordOf(attempt: number, rev: number, acts: number, desk: number): WorkRecord {
  return {
    attempt,
    rev,
    headS: rev,
    hash: null,
    setupHash: 'a',
    startedMs: 0,
    applied: 0,
    acts: Array.from({ length: acts }, (_, k) => ({ t: k, type: 'reset', rev })),
    desk: Array.from({ length: desk }, (_, k) => ({ type: 'note', t: k, rev })),
  };
}
function deltaOf(record: WorkRecord, keepActs: number, keepDesk: number): WorkDelta {
  const { acts, desk, ...head } = record;
  return {
    ...head,
    keepActs,
    acts: acts.slice(keepActs),
    keepDesk,
    desk: desk.slice(keepDesk),
  };
}

describe('what is told of a work', () => {
  it('ends at what was told last, whatever is doubled, late or out of order on the way', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.record({ cutTo: fc.double({ min: 0, max: 1, noNaN: true }), more: fc.nat(4) }),
          { minLength: 1, maxLength: 12 },
        ),
        fc.array(fc.nat(), { maxLength: 30 }),
        (changes, order) => {
          const states: WorkRecord[] = [];
          const deltas: WorkDelta[] = [];
          let acts: WorkRecord['acts'] = [];
          changes.forEach(({ cutTo, more }, k) => {
            const kept = Math.floor(cutTo * acts.length);
            const added = Array.from({ length: more }, (_, j) => ({ t: j, type: `act ${k}` }));
            acts = [...acts.slice(0, kept), ...added];
            const state = { ...recordOf(1, k + 1, 0, 0), acts };
            deltas.push(deltaOf(state, kept, 0));
            states.push(state);
          });
          let held: WorkRecord | null = null;
          const take = (delta: WorkDelta) => {
            const taken = withDelta(held, delta);
            if (taken.ok) held = taken.record;
            return taken;
          };
          for (const place of order) take(deltas[place % deltas.length] as WorkDelta);
          // The page tells the last state until it is taken, from where the other end says it stands.
          const last = states.at(-1) as WorkRecord;
          take({ ...deltaOf(last, 0, 0), rev: last.rev + 1 });
          expect((held as WorkRecord | null)?.acts).toEqual(last.acts);
        },
      ),
      { seed: SEED, numRuns: 200 },
    );
  });

  it('leans on no more than is there, and says how much that is', () => {
    const held = recordOf(1, 1, 3, 1);
    const taken = withDelta(held, { ...deltaOf(recordOf(1, 2, 9, 1), 5, 1) });
    expect(taken).toEqual({ ok: false, haveActs: 3, haveDesk: 1 });
  });

  it('begins anew with the next try, and lets no older one come back', () => {
    const next = withDelta(recordOf(1, 9, 3, 1), deltaOf(recordOf(2, 1, 1, 0), 0, 0));
    expect(next.ok && next.record.acts).toHaveLength(1);
    const record = next.ok ? next.record : null;
    expect(withDelta(record, deltaOf(recordOf(1, 10, 4, 4), 0, 0))).toEqual({
      ok: true,
      record,
      fresh: false,
    });
  });

  it('takes nothing that grows beyond what a person does', () => {
    const held = recordOf(1, 1, MOST_ACTS, 0);
    const delta = { ...deltaOf(recordOf(1, 2, 1, 0), 0, 0), keepActs: MOST_ACTS };
    expect(withDelta(held, delta).ok).toBe(false);
  });
});
