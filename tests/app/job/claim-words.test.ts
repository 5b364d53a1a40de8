import { describe, expect, it } from 'vitest';
import { NO_FAULT } from '../../../machines/job/index.ts';
import { claimWords, missedWords } from '../../../src/app/job/claim-words.ts';
import { mendWords } from '../../../src/app/job/mend-words.ts';
import { groupMinutes } from '../../../src/app/job/minutes-groups.ts';
import { job } from '../../../src/i18n/en/job.ts';
import { addMessages } from '../../../src/i18n/index.ts';

addMessages(job);

const STRAINER = {
  id: 'strainer blocked',
  mechanism: 'dirt',
  component: 'strainer',
  repair: 'clean it',
  severity: 1,
};
const claim = {
  part: 'strainer',
  right: true,
  supported: true,
  another: false,
  fault: STRAINER.id as string | null,
};
const wrong = { ...claim, right: false, fault: null };

describe('what is said of a claim', () => {
  it('right without a reading is luck', () => {
    const [said, ...more] = claimWords({ ...claim, supported: false }, 0, [STRAINER]);
    expect(said).toContain('lucky guess');
    expect(more).toEqual([]);
  });
  it('right with readings counts them', () => {
    expect(claimWords(claim, 3, [STRAINER])).toEqual(['You had 3 readings to show for it.']);
    expect(claimWords(claim, 1, [STRAINER]).join()).toContain('one reading');
  });
  it('right by another name says of what the fault was', () => {
    expect(claimWords({ ...claim, another: true }, 2, [STRAINER])[0]).toContain('of the strainer');
    const accepted = { ...claim, another: true, fault: 'gas regulator creeps' };
    expect(claimWords(accepted, 2, [STRAINER])[0]).toContain('gas regulator creeps');
  });
  it('wrong says on which side it was: no fault there, no fault at all, or a fault after all', () => {
    const said = [
      claimWords(wrong, 1, [STRAINER])[0],
      claimWords(wrong, 1, [])[0],
      claimWords({ ...wrong, part: NO_FAULT }, 1, [STRAINER])[0],
    ];
    expect(new Set(said).size).toBe(3);
  });
  it('names what nobody found', () => {
    expect(missedWords('strainer')).toContain('strainer');
    expect(missedWords(null)).toContain('sound');
  });
});

describe('what puts right what was used wrongly', () => {
  it('is said as an act', () => {
    expect(mendWords({ at: 1, do: 'firing', mode: 'automatic', rate: 0 })).toBe(
      'set the firing to automatic',
    );
    expect(mendWords({ at: 1, do: 'emergency-stop', pressed: false })).toBe(
      'release the emergency stop',
    );
  });
});

describe('minutes by what they went to', () => {
  it('leave nothing out: the groups add up to the total', () => {
    const line = (code: string, minutes: number, cost = 0) => ({
      t: 0,
      what: { code: `conduct.minutes.${code}` },
      minutes,
      cost,
    });
    const lines = [
      line('plant', 7),
      line('tool-range', 2),
      line('repair', 40, 3),
      line('lock', 2),
      line('something new', 1),
    ];
    const groups = groupMinutes({ total: 52, lines });
    expect(groups.map(({ group }) => group)).toEqual(['plant', 'finding', 'mending', 'hands']);
    expect(groups.reduce((sum, { minutes }) => sum + minutes, 0)).toBe(52);
    expect(groups.reduce((sum, { cost }) => sum + cost, 0)).toBe(3);
  });
});
