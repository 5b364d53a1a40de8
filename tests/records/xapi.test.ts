import validate from '@learninglocker/xapi-validation';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { farthestOff, type NumberItem } from '../../src/quiz/index.ts';
import { answersToXapi, XAPI_DEFAULTS, type XapiStatement } from '../../src/records/index.ts';
import { xapiWords } from '../../src/wording/index.ts';
import { ANSWERS, ITEMS } from './answers.ts';
import { NUMBER } from './samples.ts';

const SETTINGS = {
  ...XAPI_DEFAULTS,
  actor: { homePage: 'https://college.example/', name: 'learner-7', nickname: 'Sam' },
};
const WORDS = xapiWords();
const WITH_WORDS = answersToXapi(ANSWERS, SETTINGS, ITEMS, WORDS);

function troubles(statement: unknown): string[] {
  return judge(statement).map((warning) => JSON.stringify(warning));
}
/** The package is of the old kind of module. */
function judge(statement: unknown) {
  const { default: inner } = validate as unknown as { default?: typeof validate };
  return (inner ?? validate)(statement);
}

describe('answers as statements of the Experience API', () => {
  it('are in order by a conformance-tested validator, with and without the questions', () => {
    const all = [...WITH_WORDS, ...answersToXapi(ANSWERS, SETTINGS, new Map(), WORDS)];
    expect(all.length).toBe(2 * (ANSWERS.length + 1));
    for (const statement of all) expect(troubles(statement)).toEqual([]);
  });

  it('would be refused there with any part of them bad', () => {
    const [good] = WITH_WORDS as [XapiStatement];
    const bad: readonly unknown[] = [
      { ...good, id: 'item-1' },
      { ...good, actor: { ...good.actor, mbox: 'mailto:a@b.example' } },
      { ...good, verb: { ...good.verb, id: 'answered' } },
      { ...good, timestamp: 'yesterday' },
      { ...good, version: 'new' },
      { ...good, result: { ...good.result, score: { ...good.result.score, scaled: 2 } } },
      { ...good, result: { ...good.result, extensions: { confidence: 75 } } },
      {
        ...good,
        object: {
          ...good.object,
          definition: { ...good.object.definition, interactionType: 'picking' },
        },
      },
    ];
    for (const statement of bad) expect(troubles(statement)).not.toEqual([]);
  });

  it('give each way of answering its type, its pattern and its response', () => {
    const said = WITH_WORDS.slice(0, 4).map(({ object: { definition }, result }) => [
      definition.interactionType,
      definition.correctResponsesPattern?.[0],
      result.response,
      result.success,
    ]);
    expect(said).toEqual([
      ['choice', 'option-1', 'option-1', true],
      ['choice', 'option-3', 'option-2', false],
      ['sequencing', 'option-2[,]option-3[,]option-1', 'option-2[,]option-3[,]option-1', true],
      ['numeric', expect.stringMatching(/^0\.0032\d*\[:\]0\.0035\d*$/), '-3.5', false],
    ]);
    for (const { object, result } of WITH_WORDS.slice(0, 3)) {
      const ids = object.definition.choices?.map(({ id }) => id) ?? [];
      for (const part of result.response?.split('[,]') ?? []) expect(ids).toContain(part);
    }
  });

  it('name the learner by an account alone, and how sure was said by an address of its own', () => {
    for (const { actor } of WITH_WORDS) {
      expect(actor).toEqual({
        objectType: 'Agent',
        name: 'Sam',
        account: { homePage: 'https://college.example/', name: 'learner-7' },
      });
    }
    expect(WITH_WORDS[0]?.result.extensions).toEqual({
      'https://flamewright.example/xapi/confidence': 75,
    });
  });

  it('end with each quiz, completed where it was, else only scored so far', () => {
    const [open] = answersToXapi(ANSWERS, SETTINGS, ITEMS, WORDS).slice(-1);
    const finished = [ANSWERS[0]?.quizStartedISO ?? ''];
    const [closed] = answersToXapi(ANSWERS, { ...SETTINGS, finished }, ITEMS, WORDS).slice(-1);
    expect(open?.verb.id).toBe('http://adlnet.gov/expapi/verbs/scored');
    expect(closed?.verb.id).toBe('http://adlnet.gov/expapi/verbs/completed');
    expect(closed?.result).toEqual({
      completion: true,
      // Begun at 09:00, the last answer at 09:04.
      duration: 'PT240S',
      score: { scaled: 0.5, raw: 2, min: 0, max: 4 },
    });
    expect(WITH_WORDS[0]?.context.registration).toBe(closed?.context.registration);
    expect(WITH_WORDS[0]?.context.contextActivities?.parent?.[0]?.id).toBe(closed?.object.id);
  });

  it('have the same ids again for the same answers, and others for others', () => {
    const idsOf = (statements: readonly XapiStatement[]) => statements.map(({ id }) => id);
    expect(idsOf(answersToXapi(ANSWERS, SETTINGS, new Map(), WORDS))).toEqual(idsOf(WITH_WORDS));
    const other = { ...SETTINGS, actor: { ...SETTINGS.actor, name: 'learner-8' } };
    const later = ANSWERS.map((one) => ({ ...one, atISO: one.atISO.replace('09:', '10:') }));
    const all = [
      ...idsOf(WITH_WORDS),
      ...idsOf(answersToXapi(ANSWERS, other, ITEMS, WORDS)),
      ...idsOf(answersToXapi(later, SETTINGS, ITEMS, WORDS)),
    ];
    expect(new Set(all).size).toBe(all.length);
  });

  it('stay in order whatever a learner calls himself', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), (name) => {
        const actor = { ...SETTINGS.actor, name, nickname: name };
        for (const one of answersToXapi(ANSWERS, { ...SETTINGS, actor }, ITEMS, WORDS)) {
          expect(troubles(one)).toEqual([]);
        }
      }),
      { numRuns: 25, seed: 69 },
    );
  });

  it('name every question and every quiz in words, and no two of them alike', () => {
    for (const statements of [WITH_WORDS, answersToXapi(ANSWERS, SETTINGS, new Map(), WORDS)]) {
      const names = statements.map(({ object }) => object.definition.name?.en ?? '');
      expect(new Set(names).size).toBe(names.length);
      for (const [i, { item }] of ANSWERS.entries()) expect(names[i]).toContain(`(${item})`);
      expect(names.at(-1)).toBe('Flamewright quiz: Short');
      expect(statements[0]?.context.contextActivities?.parent?.[0]).toEqual(
        statements.at(-1)?.object,
      );
    }
    expect(WITH_WORDS[0]?.object.definition.name?.en).toBe('What is the cause? (cause/dairy/12)');
  });

  it('count a number as right in their pattern just where it counts as right, without an exponent', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        fc.option(fc.double({ min: 1e-9, max: 1, noNaN: true }), { nil: undefined }),
        (key, tolerance, toleranceAbs) => {
          const item = {
            ...ITEMS.get(NUMBER.id)?.item,
            key,
            tolerance,
            toleranceAbs,
          } as NumberItem;
          const items = new Map([[NUMBER.id, { item, words: NUMBER }]]);
          const [said] = answersToXapi(ANSWERS.slice(3), SETTINGS, items, WORDS);
          const [pattern = ''] = said?.object.definition.correctResponsesPattern ?? [];
          expect(pattern).toMatch(/^-?\d+(\.\d+)?\[:\]-?\d+(\.\d+)?$/);
          const [from = 0, to = 0] = pattern.split('[:]').map(Number);
          for (const value of [from, to]) {
            expect(Math.abs(Math.abs(value - key) - farthestOff(item))).toBeLessThan(1e-15);
          }
        },
      ),
      { numRuns: 200, seed: 72 },
    );
  });

  it('say the edition that was asked for', () => {
    const said = answersToXapi(ANSWERS, { ...SETTINGS, version: '2.0.0' }, ITEMS, WORDS);
    expect(new Set(said.map(({ version }) => version))).toEqual(new Set(['2.0.0']));
    expect(XAPI_DEFAULTS.version).toBe('1.0.3');
    // Section 2.4.10 of its second part: whoever says a version says that of the whole edition.
    expect(new Set(WITH_WORDS.map(({ version }) => version))).toEqual(new Set(['1.0.0']));
  });
});
