import { describe, expect, it } from 'vitest';
import { decisionsSince, figuresOf, type Way } from '../../../src/app/debrief/compare.ts';
import { judged, reasoningOf } from './judged.ts';

const MINUTES: Way['verdict']['minutes'] = {
  total: 42,
  lines: [
    { t: 120, what: { code: 'conduct.minutes.plant' }, minutes: 20, cost: 0 },
    { t: 150, what: { code: 'conduct.minutes.tool' }, minutes: 4, cost: 0 },
    { t: 420, what: { code: 'conduct.minutes.look' }, minutes: 3, cost: 0 },
    { t: 600, what: { code: 'conduct.minutes.repair' }, minutes: 15, cost: 8 },
  ],
};
const WAY: Way = {
  verdict: {
    minutes: MINUTES,
    conduct: [],
    claims: [{ part: 'damper', right: true, supported: true, another: false, fault: 'x' }],
  },
  reasoning: reasoningOf({}),
  claimedAtS: 420,
};

describe('ways side by side', () => {
  it('count to the last claim the plant’s own minutes till then and what was charged by then', () => {
    expect(figuresOf(WAY).minutesToClaim).toBeCloseTo(5 + 4 + 3, 9);
    expect(figuresOf(WAY).minutes).toBe(42);
  });

  it('say nothing of a claim where none was made, and nothing of decisions where none are weighed', () => {
    const figures = figuresOf({ ...WAY, reasoning: null, claimedAtS: null });
    expect(figures).toMatchObject({ minutesToClaim: null, reasoned: null });
  });

  it('show what was decided from where they part, the first of it included', () => {
    const decisions = [
      judged({ t: 120, kind: 'arrive' }),
      judged({ t: 200 }),
      judged({ t: 300, kind: 'work' }),
    ];
    const since = decisionsSince(reasoningOf({ decisions }), 200);
    expect(since.map(({ t }) => t)).toEqual([200, 300]);
  });
});
