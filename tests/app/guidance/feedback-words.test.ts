import { describe, expect, it } from 'vitest';
import { feedbackWords, soFarWords } from '../../../src/app/guidance/feedback-words.ts';
import type { JudgedDecision } from '../../../src/diagnosis/index.ts';
import { en } from '../../../src/i18n/en/index.ts';
import { addMessages } from '../../../src/i18n/index.ts';
import { ADVICE, decision, LOW_GAS, namesOf } from './toy-reasoning.ts';

addMessages(en);
const names = namesOf('drive-current-limited');
const said = (of: Partial<JudgedDecision>, suspects: readonly string[] = []) => {
  const { about, said: sentences } = feedbackWords(names, decision(of), suspects, 'SI');
  return `${about}. ${sentences.join(' ')}`;
};

describe('feedback on a check', () => {
  it('says what it was worth, what it told, and that the lead has changed', () => {
    expect(said({})).toBe(
      'Manometer: gas behind the regulator. That could tell much. It told: during main trial – low (40.0 mbar). Something else is the likeliest now.',
    );
  });

  it('never names a part that the learner has not named', () => {
    const words = said({ regretMinutes: 5, best: ADVICE });
    expect(words).not.toMatch(/strainer|gas regulator/);
    expect(said({}, ['strainer'])).toContain('Of yours, gained: strainer.');
    expect(said({}, ['strainer'])).not.toContain('gas regulator');
  });

  it('grades its worth by what could be expected, not by what luck brought', () => {
    expect(said({ bits: 0.1 })).toContain('a little');
    expect(said({ bits: 0.01, redundant: true })).toContain('nothing new.');
    expect(said({ bits: 0.01, redundant: false })).toContain('right to do all the same');
  });

  it('says that all was sound only where something could have been otherwise', () => {
    expect(said({ told: [] })).toContain('as on a sound plant');
    expect(said({ told: [], bits: 0, redundant: true })).not.toContain('sound');
    expect(said({ told: [], moments: [] })).toContain('Nothing has been read');
  });

  it('says that there was something better, but not what', () => {
    const words = said({ regretMinutes: 5, best: ADVICE });
    expect(words).toContain('Something else would have told more');
    expect(words).not.toContain('strainer');
  });

  it('counts what it does not write out', () => {
    const told = ['purge', 'pilot trial', 'main trial', 'main proving'].map((moment) => ({
      ...LOW_GAS,
      moment,
    }));
    expect(said({ told })).toContain('and 2 more');
  });
});

describe('feedback on what is no check', () => {
  it('tells on arriving what the panel shows, the lockout before its step', () => {
    const told = [
      { check: 'history|', moment: 'lockout', aspect: 'step', value: '', word: 'main trial' },
      { check: 'history|', moment: 'lockout', aspect: 'cause', value: '', word: 'main not lit' },
    ];
    expect(said({ kind: 'arrive', what: '', bits: null, told })).toContain(
      'main flame not lit, in the step main trial',
    );
  });

  it('says of work whether readings spoke for it, and which had spoken against', () => {
    const early = { kind: 'work' as const, what: 'scanner', way: 'replace', bits: null };
    expect(said({ ...early, premature: true, refutedBy: [LOW_GAS] })).toMatch(
      /scanner.*replace.*not speak.*ruled out: scanner, by manometer/,
    );
    expect(said(early)).toContain('Readings spoke for this work');
  });

  it('says of a claim whether readings carry it', () => {
    const claim = { kind: 'claim' as const, what: 'nothing', bits: null };
    expect(said({ ...claim, premature: true })).toMatch(/nothing wrong.*do not carry/);
    expect(said(claim)).toContain('Readings carry this');
  });

  it('has words for every kind of decision', () => {
    const kinds = ['arrive', 'check', 'watch', 'ask', 'work', 'suspect', 'claim', 'withdraw'];
    const all = kinds.map((kind) =>
      said({ kind: kind as JudgedDecision['kind'], what: 'what happened', way: 'adjust' }),
    );
    expect(new Set(all).size).toBe(kinds.length);
    for (const words of all) expect(words).not.toMatch(/undefined|\{|guide\./);
  });
});

describe('how it has gone so far', () => {
  it('counts checks that could tell nothing new, and what came ahead of the readings', () => {
    const decisions = [
      decision({ kind: 'arrive' }),
      decision({}),
      decision({ redundant: true }),
      decision({ kind: 'work', premature: true }),
    ];
    expect(soFarWords({ decisions })).toMatch(/so far: 2\..*nothing new: 1\..*readings: 1\./);
  });
  it('is nothing before anything was done', () => {
    expect(soFarWords({ decisions: [decision({ kind: 'arrive' })] })).toBe('');
  });
});
