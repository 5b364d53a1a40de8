import fc from 'fast-check';
import { SKILLS } from '../../../machines/job/index.ts';
import type { KeptResult } from '../../../src/app/learner/result-record.ts';
import { CONDUCT_WORDS, RESULT_KINDS } from '../../../src/diagnosis/mastery/index.ts';

const instant = fc
  .integer({ min: 0, max: 300 })
  .map((hours) => new Date(Date.UTC(2026, 0, 1) + hours * 3_600_000).toISOString());
/** A file knows no minus nought. */
const within = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => value + 0);
const share = within(0, 1);

/** Few names and few times, so that the same attempt comes up again. */
export const anyKept: fc.Arbitrary<KeptResult> = fc.record({
  kind: fc.constantFrom(...RESULT_KINDS),
  id: fc.constantFrom('a', 'b'),
  startedISO: instant,
  atISO: instant,
  skills: fc.subarray([...SKILLS], { minLength: 1, maxLength: 4 }),
  difficulty: within(-6, 6),
  guidance: fc.constantFrom('guided', 'practice', 'assessment', null),
  hints: fc.integer({ min: 0, max: 20 }),
  outcome: share,
  conduct: fc.constantFrom(...CONDUCT_WORDS, null),
  parts: fc.record({
    found: fc.constantFrom('by readings', 'by trying parts', 'not found', null),
    pathScore: fc.option(share),
  }),
});

export const JOB_RESULT: KeptResult = {
  kind: 'job',
  id: 'laundry-evening-wash',
  startedISO: '2026-05-04T09:00:00.000Z',
  atISO: '2026-05-04T10:00:00.000Z',
  skills: ['fuel', 'wiring'],
  difficulty: -2,
  guidance: 'practice',
  hints: 0,
  outcome: 0.9,
  conduct: 'clean',
  parts: { found: 'by readings', pathScore: 0.8 },
};
