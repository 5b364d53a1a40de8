import { describe, expect, it } from 'vitest';
import { createRun, PROOF_WORDS } from '../../../src/engine/index.ts';
import { en } from '../../../src/i18n/en/index.ts';
import { addMessages } from '../../../src/i18n/index.ts';
import type { NumberItem, Term } from '../../../src/quiz/index.ts';
import {
  namesOfPlant,
  startWords,
  statementWords,
  toldWords,
  wordItem,
} from '../../../src/wording/index.ts';
import { shippedSetup } from '../../support/library.ts';

addMessages(en);

const setup = shippedSetup('healthy-start');
const names = namesOfPlant(setup.plant, createRun(setup).channels);
const TOLD = {
  check: 'manometer|regulated|',
  moment: 'main trial',
  aspect: 'value',
  word: 'low',
  value: 1230,
};

function said(text: Term): string {
  return statementWords({ code: 'quiz.as-written', with: { text } }, names);
}

describe('a statement in words', () => {
  const TERMS: readonly [string, Term][] = [
    ['as it stands', 'as it stands'],
    ['\u22123.5', -3.5],
    ['Strainer blocked', { is: 'cause', fault: 'strainer blocked' }],
    ['Nothing is wrong', { is: 'cause', fault: null }],
    ['Low-gas switch', { is: 'part', part: 'low-gas switch' }],
    ['Low (12.3 mbar)', { is: 'said', told: TOLD }],
    ['12.3 mbar', { is: 'amount', value: 1230, of: 'gas pressure' }],
    ['Valve proving, fill', { is: 'step', step: 'valve proving: fill' }],
    ['Gas pressure low', { is: 'word', of: 'cause', word: 'gas pressure low' }],
    ['Air switch open', { is: 'word', of: 'input', word: 'airProved', suffix: '.not' }],
    ['Gas behind the regulator', { is: 'place', place: 'regulated', tool: 'manometer' }],
    ['Joint behind the regulator', { is: 'place', place: 'regulated', tool: 'leak spray' }],
  ];

  it.each(TERMS)('says %s', (words, term) => {
    const whole = said(term);
    expect(whole.charAt(0).toLowerCase() + whole.slice(1)).toBe(
      words.charAt(0).toLowerCase() + words.slice(1),
    );
    expect(whole).not.toMatch(/^[a-z]/);
  });

  it('says a reading as everywhere else, and a check with its moment', () => {
    expect(said({ is: 'reading', told: TOLD })).toBe(toldWords(names, TOLD));
    const check = { is: 'check', check: TOLD.check, moment: 'purge' } as const;
    expect(said(check)).toBe('Manometer: gas behind the regulator, during purge');
    expect(said({ ...check, moment: 'standing' })).toBe('Manometer: gas behind the regulator');
  });

  it('has several things in a row, each small within the sentence', () => {
    const list: Term = {
      is: 'list',
      of: [{ is: 'word', of: 'cause', word: 'gas pressure low' }, 'b', { is: 'part', part: 'c' }],
    };
    expect(said(list)).toBe('Gas pressure low, b and c');
    const within: Term = {
      is: 'statement',
      statement: { code: 'quiz.as-written', with: { text: list } },
    };
    expect(said({ is: 'list', of: ['first', within] })).toBe('First and gas pressure low, b and c');
  });
});

describe('a start in words', () => {
  it('counts from the call for heat and ends in service', () => {
    const run = createRun(setup);
    run.advanceTo(300);
    const lines = startWords(run.events());
    expect(lines[0]).toBe('0:00 heat called for');
    expect(lines).toContain('1:01 purge; air changes counted at 2:19');
    expect(lines).toContain('2:45 pilot trial; flame seen at 2:46');
    expect(lines.at(-1)).toBe('3:33 released to modulation: in service');
  });

  it('ends in the lockout with its cause, or says that the record ends', () => {
    const run = createRun(shippedSetup('jammed-damper'));
    run.advanceTo(150);
    expect(startWords(run.events(), 150).at(-1)).toBe(
      '1:29 lockout in drive to purge: purge position not proved',
    );
    expect(startWords(run.events(), 65).at(-1)).toBe(
      '0:59 the record ends, still in drive to purge',
    );
  });

  it('names no fault, and has words for all that the controller can be told', () => {
    const run = createRun(shippedSetup('dirty-lens'));
    run.advanceTo(300);
    expect(startWords(run.events()).join(' ')).not.toContain('lens');
    for (const what of Object.values(PROOF_WORDS)) {
      const lines = startWords([
        { t: 0, type: 'step', step: 'valve proving: fill' },
        { t: 1, type: 'lost', what },
      ]);
      expect(lines.join(' ')).not.toMatch(/undefined|[a-z][A-Z]/);
    }
  });
});

it('a number is asked for in the reader’s unit, with what counts as right', () => {
  const text = { code: 'quiz.as-written', with: { text: 'A line of it.' } };
  const item: NumberItem = {
    id: 'calculation/dairy/1',
    kind: 'calculation',
    plant: 'dairy',
    topic: 't',
    skills: ['fuel'],
    difficulty: 0,
    stem: { tells: [text], asks: text, readings: [TOLD], shows: { chart: false, trends: [] } },
    run: null,
    caution: null,
    answer: 'number',
    key: 1230,
    tolerance: 0.01,
    of: 'gas pressure',
    working: [text, text],
    mistakes: [{ value: 2460, why: text }],
  };
  const worded = wordItem(item, names);
  if (worded.answer !== 'number') throw new Error('no number');
  expect(worded).toMatchObject({
    unit: 'mbar',
    said: '12.3 mbar',
    working: ['A line of it.', 'A line of it.'],
  });
  expect(worded.from).toBeCloseTo(12.177, 6);
  expect(worded.to).toBeCloseTo(12.423, 6);
  expect(worded.mistakes).toEqual([{ said: '24.6 mbar', why: 'A line of it.' }]);
  expect(worded.readings).toEqual([toldWords(names, TOLD)]);
  expect(wordItem(item, names, 'US')).toMatchObject({ unit: 'inWC' });
});
