/** Reasoning made by hand, of which a test sets what it is about. */
import { INPUTS } from '../../../machines/burner/index.ts';
import { testPointsOf } from '../../../src/bench/index.ts';
import type { Advice, JudgedDecision, Reasoning, Told } from '../../../src/diagnosis/index.ts';
import { createRun } from '../../../src/engine/index.ts';
import type { Names } from '../../../src/wording/index.ts';
import { shippedSetup } from '../../support/library.ts';

export function namesOf(scenario: string): Names {
  const { setup, channels } = createRun(shippedSetup(scenario));
  return {
    testPoints: [...testPointsOf(setup.plant)],
    inputs: [...INPUTS],
    channels: channels.map((channel) => ({ ...channel })),
  };
}

export const LOW_GAS: Told = {
  check: 'manometer|regulated',
  moment: 'main trial',
  aspect: 'value',
  value: 4000,
  word: 'low',
};

export const ADVICE: Advice = {
  check: 'manometer|inlet',
  moment: 'main trial',
  bits: 0.9,
  minutes: 5.2,
  splits: [
    { part: 'strainer', aspect: 'value', word: 'low' },
    { part: 'gas regulator', aspect: 'value', word: 'in band' },
    { part: 'upstream valve', aspect: 'value', word: 'in band' },
  ],
};

export function decision(of: Partial<JudgedDecision>): JudgedDecision {
  return {
    t: 10,
    kind: 'check',
    what: LOW_GAS.check,
    way: '',
    moments: ['main trial'],
    bits: 0.8,
    minutes: 3,
    regretMinutes: 0,
    redundant: false,
    premature: false,
    share: null,
    refutedBy: [],
    told: [LOW_GAS],
    before: [
      { part: 'gas regulator', share: 0.4 },
      { part: 'strainer', share: 0.3 },
    ],
    after: [
      { part: 'strainer', share: 0.7 },
      { part: 'gas regulator', share: 0.1 },
    ],
    best: null,
    ...of,
  };
}

export function reasoning(of: Partial<Reasoning>): Reasoning {
  return {
    decisions: [decision({})],
    found: 'not found',
    path: { score: 1, bestMinutes: 10, regretMinutes: 0, redundant: 0, premature: 0 },
    claims: [],
    calibration: null,
    board: [],
    next: [ADVICE],
    moments: [],
    ideal: [],
    alike: [],
    ...of,
  };
}
