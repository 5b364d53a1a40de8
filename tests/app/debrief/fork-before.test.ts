import { describe, expect, it } from 'vitest';
import type { DeskEntry } from '../../../machines/job/index.ts';
import { forkBefore } from '../../../src/app/debrief/fork-before.ts';

const DESK: readonly DeskEntry[] = [
  { t: 180, type: 'arrive', tools: [] },
  { t: 182, type: 'begin' },
  { t: 190, type: 'ask', topic: 'habits' },
  { t: 190, type: 'suspect', ranked: ['damper', 'fan belt'] },
  { t: 190, type: 'read sheet' },
  { t: 200, type: 'claim', part: 'damper', why: [], mechanism: '' },
  { t: 200, type: 'withdraw' },
  { t: 300, type: 'close' },
];

describe('a branch leaves the work', () => {
  it.each([
    ['a question', { t: 190, kind: 'ask', what: 'habits' }, 2],
    ['a ranking of suspects', { t: 190, kind: 'suspect', what: 'damper' }, 3],
    ['the sheet that was read', { t: 190, kind: 'check', what: 'commissioning sheet|' }, 4],
    ['a claim', { t: 200, kind: 'claim', what: 'damper' }, 5],
    ['its withdrawal', { t: 200, kind: 'withdraw', what: '' }, 6],
  ] as const)(
    'before %s that was written at the same moment as others',
    (_what, decision, kept) => {
      expect(forkBefore(decision, DESK)).toEqual({ t: decision.t, entries: kept });
    },
  );

  it('before an act, with what was written up to its moment', () => {
    expect(forkBefore({ t: 200, kind: 'work', what: 'damper' }, DESK).entries).toBe(7);
    expect(forkBefore({ t: 195, kind: 'check', what: 'manometer|inlet' }, DESK).entries).toBe(5);
  });
});
