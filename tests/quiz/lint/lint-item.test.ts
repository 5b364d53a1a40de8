import { describe, expect, it } from 'vitest';
import {
  type ChoiceItem,
  type Item,
  type ItemCard,
  keyPlacesBalanced,
  LINT_RULES,
  type LintOptions,
  type LintRule,
  lintItem,
  type NumberItem,
  type OrderItem,
  type Statement,
} from '../../../src/quiz/index.ts';

const TOLD = {
  check: 'manometer|regulated|',
  moment: 'purge',
  aspect: 'value',
  value: 900,
  word: 'low',
};

function option(fault: string, share: number) {
  return {
    says: { code: 'quiz.as-written', with: { text: { is: 'cause', fault } } } as Statement,
    why: [{ code: 'quiz.as-written', with: { text: 'The pressure was low already.' } }],
    share,
    decidedBy: TOLD,
    atS: 3,
  };
}

const HEAD = {
  topic: 'cause/gas regulator',
  skills: ['fuel'],
  difficulty: 0,
  stem: {
    tells: [{ code: 'quiz.as-written', with: { text: 'It has locked out.' } }],
    asks: { code: 'quiz.as-written', with: { text: 'What is the cause?' } },
    readings: [TOLD],
    shows: { chart: true, trends: [] },
  },
  run: null,
  caution: null,
} as const;

const CHOICE: ChoiceItem = {
  ...HEAD,
  id: 'cause/dairy/7',
  kind: 'cause',
  plant: 'dairy',
  answer: 'choice',
  options: [
    option('regulator droops', 0.95),
    option('strainer blocked', 0.02),
    option('lens dirty', 0),
  ],
  key: 0,
};
const step = (name: string) => ({
  says: { code: 'quiz.as-written', with: { text: { is: 'step', step: name } } } as Statement,
  why: [{ code: 'quiz.as-written', with: { text: 'Air comes before fuel.' } }],
  share: null,
  decidedBy: null,
  atS: null,
});
const ORDER: OrderItem = {
  ...HEAD,
  id: 'order/dairy/7',
  kind: 'order',
  plant: 'dairy',
  answer: 'order',
  steps: ['purge', 'pilot trial', 'standby', 'main trial'].map(step),
  key: [2, 0, 1, 3],
};
const NUMBER: NumberItem = {
  ...HEAD,
  id: 'calculation/dairy/7',
  kind: 'calculation',
  plant: 'dairy',
  answer: 'number',
  key: 50,
  tolerance: 0.02,
  of: 'time',
  working: [{ code: 'quiz.as-written' }, { code: 'quiz.as-written' }],
  mistakes: [{ value: 60, why: { code: 'quiz.as-written' } }],
};

const [right, near, far] = CHOICE.options as [
  ChoiceItem['options'][number],
  ChoiceItem['options'][number],
  ChoiceItem['options'][number],
];
const withOptions = (...options: ChoiceItem['options']): Item => ({ ...CHOICE, options });
const amount = (value: number): ChoiceItem['options'][number] => ({
  ...far,
  says: { code: 'quiz.as-written', with: { text: { is: 'amount', value, of: 'time' } } },
});
const words = (text: string): ChoiceItem['options'][number] => ({
  ...far,
  says: { code: 'quiz.as-written', with: { text } },
});

