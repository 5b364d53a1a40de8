import { describe, expect, it } from 'vitest';
import { guidanceFor } from '../../../src/app/guidance/guidance-choice.tsx';
import { standingOf } from '../../../src/app/guidance/standing-of.ts';
import { LOW_GAS } from './toy-reasoning.ts';

const line = { part: 'strainer', speaksFor: [], speaksAgainst: [LOW_GAS] };

describe('how a suspect stands', () => {
  it('is a matter of what readings leave of it', () => {
    expect(standingOf({ ...line, share: 0.8 })).toBe('ahead');
    expect(standingOf({ ...line, share: 0.3 })).toBe('open');
    expect(standingOf({ ...line, share: 0.02 })).toBe('behind');
  });
  it('is out only where a reading has ruled it out, however little is left', () => {
    expect(standingOf({ ...line, share: 0.001 })).toBe('behind');
    expect(standingOf({ ...line, share: 0.001, ruledOut: true })).toBe('out');
  });
});

describe('the way of working that is set at first', () => {
  it('is guided on easy jobs and practice on the others', () => {
    expect([1, 2, 3, 5].map(guidanceFor)).toEqual(['guided', 'guided', 'practice', 'practice']);
  });
});
