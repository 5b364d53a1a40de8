import validate from '@learninglocker/xapi-validation';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classToXapi, classXapi } from '../../../src/records/class/index.ts';
import type { XapiStatement } from '../../../src/records/index.ts';
import { classResultWords } from '../../../src/wording/class/index.ts';
import { ITEMS } from '../answers.ts';
import { BY_LUCK, BY_READINGS, FORGED, LEFT, OVERSTATED, QUIZ, RESULTS } from './class-results.ts';

const SETTINGS = {
  homepage: 'https://college.example/burners',
  version: '1.0.3',
  classId: 'class-7',
  title: 'Tuesday evening',
  names: true,
} as const;
const WORDS = classResultWords();
const ANSWERED = QUIZ.quiz?.answers.length ?? 0;
const STATEMENTS = classToXapi(RESULTS, SETTINGS, WORDS, ITEMS);

/** The package is of the old kind of module. */
function troubles(statement: unknown): string[] {
  const { default: inner } = validate as unknown as { default?: typeof validate };
  return (inner ?? validate)(statement).map((warning) => JSON.stringify(warning));
}
function oneOf(result: (typeof RESULTS)[number]): XapiStatement {
  const [statement] = classToXapi([result], SETTINGS, WORDS);
  if (statement === undefined) throw new Error('no statement');
  return statement;
}
const verbOf = ({ verb }: XapiStatement) => verb.id.split('/').at(-1);

describe('results of a class as statements of the Experience API', () => {
  it('are in order by a conformance-tested validator, in both editions', () => {
    const newer = classToXapi(RESULTS, { ...SETTINGS, version: '2.0.0' }, WORDS);
    expect(STATEMENTS.length).toBe(RESULTS.length - 1 + ANSWERED + 1);
    for (const one of STATEMENTS) expect(troubles(one)).toEqual([]);
    // The validator knows the first edition alone; the later one says the same with its own number.
    for (const one of newer) {
      expect(one.version).toBe('2.0.0');
      expect(troubles({ ...one, version: '1.0.0' })).toEqual([]);
    }
  });

  it('are the ones that are in the file', () => {
    const file = classXapi(RESULTS, SETTINGS, WORDS, ITEMS);
    expect(JSON.parse(String(file.data))).toEqual(JSON.parse(JSON.stringify(STATEMENTS)));
  });

  it('say completed of what was taken to its end, attempted of the rest, and no score of a forgery', () => {
    expect(verbOf(oneOf(BY_READINGS))).toBe('completed');
    expect(oneOf(BY_READINGS).result).toMatchObject({
      success: true,
      completion: true,
      duration: 'PT2490S',
      score: { scaled: 0.9, raw: 0.9, min: 0, max: 1 },
    });
    expect(verbOf(oneOf(LEFT))).toBe('attempted');
    expect(verbOf(oneOf(FORGED))).toBe('attempted');
    expect(oneOf(FORGED).result).not.toHaveProperty('score');
    expect(oneOf(FORGED).result).not.toHaveProperty('success');
  });

  it('call it no success where the cause was not found or someone was put in danger', () => {
    expect(oneOf(BY_LUCK).result.success).toBe(false);
    expect(oneOf(OVERSTATED).result.success).toBe(false);
  });

  it('of a quiz are one for each answer and one for all, in the same class', () => {
    const own = classToXapi([QUIZ], SETTINGS, WORDS, ITEMS);
    expect(own.map(verbOf)).toEqual([...Array(ANSWERED).fill('answered'), 'completed']);
    const classes = [...own, ...STATEMENTS].map(
      ({ context }) => context.contextActivities?.grouping?.[0]?.id,
    );
    expect(new Set(classes)).toEqual(new Set(['https://college.example/burners/classes/class-7']));
  });

  it('name a seat by its class and number, and its nickname only where names may leave', () => {
    expect(oneOf(BY_READINGS).actor).toEqual({
      objectType: 'Agent',
      name: 'Ada',
      account: { homePage: SETTINGS.homepage, name: 'class-7/1' },
    });
    const nameless = classToXapi(RESULTS, { ...SETTINGS, names: false }, WORDS);
    expect(JSON.stringify(nameless)).not.toContain('Ada');
  });

  it('have the same ids again for the same results, and others for others', () => {
    const ids = (statements: readonly XapiStatement[]) => statements.map(({ id }) => id);
    expect(ids(classToXapi([...RESULTS].reverse(), SETTINGS, WORDS, ITEMS))).toEqual(
      ids(STATEMENTS),
    );
    const other = classToXapi(RESULTS, { ...SETTINGS, classId: 'class-8' }, WORDS, ITEMS);
    const all = [...ids(STATEMENTS), ...ids(other)];
    expect(new Set(all).size).toBe(all.length);
  });

  it('stay in order whatever someone calls himself or his class', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), (text) => {
        const settings = { ...SETTINGS, classId: text, title: text };
        const result = {
          ...BY_LUCK,
          nickname: text,
          what: { ...BY_LUCK.what, id: text, title: text },
        };
        for (const one of classToXapi([result], settings, WORDS)) expect(troubles(one)).toEqual([]);
      }),
      { seed: 2, numRuns: 100 },
    );
  });
});
