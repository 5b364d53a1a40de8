import validate from '@learninglocker/xapi-validation';
import { describe, expect, it } from 'vitest';
import { CMI5_VERBS, type Cmi5Verb, cmi5Statement } from '../../../src/records/lms/index.ts';

const LAUNCH = {
  actor: { objectType: 'Agent', account: { homePage: 'https://college.example/', name: '7' } },
  activityId: 'https://college.example/courses/1/unit',
  registration: '0e9a6f2c-3f3c-4b1f-9d1b-6a4a1f2b3c4d',
};
const SESSION = 'https://w3id.org/xapi/cmi5/context/extensions/sessionid';
const MASTERY = 'https://w3id.org/xapi/cmi5/context/extensions/masteryscore';
const TEMPLATE = Object.freeze({
  contextActivities: Object.freeze({
    grouping: [{ objectType: 'Activity', id: 'https://college.example/courses/1' }],
    category: [{ objectType: 'Activity', id: 'https://college.example/kinds/safety' }],
  }),
  extensions: Object.freeze({ [SESSION]: 'session-1' }),
});

function troubles(statement: unknown): string[] {
  const { default: inner } = validate as unknown as { default?: typeof validate };
  return (inner ?? validate)(statement).map((warning) => JSON.stringify(warning));
}

function said(verb: Cmi5Verb, template: object = TEMPLATE, mastery: number | null = 0.7) {
  const scored = verb === 'passed' || verb === 'failed' ? { scaled: 0.57 } : {};
  return cmi5Statement(
    {
      verb,
      id: '5a1c3a52-6e0f-4f5e-8d4f-0a9b8c7d6e5f',
      atISO: '2026-05-04T09:00:00.000Z',
      durationS: 61.5,
      ...scored,
    },
    LAUNCH,
    { ...template },
    mastery,
    '1.0.3',
  );
}

describe('what a unit of cmi5 says', () => {
  it('is in order by a conformance-tested validator, with and without what the system adds', () => {
    for (const verb of CMI5_VERBS) {
      expect(troubles(said(verb))).toEqual([]);
      expect(troubles(said(verb, {}, null))).toEqual([]);
    }
    expect(troubles({ ...said('passed'), id: 'no id' })).not.toEqual([]);
  });

  it('carries all that the system wants in it, and the categories of cmi5 besides', () => {
    for (const verb of CMI5_VERBS) {
      const { context } = said(verb) as {
        context: {
          registration: string;
          contextActivities: { grouping: unknown; category: { id: string }[] };
          extensions: Record<string, unknown>;
        };
      };
      expect(context.registration).toBe(LAUNCH.registration);
      expect(context.contextActivities.grouping).toEqual(TEMPLATE.contextActivities.grouping);
      const moves = ['completed', 'passed', 'failed'].includes(verb);
      const ends = context.contextActivities.category.map(({ id }) => id.split('/').at(-1));
      expect(ends).toEqual(['safety', 'cmi5', ...(moves ? ['moveon'] : [])]);
      const judged = ['passed', 'failed'].includes(verb);
      expect(context.extensions).toEqual({
        [SESSION]: 'session-1',
        ...(judged ? { [MASTERY]: 0.7 } : {}),
      });
    }
  });

  it('has a score only where it is passed or failed, and how long it took wherever it is over', () => {
    const resultOf = (verb: Cmi5Verb) => said(verb).result;
    expect(resultOf('initialized')).toBeUndefined();
    expect(resultOf('completed')).toEqual({ completion: true, duration: 'PT61.50S' });
    expect(resultOf('terminated')).toEqual({ duration: 'PT61.50S' });
    const score = { scaled: 0.57, raw: 57, min: 0, max: 100 };
    expect(resultOf('passed')).toEqual({ success: true, duration: 'PT61.50S', score });
    expect(resultOf('failed')).toEqual({ success: false, duration: 'PT61.50S', score });
  });
});