const PLANTED: readonly [LintRule, string, Item, LintOptions?][] = [
  ['id', 'id', { ...CHOICE, id: 'cause/laundry/7' }],
  ['id', 'id', { ...CHOICE, id: 'where/dairy/7' }],
  ['topic and skills', 'topic', { ...CHOICE, topic: ' ' }],
  ['topic and skills', 'skills', { ...CHOICE, skills: [] }],
  ['difficulty', 'difficulty', { ...CHOICE, difficulty: Number.NaN }],
  ['one key', 'key', { ...CHOICE, key: 3 }],
  ['one key', 'key', { ...CHOICE, key: 0.5 }],
  ['one key', 'key', { ...NUMBER, key: Number.POSITIVE_INFINITY }],
  ['number of options', 'options', withOptions(right, near)],
  ['number of options', 'steps', { ...ORDER, steps: ORDER.steps.slice(0, 3), key: [2, 0, 1] }],
  [
    'number of options',
    'options',
    {
      ...CHOICE,
      answer: 'spot',
      options: CHOICE.options.map((one, i) => ({ ...one, spot: `item ${i}` })),
    },
  ],
  ['alike in kind', 'options.2', withOptions(right, near, words('something else'))],
  [
    'alike in kind',
    'options.2',
    withOptions(right, near, {
      ...far,
      says: { code: 'quiz.other', with: { text: { is: 'cause', fault: 'lens dirty' } } },
    }),
  ],
  ['same meaning', 'options.2', withOptions(right, near, { ...far, says: near.says })],
  [
    'same meaning',
    'options.2',
    withOptions(right, near, far),
    {
      partOf: (fault) =>
        fault === 'regulator droops' || fault === 'lens dirty' ? 'one part' : fault,
    },
  ],
  [
    'same meaning',
    'options.1',
    withOptions({ ...amount(100), share: 1 }, amount(100.4), amount(200)),
  ],
  [
    'same meaning',
    'options.1',
    withOptions(
      { ...words('The valve leaks'), share: 1 },
      words('the  valve leaks.'),
      words('A relay'),
    ),
  ],
  ['reasons', 'options.1.why', withOptions(right, { ...near, why: [] }, far)],
  ['key not sure', 'options.0.share', withOptions({ ...right, share: 0.89 }, near, far)],
  [
    'distractor not ruled out',
    'options.1.share',
    withOptions(right, { ...near, share: 0.06 }, far),
  ],
  [
    'no deciding reading',
    'options.1.decidedBy',
    withOptions(right, { ...near, decidedBy: null }, far),
  ],
  ['tolerance', 'tolerance', { ...NUMBER, tolerance: 0 }],
  ['tolerance', 'tolerance', { ...NUMBER, tolerance: 0.2, mistakes: [] }],
  ['unit', 'of', { ...NUMBER, of: 'word' }],
  ['working', 'working', { ...NUMBER, working: NUMBER.working.slice(1) }],
  [
    'mistake counts as right',
    'mistakes.0',
    { ...NUMBER, mistakes: [{ value: 50.5, why: { code: 'quiz.as-written' } }] },
  ],
  ['order not whole', 'key', { ...ORDER, key: [2, 0, 1, 1] }],
  ['order not whole', 'key', { ...ORDER, key: [2, 0, 1] }],
];

describe('lint of the structure of an item', () => {
  it.each([
    ['a choice', CHOICE],
    ['an order', ORDER],
    ['a number', NUMBER],
    [
      'one that an author wrote, with two options',
      { ...withOptions(right, near), id: 'written/one' },
    ],
    ['a count, which has no unit', { ...NUMBER, of: 'number' as const }],
  ])('finds nothing in %s', (_name, item) => {
    expect(lintItem(item as Item)).toEqual([]);
  });

  it.each(PLANTED)('finds "%s" at %s', (rule, where, item, options) => {
    expect(lintItem(item, options)).toEqual([{ rule, where }]);
  });

  it('takes another number of options where that is stated', () => {
    const four = withOptions(right, near, far, option('pilot lean', 0));
    expect(lintItem(four, { options: [2, 5] })).toEqual([]);
    expect(lintItem(four)).toEqual([{ rule: 'number of options', where: 'options' }]);
  });
});

describe('places of keys in a set', () => {
  const cards = (places: readonly (number | null)[], kind: ItemCard['kind'] = 'cause') =>
    places.map((place, i): ItemCard => {
      return {
        id: `${kind}/dairy/${i}`,
        kind,
        plant: 'dairy',
        topic: 't',
        skills: ['fuel'],
        difficulty: 0,
        place,
      };
    });

  it('may differ by a few', () => {
    const even = Array.from({ length: 60 }, (_, i) => i % 3);
    expect(keyPlacesBalanced(cards([...even, 0, 0]))).toEqual([]);
    expect(keyPlacesBalanced(cards([null, null], 'order'))).toEqual([]);
    expect(keyPlacesBalanced(cards(Array(30).fill(0), 'where'))).toEqual([]);
  });

  it('are uneven where one place has too many, in its kind alone', () => {
    const even = cards(
      Array.from({ length: 60 }, (_, i) => i % 3),
      'conduct',
    );
    expect(keyPlacesBalanced([...even, ...cards(Array(12).fill(0))])).toEqual([
      { rule: 'key places uneven', where: 'cause' },
    ]);
  });
});

it('names each rule of structure in a planted defect', () => {
  const ofWords: readonly LintRule[] = [
    'negative question',
    'all or none of the above',
    'one question',
    'option repeated',
    'alike in length',
    'reason says nothing',
    'gap in the words',
    'key places uneven',
  ];
  const planted = new Set([...PLANTED.map(([rule]) => rule), ...ofWords]);
  expect(LINT_RULES.filter((rule) => !planted.has(rule))).toEqual([]);
});
