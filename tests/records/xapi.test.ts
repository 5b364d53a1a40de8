import validate from '@learninglocker/xapi-validation';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answersToXapi, XAPI_DEFAULTS, type XapiStatement } from '../../src/records/index.ts';
import { ANSWERS, ITEMS } from './answers.ts';

const SETTINGS = {
  ...XAPI_DEFAULTS,
  actor: { homePage: 'https://college.example/', name: 'learner-7', nickname: 'Sam' },
};
const WITH_WORDS = answersToXapi(ANSWERS, SETTINGS, ITEMS);

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
    const all = [...WITH_WORDS, ...answersToXapi(ANSWERS, SETTINGS, new Map())];
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
    const [open] = answersToXapi(ANSWERS, SETTINGS, ITEMS).slice(-1);
    const finished = [ANSWERS[0]?.quizStartedISO ?? ''];
    const [closed] = answersToXapi(ANSWERS, { ...SETTINGS, finished }, ITEMS).slice(-1);
    expect(open?.verb.id).toBe('http://adlnet.gov/expapi/verbs/scored');
    expect(closed?.verb.id).toBe('http://adlnet.gov/expapi/verbs/completed');
    expect(closed?.result).toEqual({
      completion: true,
      score: { scaled: 0.5, raw: 2, min: 0, max: 4 },
    });
    expect(WITH_WORDS[0]?.context.registration).toBe(closed?.context.registration);
    expect(WITH_WORDS[0]?.context.contextActivities?.parent[0]?.id).toBe(closed?.object.id);
  });

  it('have the same ids again for the same answers, and others for others', () => {
    const idsOf = (statements: readonly XapiStatement[]) => statements.map(({ id }) => id);
    expect(idsOf(answersToXapi(ANSWERS, SETTINGS, new Map()))).toEqual(idsOf(WITH_WORDS));
    const other = { ...SETTINGS, actor: { ...SETTINGS.actor, name: 'learner-8' } };
    const later = ANSWERS.map((one) => ({ ...one, atISO: one.atISO.replace('09:', '10:') }));
    const all = [
      ...idsOf(WITH_WORDS),
      ...idsOf(answersToXapi(ANSWERS, other, ITEMS)),
      ...idsOf(answersToXapi(later, SETTINGS, ITEMS)),
    ];
    expect(new Set(all).size).toBe(all.length);
  });

  it('stay in order whatever a learner calls himself', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1 }), (name) => {
        const actor = { ...SETTINGS.actor, name, nickname: name };
        for (const one of answersToXapi(ANSWERS, { ...SETTINGS, actor }, ITEMS)) {
          expect(troubles(one)).toEqual([]);
        }
      }),
      { numRuns: 40, seed: 69 },
    );
  });

  it('say the edition that was asked for', () => {
    const said = answersToXapi(ANSWERS, { ...SETTINGS, version: '2.0.0' }, ITEMS);
    expect(new Set(said.map(({ version }) => version))).toEqual(new Set(['2.0.0']));
    expect(XAPI_DEFAULTS.version).toBe('1.0.3');
  });
});
