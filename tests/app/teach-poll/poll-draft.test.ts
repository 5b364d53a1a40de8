import { describe, expect, it } from 'vitest';
import { answerHere } from '../../../src/app/session/here-host.ts';
import { draftOfItem, draftOfOwn } from '../../../src/app/teach-poll/poll-draft.ts';
import { spokenSchema } from '../../../src/classroom/index.ts';
import { library, shippedSetup } from '../../support/library.ts';

const { actions: log } = shippedSetup('healthy-start');
const QUESTION = {
  type: 'ask here',
  ask: 4,
  kind: 'watch',
  id: 'healthy-start',
  log,
  atS: 80,
  place: 1,
} as const;

describe('a question made from where a run stands', () => {
  it('can be said to a class as it comes, and keeps its answer to itself', () => {
    const asked = answerHere(library, QUESTION);
    if (!asked.ok) throw new Error(asked.why);
    const draft = draftOfItem(asked.item, asked.names, [], 'SI');
    if (draft === null) throw new Error('no draft');
    const { question, right, why } = draft;
    const said = spokenSchema.safeParse({ type: 'poll', id: 'a', question });
    expect(said.error).toBeUndefined();
    expect(right).toBe(1);
    expect(why).not.toBe('');
    expect(JSON.stringify(question)).not.toContain(why);
    expect(JSON.stringify(question)).not.toMatch(/quiz\.follows/);
  });

  it('does not know what was done after the moment asked about', () => {
    const later = { t: 90, type: 'emergency-stop', pressed: true } as const;
    expect(answerHere(library, { ...QUESTION, log: [...log, later] })).toEqual(
      answerHere(library, QUESTION),
    );
  });

  it.each([
    ['of a start that nobody knows', { ...QUESTION, id: 'nowhere' }, 'unknown scenario'],
    ['of a log that is none', { ...QUESTION, log: [{ t: 1, type: 'juggle' }] }, 'asking broke off'],
  ])('says why it is not made %s', (_title, message, why) => {
    expect(answerHere(library, message)).toMatchObject({ ask: 4, ok: false, why });
  });
});

describe('a question of the instructor’s own', () => {
  const own = { text: ' Why? ', options: ['a', ' ', 'b'], right: 2, why: '' };

  it('leaves out empty options and keeps the right one right', () => {
    expect(draftOfOwn(own)).toMatchObject({
      question: { text: 'Why?', options: ['a', 'b'] },
      right: 1,
    });
  });

  it('has no right option where an empty one was marked', () => {
    expect(draftOfOwn({ ...own, right: 1 })?.right).toBeNull();
  });

  it.each([
    ['without its text', { ...own, text: ' ' }],
    ['with a single option', { ...own, options: ['a', '', ''] }],
  ])('is none %s', (_title, given) => {
    expect(draftOfOwn(given)).toBeNull();
  });
});
