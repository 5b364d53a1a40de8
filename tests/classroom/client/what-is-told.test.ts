import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaOf } from '../../../src/classroom/client/work-delta.ts';
import { type WorkRecord, withDelta } from '../../../src/classroom/index.ts';

const act = fc.record({
  t: fc.integer({ min: 0, max: 3 }),
  type: fc.constantFrom('check', 'repair'),
});
const record = (rev: number): fc.Arbitrary<WorkRecord> =>
  fc.record({
    attempt: fc.integer({ min: 1, max: 2 }),
    rev: fc.constant(rev),
    headS: fc.constant(4),
    hash: fc.constant(null),
    setupHash: fc.constant('of the setup'),
    startedMs: fc.constant(0),
    applied: fc.constant(0),
    acts: fc.array(act, { maxLength: 6 }),
    desk: fc.array(act, { maxLength: 3 }),
  });

describe('what is told of a piece of work', () => {
  it('makes the same of it whichever of the possible states the server holds', () => {
    fc.assert(
      fc.property(
        record(9).map((one) => ({ ...one, attempt: 2 })),
        fc.array(fc.option(record(3)), { minLength: 1, maxLength: 4 }),
        fc.nat(),
        (work, mayHave, which) => {
          const held = mayHave[which % mayHave.length] ?? null;
          const taken = withDelta(held, deltaOf(work, mayHave));
          expect(taken).toEqual({ ok: true, fresh: true, record: work });
        },
      ),
      { seed: 5, numRuns: 2000 },
    );
  });

  it('is everything where nothing is known of the server', () => {
    fc.assert(
      fc.property(record(9), (work) => {
        expect(deltaOf(work, null)).toMatchObject({ keepActs: 0, acts: work.acts, keepDesk: 0 });
      }),
      { seed: 6 },
    );
  });

  it('is nothing of what the server has, though its database puts keys in another order', () => {
    const held = { acts: [{ t: 1, type: 'check', what: 'volts' }], desk: [] };
    const work = { acts: [{ what: 'volts', type: 'check', t: 1 }], desk: [] };
    const rest = {
      attempt: 1,
      rev: 2,
      headS: 1,
      hash: null,
      setupHash: '',
      startedMs: 0,
      applied: 0,
    };
    expect(deltaOf({ ...rest, ...work }, [{ ...rest, ...held }])).toMatchObject({
      keepActs: 1,
      acts: [],
    });
  });
});
