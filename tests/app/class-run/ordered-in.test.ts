import { describe, expect, it } from 'vitest';
import type { ClassEntry } from '../../../machines/class/index.ts';
import { orderedIn } from '../../../src/app/class-run/index.ts';

const BELT = { type: 'insert-fault', fault: 'slipping belt', severity: 0.5 };
const LENS = { type: 'insert-fault', fault: 'lens dirty', severity: 0.4 };
const entries: readonly ClassEntry[] = [
  { n: 3, atMs: 0, type: 'do', to: 'all', acts: [BELT] },
  { n: 4, atMs: 0, type: 'do', to: { seat: 2 }, acts: [LENS] },
  { n: 5, atMs: 0, type: 'when', id: 'w', to: 'all', step: 'purge', acts: [BELT, LENS] },
  { n: 9, atMs: 0, type: 'do', to: 'all', acts: [LENS] },
];
const log = [
  { t: 1, type: 'call-for-heat', on: true },
  { t: 12, severity: 0.5, fault: 'slipping belt', type: 'insert-fault' },
  { t: 40, ...BELT },
  { t: 40, ...LENS },
  { t: 50, ...LENS },
];

describe('what of a log was ordered', () => {
  it('is found again by the entries, each act once, the earliest first', () => {
    expect(orderedIn(log, entries, 1, 8)).toEqual([
      { n: 3, act: 0, atS: 12 },
      { n: 5, act: 0, atS: 40 },
      { n: 5, act: 1, atS: 40 },
    ]);
  });

  it('leaves out what waits, what came later and what was for another seat', () => {
    expect(orderedIn(log.slice(0, 2), entries, 1, 8)).toEqual([{ n: 3, act: 0, atS: 12 }]);
    expect(orderedIn(log, entries, 1, 2)).toEqual([]);
  });
});
