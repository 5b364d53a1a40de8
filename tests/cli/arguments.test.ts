import { describe, expect, it } from 'vitest';
import { type CommandSpec, numberWithin, parseArguments } from '../../src/cli/arguments.ts';
import { sayMessage } from '../../src/i18n/index.ts';
import { phrase } from '../../src/scenario/index.ts';

const spec: CommandSpec = {
  command: 'run',
  options: { '--seed': { value: phrase('usage.expect.seed', { max: 9 }) }, '--json': {} },
  least: 1,
  most: 1,
  expected: phrase('usage.expect.run'),
};
const parse = (...words: string[]) => {
  const parsed = parseArguments(words, spec);
  return parsed.ok
    ? { names: parsed.value.positionals, options: Object.fromEntries(parsed.value.options) }
    : sayMessage(parsed.mistake);
};

describe('arguments', () => {
  it.each([
    ['a name', ['a'], { names: ['a'], options: {} }],
    [
      'an option with its value after it',
      ['a', '--seed', '3'],
      { names: ['a'], options: { '--seed': '3' } },
    ],
    [
      'an option with its value joined to it',
      ['--seed=3', 'a'],
      { names: ['a'], options: { '--seed': '3' } },
    ],
    ['a flag', ['--json', 'a'], { names: ['a'], options: { '--json': '' } }],
    ['a negative value', ['a', '--seed', '-3'], { names: ['a'], options: { '--seed': '-3' } }],
    ['a name that looks like an option', ['--', '--json'], { names: ['--json'], options: {} }],
    ['a lone hyphen as a name', ['-'], { names: ['-'], options: {} }],
  ])('are read: %s', (_title, words, expected) => expect(parse(...words)).toEqual(expected));
  it.each([
    [
      'nothing',
      [],
      'run: something is missing; expected one scenario, job, drill or lesson, by name or as a file.',
    ],
    [
      'two names',
      ['a', 'b'],
      'run: "b" is one too many; expected one scenario, job, drill or lesson, by name or as a file.',
    ],
    [
      'an unknown option',
      ['a', '--sead', '3'],
      'run: there is no option "--sead"; expected --seed or --json. Did you mean --seed?',
    ],
    [
      'one hyphen for two',
      ['a', '-json'],
      'run: there is no option "-json"; expected --seed or --json. Did you mean --json?',
    ],
    [
      'an option of the object type',
      ['a', '--constructor'],
      'run: there is no option "--constructor"; expected --seed or --json.',
    ],
    ['an option twice', ['a', '--json', '--json'], 'run: the option "--json" is given twice.'],
    [
      'an option without its value',
      ['a', '--seed'],
      'run: the option "--seed" needs a value after it: a whole number from 0 to 9.',
    ],
    [
      'an option in the place of a value',
      ['a', '--seed', '--json'],
      'run: the option "--seed" needs a value after it: a whole number from 0 to 9.',
    ],
    ['a value for a flag', ['a', '--json=yes'], 'run: the option "--json" takes no value.'],
  ])('are refused: %s', (_title, words, expected) => expect(parse(...words)).toBe(expected));
});

describe('a number on the command line', () => {
  it.each([
    ['0', 0],
    ['10', 10],
    ['2.5', 2.5],
    ['1e1', 10],
    ['+3', 3],
  ])('may be %s', (text, value) => expect(numberWithin(text, 0, 10)).toBe(value));
  it.each(['', 'ten', '0x5', '1,5', 'NaN', 'Infinity', '1e999', '-1', '11', '1 2', '--5'])(
    'may not be %j',
    (text) => expect(numberWithin(text, 0, 10)).toBeNull(),
  );
});
