import { describe, expect, it } from 'vitest';
import type { RunEvent } from '../../src/engine/index.ts';
import { sayMessage } from '../../src/i18n/index.ts';
import { checkExpectation, type Expectation } from '../../src/scenario/index.ts';

const steps = (...at: [number, Extract<RunEvent, { type: 'step' }>['step']][]): RunEvent[] =>
  at.map(([t, step]) => ({ t, type: 'step', step }));

const start = steps([0, 'standby'], [5, 'at-rest check'], [30, 'purge'], [90, 'pilot trial']);
const lockedOut: RunEvent[] = [
  ...start,
  { t: 100, type: 'lockout', cause: 'pilot not lit', step: 'pilot trial' },
  { t: 100, type: 'step', step: 'lockout' },
];

const KEPT: readonly [string, RunEvent[], Expectation][] = [
  ['a step reached', start, { reaches: 'purge', lockout: 'none', by: 30 }],
  [
    'steps in order, others between',
    start,
    { steps: ['standby', 'pilot trial'], lockout: 'none', by: 90 },
  ],
  ['a lockout', lockedOut, { lockout: { cause: 'pilot not lit', step: 'pilot trial' }, by: 100 }],
];
const BROKEN: readonly [string, RunEvent[], Expectation, string][] = [
  [
    'a step too late',
    start,
    { reaches: 'purge', lockout: 'none', by: 29 },
    'expected the step purge by 29 s; the last step entered by then was at-rest check',
  ],
  [
    'steps out of order',
    start,
    { steps: ['purge', 'standby'], lockout: 'none', by: 90 },
    'expected the step standby in its place by 90 s; the steps passed were standby → at-rest check → purge → pilot trial',
  ],
  [
    'a lockout where none is wanted',
    lockedOut,
    { lockout: 'none', by: 90 },
    'expected no lockout; it locked out at 100 s in pilot trial: pilot not lit',
  ],
  [
    'no lockout where one is wanted',
    start,
    { lockout: { cause: 'pilot not lit', step: 'pilot trial' }, by: 90 },
    'expected the lockout pilot not lit in pilot trial; there was none',
  ],
  [
    'another cause',
    lockedOut,
    { lockout: { cause: 'main not lit', step: 'pilot trial' }, by: 100 },
    'expected the lockout main not lit in pilot trial by 100 s; found pilot not lit in pilot trial at 100 s',
  ],
  [
    'another step',
    lockedOut,
    { lockout: { cause: 'pilot not lit', step: 'purge' }, by: 100 },
    'expected the lockout pilot not lit in purge by 100 s; found pilot not lit in pilot trial at 100 s',
  ],
  [
    'a lockout too late',
    lockedOut,
    { lockout: { cause: 'pilot not lit', step: 'pilot trial' }, by: 99 },
    'expected the lockout pilot not lit in pilot trial by 99 s; found pilot not lit in pilot trial at 100 s, too late',
  ],
];

describe('what a scenario expects of its run', () => {
  it.each(KEPT)('is kept by %s', (_title, events, expected) => {
    expect(checkExpectation(events, expected)).toEqual([]);
  });
  it.each(BROKEN)('is broken by %s', (_title, events, expected, message) => {
    expect(checkExpectation(events, expected).map(sayMessage)).toEqual([message]);
  });
});
