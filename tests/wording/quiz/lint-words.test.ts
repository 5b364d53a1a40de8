import { describe, expect, it } from 'vitest';
import { en } from '../../../src/i18n/en/index.ts';
import { addMessages } from '../../../src/i18n/index.ts';
import {
  LINT_RULES,
  type LintRule,
  lintWords,
  type WordedChoice,
  type WordedItem,
} from '../../../src/quiz/index.ts';
import { LINT_VOCABULARY, lintFindingWords } from '../../../src/wording/index.ts';

addMessages(en);

const option = (text: string, why = 'The pressure behind it was as on a sound plant.') => ({
  text,
  why: [why],
});
const SOUND: WordedChoice = {
  id: 'cause/dairy/7',
  kind: 'cause',
  topic: 'cause/strainer',
  caution: null,
  tells: ['Dairy, boiler 2: a start has locked out in pilot trial.'],
  start: ['0:00 heat called for'],
  readings: [],
  asks: 'What is wrong with the burner?',
  answer: 'choice',
  options: [
    option('Strainer blocked'),
    option('Regulator droops'),
    option('Pilot orifice blocked'),
  ],
  key: 0,
};
const asking = (asks: string): WordedItem => ({ ...SOUND, asks });
const offering = (...options: WordedChoice['options']): WordedItem => ({ ...SOUND, options });
const [first, second, third] = SOUND.options as [
  WordedChoice['options'][number],
  WordedChoice['options'][number],
  WordedChoice['options'][number],
];

const PLANTED: readonly [LintRule, string, WordedItem][] = [
  ...[
    'Which is not the cause?',
    'Which of these never helps?',
    'All fit, except which?',
    'Which is least likely?',
    'Which one is incorrect?',
    'Which reading doesn’t fit?',
  ].map((asks): [LintRule, string, WordedItem] => ['negative question', 'asks', asking(asks)]),
  ['one question', 'asks', asking('What is wrong? And what comes next?')],
  ['one question', 'asks', asking('Name the cause.')],
  ['one question', 'tells.0', { ...SOUND, tells: ['Why did it lock out?'] }],
  ['all or none of the above', 'options.2', offering(first, second, option('None of the above.'))],
  ['all or none of the above', 'options.2', offering(first, second, option('All of these'))],
  ['option repeated', 'options.2', offering(first, second, option('strainer  blocked!'))],
  [
    'alike in length',
    'options',
    offering(
      first,
      second,
      option('The damper of the air, which has slipped on its shaft and stands ajar'),
    ),
  ],
  [
    'reason says nothing',
    'options.1.why',
    offering(first, option('Regulator droops', 'This is the wrong answer.'), third),
  ],
  ['gap in the words', 'tells.0', { ...SOUND, tells: ['{plant}: a start has locked out.'] }],
  ['gap in the words', 'start.0', { ...SOUND, start: [' '] }],
  [
    'gap in the words',
    'options.0.why.0',
    offering(option('Strainer blocked', 'It would have read NaN mbar there then.'), second, third),
  ],
];

describe('lint of the words of an item', () => {
  it('finds nothing where they are sound', () => {
    expect(lintWords(SOUND, LINT_VOCABULARY)).toEqual([]);
  });

  it.each(PLANTED)('finds "%s" at %s', (rule, where, item) => {
    expect(lintWords(item, LINT_VOCABULARY)).toEqual([{ rule, where }]);
  });

  it('reads the steps of an order and the working of a number as well', () => {
    const { options, key: _, ...head } = SOUND;
    expect(
      lintWords(
        { ...head, answer: 'order', steps: [first, second, third, first], key: [0, 1, 2, 3] },
        LINT_VOCABULARY,
      ),
    ).toEqual([{ rule: 'option repeated', where: 'steps.3' }]);
    const number = { key: 3, from: 2.9, to: 3.1, unit: 's', said: '3.0 s', mistakes: [] };
    expect(
      lintWords({ ...head, answer: 'number', ...number, working: ['1 + {two}'] }, LINT_VOCABULARY),
    ).toEqual([{ rule: 'gap in the words', where: 'working.0' }]);
    expect(options).toHaveLength(3);
  });

  it('has a sentence for each rule, which says where', () => {
    for (const rule of LINT_RULES) {
      expect(lintFindingWords({ rule, where: 'options.1' })).toMatch(/^options\.1: .{20,}[.]$/);
    }
  });
});
