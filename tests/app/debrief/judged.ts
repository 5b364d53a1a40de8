import type { JudgedDecision, Reasoning } from '../../../src/diagnosis/index.ts';

/** A decision with nothing against it, but for what a test says of it. */
export function judged(what: Partial<JudgedDecision>): JudgedDecision {
  return {
    t: 500,
    kind: 'check',
    what: 'manometer|inlet',
    way: '',
    moments: [],
    bits: 1,
    minutes: 4,
    regretMinutes: 0,
    redundant: false,
    premature: false,
    share: null,
    refutedBy: [],
    told: [],
    before: [],
    after: [],
    best: null,
    ...what,
  };
}

export function reasoningOf(what: Partial<Reasoning>): Reasoning {
  return {
    decisions: [],
    found: 'by readings',
    path: { score: 1, bestMinutes: 10, regretMinutes: 0, redundant: 0, premature: 0 },
    claims: [],
    calibration: { rankings: 1, firstShare: 0.8, distance: 0 },
    board: [],
    next: [],
    moments: [],
    ideal: [],
    alike: [],
    ...what,
  };
}
