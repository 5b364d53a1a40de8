import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addAnswers,
  eraseAnswers,
  exportAnswers,
  importAnswers,
  keptAnswers,
  QUIZ_KEY,
} from '../../../src/app/quiz/keep-answers.ts';
import { mergeRecords, readRecord, writeRecord } from '../../../src/records/answers/index.ts';
import { createToyShelf } from '../work/toy-shelf.ts';
import { ANSWER, anyAnswer, anyQuiz, QUIZ } from './any-answers.ts';

const SEED = 20261129;
const STARTED = ANSWER.quizStartedISO;
const another = { ...ANSWER, item: 'cause/dairy/2', atISO: '2026-05-04T09:02:00.000Z' };
const record = { answers: [ANSWER], quizzes: [QUIZ], erasedISO: null };

describe('quiz answers on a device', () => {
  it('come back as they were given, and of one question the first', () => {
    const shelf = createToyShelf();
    expect(addAnswers(shelf, STARTED, [another])).toBe('kept');
    expect(addAnswers(shelf, STARTED, [ANSWER], QUIZ)).toBe('kept');
    const later = { ...ANSWER, atISO: '2026-05-04T09:09:00.000Z', right: false };
    expect(addAnswers(shelf, STARTED, [later])).toBe('kept');
    expect(keptAnswers(shelf)).toEqual({
      record: { answers: [ANSWER, another], quizzes: [QUIZ], erasedISO: null },
      trouble: null,
      aside: false,
    });
  });

  it('that are there already cost no writing', () => {
    const shelf = createToyShelf();
    addAnswers(shelf, STARTED, [ANSWER]);
    const { writes } = shelf;
    addAnswers(shelf, STARTED, [ANSWER]);
    expect(shelf.writes).toBe(writes);
  });

  it('that were erased do not come back by their quiz, only by hand; a later quiz counts', () => {
    const shelf = createToyShelf();
    addAnswers(shelf, STARTED, [ANSWER], QUIZ);
    const file = exportAnswers(shelf);
    eraseAnswers(shelf, '2026-05-04T12:00:00.000Z');
    expect(addAnswers(shelf, STARTED, [another])).toBe('erased');
    expect(keptAnswers(shelf).record).toMatchObject({ answers: [], quizzes: [] });
    const fresh = { ...ANSWER, quizStartedISO: '2026-05-04T12:00:00.001Z' };
    expect(addAnswers(shelf, fresh.quizStartedISO, [fresh])).toBe('kept');
    expect(importAnswers(shelf, file)).toEqual({ taken: 1, issues: [], trouble: null });
    expect(keptAnswers(shelf).record.answers).toHaveLength(2);
  });

  it('that cannot be read stand aside once something is written, and go only by being erased', () => {
    const shelf = createToyShelf();
    const broken = writeRecord(record).replace('"confidence":75', '"confidence":76');
    shelf.set(QUIZ_KEY, broken);
    expect(keptAnswers(shelf)).toMatchObject({ trouble: 'broken', aside: false });
    addAnswers(shelf, STARTED, [another]);
    expect(keptAnswers(shelf)).toMatchObject({
      record: { answers: [another], quizzes: [QUIZ] },
      trouble: null,
      aside: true,
    });
    expect(shelf.keys().map((key) => shelf.get(key))).toContain(broken);
    eraseAnswers(shelf, '2026-05-05T00:00:00.000Z');
    expect(shelf.keys()).toEqual([QUIZ_KEY]);
    expect(keptAnswers(shelf).aside).toBe(false);
  });

  it('of a newer version are left as they are', () => {
    const shelf = createToyShelf();
    const newer = JSON.stringify({ file: 'flamewright quiz', v: 2, whatever: true });
    shelf.set(QUIZ_KEY, newer);
    expect(keptAnswers(shelf).trouble).toBe('newer version');
    expect(addAnswers(shelf, STARTED, [ANSWER])).toBe('newer version');
    expect(importAnswers(shelf, writeRecord(record)).trouble).toBe('newer version');
    expect(shelf.get(QUIZ_KEY)).toBe(newer);
  });

  it('say so where the device has no room, and lose nothing', () => {
    const shelf = createToyShelf();
    addAnswers(shelf, STARTED, [ANSWER]);
    shelf.room = 450;
    expect(addAnswers(shelf, STARTED, [another])).toBe('no room');
    expect(keptAnswers(shelf).record.answers).toEqual([ANSWER]);
  });
});

describe('a file of quiz answers', () => {
  it('brings everything to another device, and nothing twice', () => {
    fc.assert(
      fc.property(
        fc.array(anyAnswer),
        fc.array(anyQuiz),
        fc.array(anyAnswer),
        (one, quizzes, two) => {
          const [from, to] = [createToyShelf(), createToyShelf()];
          from.set(QUIZ_KEY, writeRecord({ answers: one, quizzes, erasedISO: null }));
          to.set(QUIZ_KEY, writeRecord({ answers: two, quizzes: [], erasedISO: null }));
          importAnswers(to, exportAnswers(from));
          const all = mergeRecords({ answers: [...one, ...two], quizzes, erasedISO: null });
          expect(keptAnswers(to).record).toEqual(all);
          expect(importAnswers(to, exportAnswers(from)).taken).toBe(0);
        },
      ),
      { seed: SEED, numRuns: 50 },
    );
  });

  it('is merged the same whichever comes first', () => {
    const anyRecord = fc.record({
      answers: fc.array(anyAnswer),
      quizzes: fc.array(anyQuiz),
      erasedISO: fc.constant(null),
    });
    fc.assert(
      fc.property(anyRecord, anyRecord, (one, two) => {
        expect(mergeRecords(one, two)).toEqual(mergeRecords(two, one));
      }),
      { seed: SEED },
    );
  });

  it.each([
    ['no file of ours', '{"file":"flamewright results","v":1}', 'not answers', ''],
    ['no JSON', 'answers', 'not answers', ''],
    ['nothing', 'null', 'not answers', ''],
    ['newer', '{"file":"flamewright quiz","v":9}', 'newer version', 'v'],
    ['without a list', '{"file":"flamewright quiz","v":1,"erasedISO":null}', 'broken', 'answers'],
    ['sureness', changed({ confidence: 100 }), 'broken', 'answers.1.confidence'],
    ['skill twice', changed({ skills: ['air', 'air'] }), 'broken', 'answers.1.skills'],
    ['response', changed({ response: { is: 'choice' } }), 'broken', 'answers.1.response.option'],
    ['time', changed({ atISO: 'today' }), 'broken', 'answers.1.atISO'],
    ['too much', changed({ name: 'Ada' }), 'broken', 'answers.1.name'],
  ])('that is wrong (%s) is refused as a whole, with the place', (_, text, trouble, where) => {
    const shelf = createToyShelf();
    addAnswers(shelf, STARTED, [another]);
    expect(importAnswers(shelf, text)).toMatchObject({ taken: 0, issues: [{ trouble, where }] });
    expect(keptAnswers(shelf).record.answers).toEqual([another]);
  });

  it('may be any text without breaking the page', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (text) => {
        expect(readRecord(text).record.answers).toEqual([]);
      }),
      { seed: SEED },
    );
  });
});

function changed(change: object): string {
  return writeRecord({ ...record, answers: [ANSWER, { ...another, ...change }] });
}
