import { describe, expect, it } from 'vitest';
import { takeAway } from '../../../src/app/debrief/take-away.ts';
import type { Words } from '../../../src/app/debrief/use-words.ts';
import type { Verdict } from '../../../src/app/session/work-protocol.ts';
import type { Advice, Told } from '../../../src/diagnosis/index.ts';
import { en } from '../../../src/i18n/en/index.ts';
import { addMessages } from '../../../src/i18n/index.ts';
import { judged, reasoningOf } from './judged.ts';

addMessages(en);

/** Names as they are; how they are put into words is tested elsewhere. */
const WORDS: Words = {
  check: (check) => check,
  moment: (moment) => moment,
  checkAt: (check, moment) => `${check} ${moment}`,
  told: ({ check, word }) => `${check} ${word}`,
  answer: ({ word }) => word,
  part: (part) => part,
  way: (way) => way,
  decision: ({ what }) => what,
};
const SAFE: Pick<Verdict, 'conduct' | 'proof'> = {
  conduct: [],
  proof: { items: [], proved: true },
};
const UNSAFE: Pick<Verdict, 'conduct' | 'proof'> = {
  ...SAFE,
  conduct: [
    {
      rule: 'SC-1',
      t: 500,
      what: { code: 'conduct.minutes.plant' },
      state: { code: 'conduct.minutes.plant' },
      severity: 'unsafe',
    },
  ],
};
const BEST: Advice = { check: 'manometer', moment: 'main trial', bits: 1, minutes: 5, splits: [] };
const EARLY = judged({
  kind: 'work',
  what: 'regulator',
  way: 'replace',
  premature: true,
  share: 0.2,
  regretMinutes: 30,
  best: BEST,
});
const CLEARED: Told = {
  check: 'manometer',
  moment: 'main trial',
  aspect: 'value',
  value: 20000,
  word: 'in band',
};

describe('what to take away', () => {
  it('begins with what was unsafe, whatever else there is', () => {
    const [first] = takeAway(reasoningOf({ decisions: [EARLY] }), UNSAFE, WORDS);
    expect(first).toMatch(/unsafe/);
  });

  it('names the reading that was to come before a part was worked on', () => {
    const [first] = takeAway(reasoningOf({ decisions: [EARLY] }), SAFE, WORDS);
    expect(first).toMatch(/^Before you replace the regulator.*manometer main trial/);
  });

  it('takes the dearest of several works on guesses', () => {
    const cheap = { ...EARLY, what: 'switch', regretMinutes: 3 };
    const [first] = takeAway(reasoningOf({ decisions: [cheap, EARLY] }), SAFE, WORDS);
    expect(first).toContain('regulator');
  });

  it('names the reading that had cleared a suspect', () => {
    const suspect = judged({ kind: 'suspect', what: 'supply', refutedBy: [CLEARED] });
    expect(takeAway(reasoningOf({ decisions: [suspect] }), SAFE, WORDS).join()).toMatch(
      /manometer in band.*supply/,
    );
  });

  it('is three sentences at most', () => {
    const decisions = [
      EARLY,
      judged({ kind: 'suspect', what: 'supply', refutedBy: [CLEARED] }),
      judged({ redundant: true, regretMinutes: 6, best: BEST }),
    ];
    expect(takeAway(reasoningOf({ decisions }), UNSAFE, WORDS)).toHaveLength(3);
  });

  it('praises only who found it by readings and safely', () => {
    expect(takeAway(reasoningOf({}), SAFE, WORDS).join()).toMatch(/led you to the cause/);
    expect(takeAway(reasoningOf({}), UNSAFE, WORDS).join()).not.toMatch(/led you/);
    const lucky = reasoningOf({ found: 'by trying parts' });
    expect(takeAway(lucky, SAFE, WORDS).join()).not.toMatch(/led you/);
  });

  it('speaks of proof and conduct alone where decisions are not weighed', () => {
    const open = { items: [{ id: 'leak test', met: false, t: null, why: { code: 'x' } }] };
    const verdict = { ...SAFE, proof: { ...open, proved: false } } as typeof SAFE;
    expect(takeAway(null, verdict, WORDS)).toEqual([
      'The work is done when it is proved. Still open: leak test after work on the gas train.',
    ]);
  });
});
